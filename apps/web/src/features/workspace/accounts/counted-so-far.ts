import type { CountCapture } from '@strutbook/domain/work/capture.js';
import { counted } from '../../../format/counts.js';
import { isAccepted, lastEntry } from '../captures/capture-entries.js';
import type { Step } from '../work/work-shapes.js';

export interface CountedSoFar {
  /** The sum of what was counted and accepted. */
  readonly number: number;
  /** How many counts that are asked for are still to come. */
  readonly toCome: number;
  /** How many are asked for. */
  readonly asked: number;
}

/** What was counted in one direction so far, and how many counts are still to come. Total. */
export function countedSoFar(
  steps: readonly Step[],
  what: CountCapture['what'],
  direction: CountCapture['direction'],
): CountedSoFar {
  const asked = steps.flatMap((step) =>
    step.definition.captures.flatMap((capture) =>
      capture.kind === 'count' && capture.what === what && capture.direction === direction
        ? [lastEntry(step, capture)]
        : [],
    ),
  );
  const numbers = asked.flatMap((entry) =>
    entry?.typed.kind === 'count' && isAccepted(entry) ? [Number(entry.typed.number)] : [],
  );
  return {
    number: numbers.reduce((sum, each) => sum + each, 0),
    toCome: asked.length - numbers.length,
    asked: asked.length,
  };
}

/** '57', '21, 4 counts to come', 'not counted'. */
export function soFarWords({ number, toCome, asked }: CountedSoFar): string {
  if (toCome === asked) return 'not counted';
  return toCome === 0 ? String(number) : `${number}, ${counted(toCome, 'count')} to come`;
}
