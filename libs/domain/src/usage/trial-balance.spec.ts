import { describe, expect, it } from '@jest/globals';
import { type Counts, zeroCounts } from './counts.js';
import { trialBalance } from './trial-balance.js';

const counts = (minutes: number, flights: number): Counts => ({ ...zeroCounts, minutes, flights });

describe('the trial balance', () => {
  const row = {
    airframeId: 'a',
    positionCarrierId: 'p',
    flown: counts(600, 5),
    runs: counts(20, 0),
    onEngines: counts(420, 3),
    empty: counts(90, 1),
    notRunning: counts(110, 1),
  };

  it('is zero where everything flown and run is accounted for', () => {
    expect(trialBalance([row])[0]?.difference).toEqual(zeroCounts);
  });

  it('shows to the minute what is missing', () => {
    const [answer] = trialBalance([{ ...row, onEngines: counts(419, 3) }]);
    expect(answer?.difference).toEqual(counts(1, 0));
  });
});
