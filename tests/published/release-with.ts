import { checkRelease, type ReleaseSnapshot } from '@strutbook/domain/release/check-release.js';
import type { Objection } from '@strutbook/domain/release/objection.js';
import { NO_WORK } from '@strutbook/domain/release/work-snapshot.js';
import { instant } from '@strutbook/domain/units/minutes.js';

/** What is held against releasing a package in which all is in order but what is given. */
export function heldAgainst(change: Partial<ReleaseSnapshot>): readonly Objection[] {
  return checkRelease({
    package: { id: 'w', kind: 'engine-change', airframeId: 'a', registration: 'ZZ-417', ruleSet: 'us-121' },
    at: instant(0),
    positions: [],
    component: null,
    flights: [],
    work: NO_WORK,
    requirements: [],
    releaser: null,
    plannedStayCycles: null,
    ...change,
  });
}
