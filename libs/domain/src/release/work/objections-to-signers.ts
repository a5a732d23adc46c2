import { countingSignatures } from '../../work/step-standing.js';
import type { Objection } from '../objection.js';
import type { WorkSnapshot } from '../work-snapshot.js';

/**
 * Who signed a step on a day that no standing authorisation covers, each person, kind of signature and day once. Only
 * signatures that count are looked at. Total.
 */
export function objectionsToSigners({ steps, signers }: WorkSnapshot): readonly Objection[] {
  const counting = new Set(
    steps.flatMap((step) =>
      Object.values(countingSignatures(step)).flatMap((signature) => signature?.id ?? []),
    ),
  );
  const told = new Map<string, Objection>();
  for (const { signatureId, personId, name, scope, on, authorised } of signers)
    if (!authorised && counting.has(signatureId))
      told.set(JSON.stringify([personId, scope, on]), {
        code: 'SIGNER_NOT_AUTHORISED',
        severity: 'blocking',
        positionNumber: null,
        record: { kind: 'person', id: personId },
        detail: { person: name, scope, on },
      });
  return [...told.values()];
}
