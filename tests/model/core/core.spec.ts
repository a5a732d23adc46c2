import { describe, expect, it } from '@jest/globals';
import { core } from './core-under-test.js';
import { ACTS, findDifference, type Tally } from './play-history.js';
import { runs, seed } from './seed.js';

describe('the core, against plain lists summed from the beginning', () => {
  it(`agrees in every figure over ${runs} histories of ${ACTS} acts`, () => {
    console.log(`MODEL_SEED=${seed} MODEL_RUNS=${runs}`);
    const tally: Tally = { recorded: new Map(), refused: 0 };
    const begun = performance.now();
    expect(findDifference(core, { runs, seed, tally })).toBeNull();
    const told = [...tally.recorded].map(([kind, count]) => `${kind} ${count}`).join(', ');
    console.log(`${told}; refused ${tally.refused}; ${Math.round(performance.now() - begun)} ms`);
    // Each kind of act does happen, and some are refused: else the comparison would prove nothing.
    for (const kind of ['fly', 'void', 'correct', 'change', 'move', 'rate', 'shift'])
      expect(tally.recorded.get(kind) ?? 0).toBeGreaterThan(runs);
    expect(tally.refused).toBeGreaterThan(runs);
  }, 600_000);
});
