import { isFinished, type StepFacts } from '@strutbook/domain/work/step-standing.js';
import { instantToWire } from '../../platform/http/instants.js';
import type { ChangeRow, PlaceRow, ReleaseFacts } from './release-facts.js';

/** The package that is to be released, with the work it holds: plain JSON, part of what is signed. */
export interface WorkToRelease
  extends Pick<
    ReleaseFacts,
    'id' | 'number' | 'kind' | 'title' | 'reference' | 'status' | 'version' | 'procedure' | 'component'
  > {
  /** The airframe that is released; null for a component that hangs on none. */
  readonly airframe: NonNullable<ReleaseFacts['airframe']> | null;
  /** The airframe's registration, or the component's description and serial number. */
  readonly subject: string;
  readonly changes: readonly WorkDone[];
  /** When the last of it was done: a change, a step or a look at one; null while some of it is not. */
  readonly completedAt: string | null;
}

/** One change of the package. */
export interface WorkDone {
  /** 'Engine at position 2', or 'Stage 1 disk of KT-442'. */
  readonly place: string;
  readonly off: string | null;
  readonly on: string | null;
  readonly at: string;
  readonly reason: string;
  readonly counters: string;
}

const SLOT_WORDS: Readonly<Record<string, string>> = {
  engine: 'Engine',
  pod: 'Pod',
  apu: 'Auxiliary power unit',
};

/** The kinds of package in words. */
const KIND_WORDS: Readonly<Record<string, string>> = {
  'engine-change': 'engine change',
  'pod-swap': 'pod swap',
  inspection: 'inspection',
  'component-change': 'component change',
  directive: 'directive',
};

/** A place of a change or an order in words. Total. */
export function placeWords({ slotKind, slotName, position, parent }: PlaceRow): string {
  return position === null
    ? `${slotName} of ${parent ?? 'a component'}`
    : `${SLOT_WORDS[slotKind] ?? slotName} at position ${position}`;
}

/** The work of a package from what was read of it, and its steps as they are judged. Total. */
export function workOf(facts: ReleaseFacts, steps: readonly StepFacts[]): WorkToRelease {
  const { id, number, kind, title, reference, status, version, procedure, airframe, component } = facts;
  return {
    ...{ id, number, kind, title, reference, status, version, procedure, airframe, component },
    subject:
      airframe?.registration ?? (component === null ? '' : `${component.description} ${component.serial}`),
    changes: facts.changes.map((change) => ({
      place: placeWords(change),
      off: change.off?.serial ?? null,
      on: change.on?.serial ?? null,
      at: change.at,
      reason: change.reason,
      counters: change.counters,
    })),
    completedAt: completion(facts.changes, steps),
  };
}

/** The date of completion that an entry must have. Source: 14 CFR 43.9(a)(2), from memory. */
function completion(changes: readonly ChangeRow[], steps: readonly StepFacts[]): string | null {
  if (!steps.every(isFinished)) return null;
  const moments = [
    ...changes.map((change) => change.at),
    ...steps.flatMap((step) =>
      step.signatures
        .filter((signature) => !signature.undone)
        .map((signature) => instantToWire(signature.performedAt)),
    ),
  ];
  return moments.sort().at(-1) ?? null;
}

/** What was done, in one sentence, with when it was finished. Total. */
export function workSummary({ number, kind, title, subject, changes, completedAt }: WorkToRelease): string {
  const done = changes.map(({ place, off, on }) => {
    const moved = [
      off === null ? null : `serial ${off} removed`,
      on === null ? null : `serial ${on} installed`,
    ].filter((part) => part !== null);
    return `${place}: ${moved.join(', ')}`;
  });
  const what = `Package ${number}, ${KIND_WORDS[kind] ?? kind} on ${subject}.`;
  const told = `${what} ${changes.length === 0 ? title : done.join('; ')}.`;
  return completedAt === null ? told : `${told} Completed ${printed(completedAt)}.`;
}

/** 'YYYY-MM-DDTHH:MMZ' as it is read. Total. */
export function printed(at: string): string {
  return `${at.slice(0, 10)} at ${at.slice(11, 16)} UTC`;
}
