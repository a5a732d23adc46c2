import { describe, expect, it } from '@jest/globals';
import { brokenCores } from './broken-cores.js';
import { findDifference } from './play-history.js';
import { seed } from './seed.js';

/** Within so many histories a wrong rule must show. */
const WITHIN = 120;

describe('the comparison finds a core in which', () => {
  it.each(Object.entries(brokenCores))('%s', (name, broken) => {
    const tally = { recorded: new Map<string, number>(), refused: 0 };
    const found = findDifference(broken, { runs: WITHIN, seed, tally, shrink: false });
    console.log(
      `MODEL_SEED=${seed} ${name}: found in history ${found?.histories}: ${JSON.stringify(found?.wrong)?.slice(0, 160)}`,
    );
    expect(found).not.toBeNull();
    // Found as a wrong figure, not because something was thrown.
    expect(found?.wrong).toMatchObject({ what: expect.any(String) });
  });
});
