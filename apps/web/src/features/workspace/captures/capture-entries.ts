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

/** How one point of a capture stands by its last entry. */
export function pointStanding(
  step: Step,
  capture: Pick<Capture, 'key'>,
  point: string | null,
): 'accepted' | 'rejected' | 'missing' {
  const last = lastEntry(step, capture, point);
  if (last === null) return 'missing';
  return isAccepted(last) ? 'accepted' : 'rejected';
}

/** How a capture stands: all of it accepted, something of it rejected, or not captured yet. */
export function captureStanding(step: Step, capture: Capture): 'accepted' | 'rejected' | 'missing' {
  const points: readonly (string | null)[] = capture.kind === 'torque' ? capture.points : [null];
  const standings = points.map((point) => pointStanding(step, capture, point));
  if (standings.includes('rejected')) return 'rejected';
  return standings.includes('missing') ? 'missing' : 'accepted';
}

/** Whether a signature counts that a new entry would take its hold from. */
export const holdsSignature = (step: Step): boolean => step.signatures.some(({ counts }) => counts);
