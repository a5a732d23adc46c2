import type { Status } from './statuses.js';

/** How near a limit is, in the server's words. */
export type Nearness =
  | 'over'
  | 'in-tolerance'
  | 'soon'
  | 'planned'
  | 'later'
  | 'not-verified'
  | 'not-applicable'
  | 'closed';

const SHOWN: Readonly<Record<string, Status>> = {
  over: 'over-limit',
  'in-tolerance': 'in-tolerance',
  soon: 'soon',
  planned: 'plan',
  later: 'in-limits',
  'not-verified': 'not-verified',
  'not-applicable': 'not-applicable',
  closed: 'closed',
};

/** The mark for a nearness. A word of a newer server is not verified here. Total. */
export const markOf = (nearness: string): Status => SHOWN[nearness] ?? 'not-verified';
