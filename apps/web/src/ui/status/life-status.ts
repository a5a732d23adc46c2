import { type StatusWindows, statusOf } from '@strutbook/domain/life/status.js';
import { markOf } from './near.js';
import type { Status } from './statuses.js';

/** What of a life its status rests on. */
export interface LifeLeft {
  readonly kind: 'limited' | 'unsubstantiated' | 'not-authorised' | 'not-limited';
  readonly remainingCycles: number | null;
  readonly remainingMinutes: number | null;
}

// The windows the server keeps the due list by; a life limit grants no tolerance.
const CYCLES: StatusWindows = { alert: 250, planning: 1000, tolerance: 0 };
const MINUTES: StatusWindows = { alert: 500 * 60, planning: 2000 * 60, tolerance: 0 };

const URGENCY: readonly Status[] = [
  'over-limit',
  'in-tolerance',
  'not-verified',
  'soon',
  'plan',
  'in-limits',
];

/** The more urgent of two marks. */
export const worse = (a: Status, b: Status): Status => (rank(a) <= rank(b) ? a : b);

const rank = (status: Status): number => {
  const place = URGENCY.indexOf(status);
  return place === -1 ? URGENCY.length : place;
};

/** The mark of a part's life. Without a trusted record it is not verified, never fine. Total. */
export function markOfLife(life: LifeLeft | null): Status {
  if (life === null || life.kind === 'unsubstantiated') return 'not-verified';
  if (life.kind === 'not-authorised') return 'over-limit';
  if (life.kind === 'not-limited') return 'not-applicable';
  const marks = [
    ...(life.remainingCycles === null ? [] : [markOf(statusOf(life.remainingCycles, CYCLES))]),
    ...(life.remainingMinutes === null ? [] : [markOf(statusOf(life.remainingMinutes, MINUTES))]),
  ];
  return marks.length === 0 ? 'not-verified' : marks.reduce(worse);
}
