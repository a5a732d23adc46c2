import { describe, expect, it } from '@jest/globals';
import { type Instant, instant } from '../units/minutes.js';
import { flightsAtRate, planFaults, plannedCounts } from './planned-flights.js';

const leg = (takeOff: number, landing: number) => ({
  takeOffAt: instant(takeOff),
  landingAt: instant(landing),
});
const NOW: Instant = instant(1000);

describe('the faults of a plan', () => {
  it('are flights that end before they begin, are past, or overlap', () => {
    expect(planFaults([leg(1100, 1100), leg(900, 1050), leg(1300, 1400), leg(1350, 1500)], NOW)).toEqual([
      { code: 'ENDS_BEFORE_IT_BEGINS', at: 0 },
      { code: 'IN_THE_PAST', at: 1 },
      { code: 'OVERLAP', at: 3, with: 2 },
    ]);
  });

  it('are none where one lands as the next takes off, in any order, from this minute on', () => {
    expect(planFaults([leg(1200, 1300), leg(1000, 1200)], NOW)).toEqual([]);
  });

  it('include a flight inside a longer one that is not its neighbour', () => {
    expect(planFaults([leg(1000, 2000), leg(1100, 1200), leg(1500, 1600)], NOW)).toEqual([
      { code: 'OVERLAP', at: 1, with: 0 },
      { code: 'OVERLAP', at: 2, with: 0 },
    ]);
  });
});

describe('the flights of a rate', () => {
  it('are spread evenly from now on, and their minutes add up', () => {
    const legs = flightsAtRate({ minutes: 1000, flights: 7, days: 7 }, NOW, 7);

    expect(legs).toHaveLength(7);
    expect(legs[0]?.takeOffAt).toBe(1000);
    expect(legs[1]?.takeOffAt).toBe(1000 + 1440);
    expect(legs.reduce((sum, each) => sum + plannedCounts(each).minutes, 0)).toBe(1000);
    expect(planFaults(legs, NOW)).toEqual([]);
  });

  it('round a part of a flight up: no use is left out', () => {
    expect(flightsAtRate({ minutes: 600, flights: 10, days: 7 }, NOW, 1)).toHaveLength(2);
  });

  it('never overlap while the rate flies no more than its days have', () => {
    expect(planFaults(flightsAtRate({ minutes: 1440, flights: 7, days: 1 }, NOW, 9), NOW)).toEqual([]);
  });

  it('count one flight, one landing and one start each', () => {
    expect(plannedCounts(leg(0, 95))).toEqual({
      ...{ minutes: 95, flights: 1, landings: 1, touchAndGoes: 0, starts: 1, abortedTakeOffs: 0 },
    });
  });
});
