interface TopPlace {
  readonly path: string;
  readonly name: string;
  /** Addresses of pages that belong to it and begin otherwise. */
  readonly also?: readonly string[];
}

/** The places of the top bar, in the order they stand there. */
export const PLACES = [
  { path: '/positions', name: 'Positions', also: ['/components'] },
  { path: '/flights', name: 'Flights' },
  { path: '/work', name: 'Work', also: ['/packages', '/changes'] },
  { path: '/due', name: 'Due' },
  { path: '/spares', name: 'Spares', also: ['/shop-visits'] },
  { path: '/register', name: 'Register', also: ['/tools', '/procedures', '/requirements', '/directives'] },
  { path: '/history', name: 'History' },
  { path: '/trial-balance', name: 'Trial balance' },
  { path: '/imports', name: 'Imports' },
  { path: '/people', name: 'People' },
] as const satisfies readonly TopPlace[];

const isBelow = (address: string, path: string): boolean =>
  address === path || address.startsWith(`${path}/`);

/** Whether the page at an address belongs to a place. */
export const belongsTo = ({ path, also = [] }: TopPlace, address: string): boolean =>
  [path, ...also].some((each) => isBelow(address, each));
