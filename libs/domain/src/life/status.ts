/** How near a limit is. One table for the code and the screen. */
export type Status =
  | 'over'
  | 'in-tolerance'
  | 'soon'
  | 'planned'
  | 'later'
  | 'not-verified'
  | 'not-applicable'
  | 'closed';

/** The words on the screen. */
export const STATUS_WORDS = {
  over: 'Over limit',
  'in-tolerance': 'In tolerance',
  soon: 'Soon',
  planned: 'Plan',
  later: 'In limits',
  'not-verified': 'Not verified',
  'not-applicable': 'Not applicable',
  closed: 'Closed',
} as const satisfies Record<Status, string>;

/** The windows a remaining is held against, in its own unit; a life limit grants no tolerance. */
export interface StatusWindows {
  readonly alert: number;
  readonly planning: number;
  readonly tolerance: number;
}

/**
 * The status of what remains (null: something needed is unknown).
 *
 * Remaining 0 is not past the limit: it has been used up, and is 'soon'. Below 0 it is in tolerance as far
 * as the requirement grants one, then over. The windows' ends belong to them. Total.
 */
export function statusOf(remaining: number | null, windows: StatusWindows): Status {
  if (remaining === null) return 'not-verified';
  if (remaining < -windows.tolerance) return 'over';
  if (remaining < 0) return 'in-tolerance';
  if (remaining <= windows.alert) return 'soon';
  return remaining <= windows.planning ? 'planned' : 'later';
}
