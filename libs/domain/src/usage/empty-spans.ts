import type { Instant } from '../units/minutes.js';

/** A span `[from, to)`; without a beginning or an end where null. */
export interface OpenSpan {
  readonly from: Instant | null;
  readonly to: Instant | null;
}

/**
 * When a slot held nothing: the gaps between its stays, from always to now.
 *
 * What passes a position then is posted to 'empty', so that the trial balance closes. Stays of one slot do
 * not overlap; any order. Total.
 */
export function emptySpans(
  stays: readonly { readonly from: Instant; readonly to: Instant | null }[],
): readonly OpenSpan[] {
  const gaps: OpenSpan[] = [];
  let free: Instant | null | 'never' = null;
  for (const { from, to } of [...stays].sort((a, b) => a.from - b.from)) {
    if (free !== 'never' && (free === null || free < from)) gaps.push({ from: free, to: from });
    free = to ?? 'never';
  }
  return free === 'never' ? gaps : [...gaps, { from: free, to: null }];
}
