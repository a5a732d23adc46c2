import { checkRelease, type ReleaseSnapshot } from '@strutbook/domain/release/check-release.js';
import type { Objection } from '@strutbook/domain/release/objection.js';
import { NOTHING_ELSE } from '@strutbook/domain/release/snapshot.js';
import { instant } from '@strutbook/domain/units/minutes.js';

/** What is held against releasing a package in which all is in order but what is given. */
export function heldAgainst(change: Partial<ReleaseSnapshot>): readonly Objection[] {
  return checkRelease({
    package: { id: 'w', kind: 'engine-change', airframeId: 'a', registration: 'ZZ-417', ruleSet: 'us-121' },
    at: instant(0),
    positions: [],
    ...NOTHING_ELSE,
    ...change,
  });
}
