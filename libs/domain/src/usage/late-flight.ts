import type { Instant } from '../units/minutes.js';
import type { Posting } from './clock.js';
import type { Counts } from './counts.js';

/** An exposure as it is kept: a closed one with the amounts it saw, an open one with its clock's reading at its start. */
export interface KeptExposure {
  readonly id: string;
  readonly carrierId: string;
  readonly from: Instant;
  readonly to: Instant | null;
}

/** What one posting does to one kept exposure. */
export interface ExposureAdjustment {
  readonly exposureId: string;
  readonly change: 'amounts' | 'base';
  readonly add: Counts;
}

/**
 * How kept exposures change when something is posted to a clock in the past (or voided: post its negative).
 *
 * - closed, `from < at <= to`: its amounts grow;
 * - open, `from >= at`: its base grows, else it would gain what was flown before it came;
 * - any other: nothing, for an open one reads the clock itself.
 *
 * `readBy` are the carriers whose clock reads this posting: the carrier itself, and for an airframe all
 * its positions too. Total.
 */
export function adjustExposures(
  posting: Posting,
  {
    readBy,
    exposures,
  }: { readonly readBy: ReadonlySet<string>; readonly exposures: readonly KeptExposure[] },
): readonly ExposureAdjustment[] {
  return exposures.flatMap((exposure): readonly ExposureAdjustment[] => {
    if (!readBy.has(exposure.carrierId)) return [];
    const change = changeOf(exposure, posting.at);
    return change === null ? [] : [{ exposureId: exposure.id, change, add: posting.counts }];
  });
}

function changeOf({ from, to }: KeptExposure, at: Instant): ExposureAdjustment['change'] | null {
  if (to === null) return from >= at ? 'base' : null;
  return from < at && at <= to ? 'amounts' : null;
}
