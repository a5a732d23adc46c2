import type { Capture } from '@strutbook/domain/work/capture.js';
import type { Entry, Step } from '../work/work-shapes.js';

/** Entries of a capture, struck out ones too, in the order recorded. */
export const entriesOf = (step: Step, capture: Pick<Capture, 'key'>): Entry[] =>
  step.entries.filter((entry) => entry.capture === capture.key);

/** The entry that decides: the last that is not struck out. */
export const lastEntry = (
  step: Step,
  capture: Pick<Capture, 'key'>,
  point: string | null = null,
): Entry | null =>
  entriesOf(step, capture).findLast((entry) => !entry.voided && (point === null || entry.point === point)) ??
  null;

export const isAccepted = (entry: Entry | null): boolean => entry?.judgement.verdict === 'accepted';

/** How a capture stands: all of it accepted, something of it rejected, or not captured yet. */
export function captureStanding(step: Step, capture: Capture): 'accepted' | 'rejected' | 'missing' {
  const points: readonly (string | null)[] = capture.kind === 'torque' ? capture.points : [null];
  const last = points.map((point) => lastEntry(step, capture, point));
  if (last.some((entry) => entry !== null && !isAccepted(entry))) return 'rejected';
  return last.every(isAccepted) ? 'accepted' : 'missing';
}

/** Whether a signature counts that a new entry would take its hold from. */
export const holdsSignature = (step: Step): boolean => step.signatures.some(({ counts }) => counts);
