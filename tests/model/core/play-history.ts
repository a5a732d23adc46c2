import fc from 'fast-check';
import { chooseAct, DRAW_LIMITS, type Draw } from './choose-act.js';
import { compare, type Difference } from './compare.js';
import type { Core } from './core-under-test.js';
import { record } from './kept-acts.js';
import { KeptWorld } from './kept-world.js';
import { PlainModel } from './plain-model.js';

/** How many acts a history has. */
export const ACTS = 200;

/** After so many acts everything is compared, and at the end. */
const COMPARE_EVERY = 50;

const numbers = DRAW_LIMITS.map((max) => fc.integer({ min: 0, max }));

/** The draws of one history. */
export const history: fc.Arbitrary<readonly Draw[]> = fc.array(
  fc.tuple(...numbers) as unknown as fc.Arbitrary<Draw>,
  { minLength: ACTS, maxLength: ACTS },
);

/** What was recorded, by kind, and how many acts were refused, over all histories. */
export interface Tally {
  readonly recorded: Map<string, number>;
  refused: number;
}

/** Plays one history on the core and on the plain lists, and compares them on the way; the first difference, or null. */
export function play(core: Core, draws: readonly Draw[], tally: Tally): Difference | null {
  const [world, model] = [new KeptWorld(core), new PlainModel()];
  let now = 5;
  for (const [index, draw] of draws.entries()) {
    const chosen = chooseAct(model, now, draw, `flight ${index}`);
    if (chosen !== null) {
      const { act, acceptable } = chosen;
      const accepted = record(world, act);
      if (accepted !== acceptable)
        return { what: 'acceptance', subject: JSON.stringify(act), plain: acceptable, core: accepted };
      if (accepted) {
        model.apply(act);
        tally.recorded.set(act.kind, (tally.recorded.get(act.kind) ?? 0) + 1);
        now = Math.max(now, latestInstant(act));
      } else tally.refused += 1;
    }
    if ((index + 1) % COMPARE_EVERY === 0 || index + 1 === draws.length) {
      const difference = compare(world, model, now, (draw[1] * 37) % (now + 1));
      if (difference !== null) return difference;
    }
  }
  return null;
}

/** What was found wrong: the difference (or what the core threw), and the shortest history that shows it. */
export interface Found {
  readonly wrong: Difference | string;
  readonly draws: readonly Draw[];
  readonly histories: number;
}

/** Plays histories until one differs; null when none does. Without `shrink` the first found is answered as it is. */
export function findDifference(
  core: Core,
  {
    runs,
    seed,
    tally,
    shrink = true,
  }: { readonly runs: number; readonly seed: number; readonly tally: Tally; readonly shrink?: boolean },
): Found | null {
  const property = fc.property(history, (draws) => play(core, draws, tally) === null);
  const details = fc.check(property, { numRuns: runs, seed, endOnFailure: !shrink });
  if (!details.failed) return null;
  const draws = details.counterexample?.[0] ?? [];
  return {
    wrong: wrongIn(core, draws),
    draws: draws.filter(([what]) => what !== 0),
    histories: details.numRuns,
  };
}

function wrongIn(core: Core, draws: readonly Draw[]): Difference | string {
  try {
    return play(core, draws, { recorded: new Map(), refused: 0 }) ?? 'nothing wrong when played again';
  } catch (error) {
    return `thrown: ${error instanceof Error ? error.stack : error}`;
  }
}

function latestInstant(act: Parameters<typeof record>[1]): number {
  if (act.kind === 'fly' || act.kind === 'correct') return act.flight.landing;
  return act.kind === 'void' ? 0 : act.at;
}
