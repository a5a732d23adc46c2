import type { Objection } from './objection.js';
import type { ReleaserSnapshot, RequirementSnapshot } from './work-snapshot.js';

const CODES = {
  over: 'REQUIREMENT_OVER',
  'not-verified': 'REQUIREMENT_NOT_VERIFIED',
  'in-tolerance': 'REQUIREMENT_IN_TOLERANCE',
} as const;

/**
 * What is held against requirements: over, or not verified; one past its due inside what it grants is told. One that this package accomplishes is met by its
 * release. Total.
 */
export function objectionsToRequirements(requirements: readonly RequirementSnapshot[]): readonly Objection[] {
  return requirements
    .filter(({ verdict, closedHere }) => verdict !== 'in-order' && !closedHere)
    .map(({ id, name, on, positionNumber, verdict, why }) => ({
      code: CODES[verdict as keyof typeof CODES],
      severity: verdict === 'in-tolerance' ? 'advisory' : 'blocking',
      positionNumber,
      record: { kind: 'requirement', id },
      detail: { name, on, why },
    }));
}

/** What is held against who asks for the release; nothing where nobody asks who could sign it. Total. */
export function objectionsToReleaser(releaser: ReleaserSnapshot | null): readonly Objection[] {
  if (releaser === null) return [];
  const { personId, name, licence, authorised } = releaser;
  const held = (code: Objection['code']): Objection => ({
    code,
    severity: 'blocking',
    positionNumber: null,
    record: { kind: 'person', id: personId },
    detail: { person: name },
  });
  return [
    ...(authorised ? [] : [held('RELEASER_NOT_AUTHORISED')]),
    ...(licence === null || licence.trim() === '' ? [held('RELEASER_WITHOUT_LICENCE')] : []),
  ];
}
