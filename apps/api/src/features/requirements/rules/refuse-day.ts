import { refuse } from '../../../platform/problems/refusal.error.js';

/** Refuses a day that has not come. Refuses: INVALID_FIELDS (on). */
export function refuseDay(on: string, today: string): void {
  if (on <= today) return;
  refuse({
    code: 'INVALID_FIELDS',
    fields: [{ field: 'on', reason: 'This day has not come.', fix: `Enter ${today} or earlier.` }],
  });
}
