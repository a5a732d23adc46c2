import type { Capture } from './capture.js';
import type { EntryReason, StepEntry } from './entry.js';
import type { StepFacts, StepSignatureFacts } from './step-facts.js';

export type { StepFacts, StepSignatureFacts } from './step-facts.js';

/** The signatures that hold for a step as it is now. */
export interface CountingSignatures {
  readonly done: StepSignatureFacts | null;
  readonly inspection: StepSignatureFacts | null;
}

/**
 * The signatures that count: of the work, when it is not undone and was given on the present content; of the
 * inspection, when it covers that one, on the same content, by another person or as a recorded re-inspection.
 *
 * Source: FAA AC 120-78, from memory (a later change does not carry the old signature); 14 CFR 121.371 and AMC
 * M.A.402 of Reg. (EU) 1321/2014 (who inspects did not do the work; one-person re-inspection). Total.
 */
export function countingSignatures(step: StepFacts): CountingSignatures {
  const holding = step.signatures.filter((each) => !each.undone && each.contentHash === step.contentHash);
  const done = holding.findLast((each) => each.meaning === 'done') ?? null;
  const inspection = holding.findLast(
    (each) => each.meaning === 'inspection' && done !== null && coversBy(each, done),
  );
  return { done, inspection: inspection ?? null };
}

function coversBy(inspection: StepSignatureFacts, done: StepSignatureFacts): boolean {
  return inspection.coversId === done.id && mayInspect(done, inspection.personId, inspection.reinspection);
}

/**
 * Whether a person may inspect the work of that signature: another person, or the same one where a one-person
 * re-inspection is recorded (whether the rule set allows one is asked elsewhere).
 *
 * Source: 14 CFR 121.371(c); AMC M.A.402(h) of Reg. (EU) 1321/2014. Total.
 */
export function mayInspect(
  done: Pick<StepSignatureFacts, 'personId'>,
  personId: string,
  reinspection: boolean,
): boolean {
  return done.personId !== personId || reinspection;
}

/** Whether the step is done: its signature counts, and its inspection too where it asks for one. Total. */
export function isFinished(step: StepFacts): boolean {
  const { done, inspection } = countingSignatures(step);
  return done !== null && (step.definition.inspection === 'none' || inspection !== null);
}

/** Whether somebody signed the work and did not undo it, on whatever content it had then. Total. */
export function wasSigned(step: StepFacts): boolean {
  return step.signatures.some((each) => each.meaning === 'done' && !each.undone);
}

/** Something a step asks for that is not there, or not accepted. */
export interface Missing {
  readonly code: 'CAPTURE_MISSING' | 'CAPTURE_REJECTED';
  /** Key of the capture. */
  readonly capture: string;
  readonly point: string | null;
  readonly label: string;
  readonly reasons: readonly EntryReason[];
}

/**
 * What keeps a step from being signed. The last entry of a capture (of a point, for a torque) decides: an attempt
 * after an accepted one counts. A text or a picture that is not required may be absent. Total.
 */
export function missingEntries({
  definition,
  entries,
}: Pick<StepFacts, 'definition' | 'entries'>): Missing[] {
  return definition.captures.flatMap((capture) =>
    pointsOf(capture).flatMap((point): Missing[] => {
      const last = lastEntry(entries, capture.key, point);
      if (last?.judgement.verdict === 'accepted' || (last === null && mayBeAbsent(capture))) return [];
      const about = { capture: capture.key, point, label: capture.label };
      return last === null
        ? [{ code: 'CAPTURE_MISSING', ...about, reasons: [] }]
        : [{ code: 'CAPTURE_REJECTED', ...about, reasons: last.judgement.reasons }];
    }),
  );
}

/** The last entry for a capture and point; null when there is none. Total. */
export function lastEntry(
  entries: readonly StepEntry[],
  capture: string,
  point: string | null,
): StepEntry | null {
  return entries.findLast((entry) => entry.capture === capture && entry.point === point) ?? null;
}

function pointsOf(capture: Capture): readonly (string | null)[] {
  return capture.kind === 'torque' ? capture.points : [null];
}

function mayBeAbsent(capture: Capture): boolean {
  return (capture.kind === 'text' || capture.kind === 'photo') && !capture.required;
}

/** A step that must be done before another. */
export interface Blocker {
  readonly code: 'STEP_UNSIGNED' | 'INSPECTION_MISSING';
  readonly stepId: string;
  readonly number: number;
  readonly title: string;
}

/**
 * The steps a step waits for that are not finished, in its own order of naming them.
 *
 * Throws when it waits for a step that is not among `all`: that would let it pass unseen.
 */
export function blockersOf(step: StepFacts, all: readonly StepFacts[]): Blocker[] {
  return step.definition.waitsFor.flatMap((key) => {
    const before = all.find((each) => each.definition.key === key);
    if (before === undefined) throw new RangeError(`a step waits for ${key}, which is not in the package`);
    if (isFinished(before)) return [];
    const code = countingSignatures(before).done === null ? 'STEP_UNSIGNED' : 'INSPECTION_MISSING';
    const { number, title } = before.definition;
    return [{ code, stepId: before.id, number, title }];
  });
}

/** How a step stands. */
export type StepStanding = 'blocked' | 'open' | 'to-inspect' | 'signed' | 'changed' | 'rejected';

/**
 * How a step stands, the first that is true: 'signed' (finished), 'to-inspect' (work signed, inspection owed),
 * 'rejected' (a last entry is not accepted), 'changed' (signed once, its content differs now), 'blocked' (waits
 * for another step), 'open'. Throws as `blockersOf`.
 */
export function standingOf(step: StepFacts, all: readonly StepFacts[]): StepStanding {
  if (isFinished(step)) return 'signed';
  if (countingSignatures(step).done !== null) return 'to-inspect';
  // Before 'changed': a serial found wrong on a step signed before says so first.
  if (missingEntries(step).some((each) => each.code === 'CAPTURE_REJECTED')) return 'rejected';
  if (wasSigned(step)) return 'changed';
  return blockersOf(step, all).length > 0 ? 'blocked' : 'open';
}
