import { describe, expect, it } from '@jest/globals';
import { groundRunCounts } from '@strutbook/domain/runs/ground-run.js';
import { addCounts, subtractCounts, zeroCounts } from '@strutbook/domain/usage/counts.js';
import { runBalance, trialBalance } from '@strutbook/domain/usage/trial-balance.js';

const seed = Number(process.env['RUNS_SEED'] ?? Date.now() % 1_000_000);

/** A small generator of numbers, the same for the same seed. */
function numbers(start: number): (below: number) => number {
  let state = start + 1;
  return (below) => {
    state = (state * 48_271) % 2_147_483_647;
    return state % below;
  };
}

/** Source: common practice, no source; double entry: what is posted on one side stands on the other. */
describe(`minutes and events of runs and exceptions (common practice, no source; RUNS_SEED=${seed})`, () => {
  it('add up to the last one, and a single minute lost shows', () => {
    const next = numbers(seed);
    for (let round = 0; round < 200; round += 1) {
      const sides = { flown: zeroCounts, runs: zeroCounts, onEngines: zeroCounts, empty: zeroCounts };
      const row = { ...sides, notRunning: zeroCounts, airframeId: 'a', positionCarrierId: 'p' };
      for (let event = 0; event < 1 + next(30); event += 1) {
        const flight = { ...zeroCounts, minutes: 1 + next(600), flights: 1, landings: 1, starts: next(3) };
        const missed = { ...zeroCounts, minutes: next(flight.minutes) };
        const taker = next(2) === 0 ? 'onEngines' : 'empty';
        if (next(3) === 0) {
          const run = groundRunCounts({
            countedMinutes: next(60),
            starts: next(4),
            abortedTakeOffs: next(2),
          });
          row.runs = addCounts(row.runs, run);
          row[taker] = addCounts(row[taker], run);
          continue;
        }
        row.flown = addCounts(row.flown, flight);
        row.notRunning = addCounts(row.notRunning, missed);
        row[taker] = addCounts(row[taker], subtractCounts(flight, missed));
      }
      expect(trialBalance([row])[0]?.difference).toEqual(zeroCounts);
      const lost = { ...row, onEngines: { ...row.onEngines, minutes: row.onEngines.minutes - 1 } };
      expect(trialBalance([lost])[0]?.difference).toEqual({ ...zeroCounts, minutes: 1 });
      const cell = { ran: row.runs, taken: row.runs, notTaken: zeroCounts };
      expect(runBalance([cell])[0]?.difference).toEqual(zeroCounts);
    }
  });
});
