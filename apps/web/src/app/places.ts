/** The places of the top bar, in the order they stand there. */
export const PLACES = [
  { path: '/positions', name: 'Positions' },
  { path: '/flights', name: 'Flights' },
  { path: '/work', name: 'Work' },
  { path: '/due', name: 'Due' },
  { path: '/register', name: 'Register' },
  { path: '/history', name: 'History' },
  { path: '/imports', name: 'Imports' },
  { path: '/people', name: 'People' },
] as const;
