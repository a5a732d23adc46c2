import { createHash } from 'node:crypto';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import { stepStatement } from '@strutbook/domain/work/step-content.js';
import { countingSignatures, type StepFacts } from '@strutbook/domain/work/step-standing.js';
import { canonical } from '@strutbook/journal/canonical.js';
import { instantToWire } from '../../platform/http/instants.js';
import type { Order } from '../../records/work/orders.js';
import type { PackageHead } from '../../records/work/package-head.js';

export type Meaning = 'done' | 'inspection';

/** What a signature is asked on: which step of what, that it was done or looked at, when, and by whom. */
export interface Asked {
  readonly head: PackageHead;
  readonly orders: readonly Order[];
  readonly step: StepFacts;
  readonly meaning: Meaning;
  readonly performedAt: Instant;
  readonly signer: { readonly personId: string; readonly fullName: string; readonly licence: string | null };
  readonly reinspectionReason: string | null;
}

/** The words that are signed, and the digest by which they are known again. */
export interface Words {
  readonly statement: string;
  readonly digest: string;
}

/** The words a signature is given on, with the digest of words, content, meaning and moment. Total. */
export function wordsOf({
  head,
  orders,
  step,
  meaning,
  performedAt,
  signer,
  reinspectionReason,
}: Asked): Words {
  const { done } = countingSignatures(step);
  const statement = stepStatement({
    package: { title: head.title, reference: head.reference ?? head.number, on: onWhat(head, orders) },
    step: step.definition,
    entries: step.entries,
    meaning,
    performedAt,
    signer: { name: signer.fullName, licence: signer.licence },
    doneBy: done?.personName ?? null,
    // A reason is signed only where the signer inspects their own work.
    reinspectionReason: done?.personId === signer.personId ? reinspectionReason : null,
  });
  const { id: stepId, contentHash } = step;
  const seen = { statement, stepId, contentHash, meaning, performedAt: instantToWire(performedAt) };
  return { statement, digest: createHash('sha256').update(canonical(seen)).digest('hex') };
}

/** What a package is on, in words: 'airframe ZZ-417, position 2'. */
function onWhat({ airframe, component }: PackageHead, orders: readonly Order[]): string {
  const whole =
    airframe !== null
      ? `airframe ${airframe.registration}`
      : component !== null
        ? `${component.kind} ${component.partNumber}, serial ${component.serialNumber}`
        : 'nothing';
  const places = orders.map(({ position, slot }) =>
    position === null ? slot.name : `position ${position.number}`,
  );
  return [whole, ...places].join(', ');
}
