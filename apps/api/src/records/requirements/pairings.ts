import type { Assessment, Requirement } from '../../platform/database/generated/client.js';
import { assessmentFor } from './facts/assessments.js';
import type { Linked, Links } from './facts/links.js';
import { creditedTo, type MetRow } from './facts/met.js';
import { type Reason, reasonOf } from './reasons.js';
import { follows, isSerialInside, ofAnother, outside } from './rule/applicability.js';
import { needsAssessment } from './rule/requirement-rule.js';
import type { Subject } from './subjects.js';

/** A requirement and a subject it follows, with what decides whether it applies. */
export interface Pairing {
  readonly requirement: Requirement;
  readonly subject: Subject;
  /** What was accomplished and counts for it, in order. */
  readonly done: readonly MetRow[];
  /** Why it does not apply; null when it does, or may. */
  readonly notFor: Reason | null;
  readonly isForSubject: boolean;
  /** Why nobody can tell whether it applies. */
  readonly doubts: readonly Reason[];
  readonly assessment: Assessment | null;
  readonly closedBy: { readonly by: Linked; readonly reason: Reason } | null;
}

interface Beside {
  readonly met: ReadonlyMap<string, readonly MetRow[]>;
  readonly links: Links;
  readonly assessments: ReadonlyMap<string, readonly Assessment[]>;
  /** With those that do not apply, of any kind. */
  readonly withAll: boolean;
}

/** Which requirements are told of which subjects. Total. */
export function pairingsOf(
  rows: readonly Requirement[],
  subjects: readonly Subject[],
  beside: Beside,
): Pairing[] {
  return subjects.flatMap((subject) =>
    rows
      .filter((row) => follows(row, subject))
      .flatMap((row) => {
        const another = ofAnother(row, subject);
        if (another !== null && !beside.withAll) return [];
        const pairing = pairingOf(row, subject, another, beside);
        return pairing.notFor === null || beside.withAll || toldWithReason(row) ? [pairing] : [];
      }),
  );
}

// That a directive or a bulletin does not apply is an answer; that an inspection is another's goes without saying.
function toldWithReason({ kind }: Requirement): boolean {
  return kind === 'directive' || kind === 'bulletin';
}

function pairingOf(
  requirement: Requirement,
  subject: Subject,
  another: Reason | null,
  { met, links, assessments }: Beside,
): Pairing {
  const here = met.get(subject.id) ?? [];
  const codes = new Set(here.map((row) => row.requirement.code));
  const { supersedesId } = requirement;
  const superseded = supersedesId === null ? null : (links.codeOf.get(supersedesId) ?? null);
  const done = creditedTo(requirement, here, superseded);
  const assessment = assessmentFor(assessments.get(requirement.id) ?? [], subject);
  const scope = another ?? outside(requirement, subject, codes);
  const notAssessed =
    assessment !== null && !assessment.applicable
      ? { code: 'ASSESSED_NOT_APPLICABLE', words: assessment.reason ?? 'Assessed as not applicable' }
      : null;
  const isMetByIt = here.some((row) => row.requirementId === requirement.id);
  const isDoubtful = isSerialInside(requirement, subject) === null && assessment === null && !isMetByIt;
  return {
    requirement,
    subject,
    done,
    notFor: scope ?? notAssessed,
    isForSubject: scope === null || scope.code === 'MODIFIED' || scope.code === 'NOT_MODIFIED',
    doubts: [
      ...(isDoubtful ? [reasonOf('SERIAL_NOT_COMPARED')] : []),
      // Who complies with a revision has found that it applies.
      ...(needsAssessment(requirement) && assessment === null && !isMetByIt
        ? [reasonOf('NEVER_ASSESSED')]
        : []),
    ],
    assessment,
    closedBy: closedBy(requirement, codes, links),
  };
}

function closedBy(
  { code }: Requirement,
  metCodes: ReadonlySet<string>,
  { supersededBy, terminatedBy }: Links,
): Pairing['closedBy'] {
  const newer = supersededBy.get(code);
  if (newer !== undefined)
    return { by: newer, reason: { code: 'SUPERSEDED', words: `Superseded by ${newer.code}` } };
  const ending = terminatedBy.get(code)?.find((other) => metCodes.has(other.code));
  if (ending === undefined) return null;
  return {
    by: ending,
    reason: { code: 'TERMINATED', words: `Ended by ${ending.code}, which was accomplished on it` },
  };
}
