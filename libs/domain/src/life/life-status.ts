import type { Life } from './life.js';
import type { LifeDimension } from './projected-end.js';
import { type Status, type StatusWindows, statusOf } from './status.js';

/** How far ahead of a life limit its status warns and asks for a plan. Common practice, no source. */
export const LIFE_WINDOWS = {
  cycles: { alert: 250, planning: 1000, tolerance: 0 },
  minutes: { alert: 500 * 60, planning: 2000 * 60, tolerance: 0 },
  days: { alert: 30, planning: 180, tolerance: 0 },
} as const satisfies Record<LifeDimension, StatusWindows>;

const URGENCY: readonly Status[] = ['over', 'soon', 'planned', 'later'];

/**
 * The status of a life: of the dimension that is most urgent. What is not authorised where it is stands with what is
 * over its limit; what is not limited has none ('not-applicable'). A life limit grants no tolerance. Total.
 */
export function statusOfLife(life: Life): Status {
  switch (life.kind) {
    case 'not-authorised':
      return 'over';
    case 'not-limited':
      return 'not-applicable';
    case 'unsubstantiated':
      return 'not-verified';
    case 'limited': {
      const found = [
        ...statusIn('cycles', life.remaining),
        ...statusIn('minutes', life.remainingMinutes),
        ...statusIn('days', life.remainingDays),
      ];
      // Only a life on the calendar that has not begun has nothing to count down.
      return URGENCY.find((status) => found.includes(status)) ?? 'later';
    }
  }
}

function statusIn(dimension: LifeDimension, remaining: number | null): readonly Status[] {
  return remaining === null ? [] : [statusOf(remaining, LIFE_WINDOWS[dimension])];
}
