import { describe, expect, it } from '@jest/globals';
import { fraction } from '../units/fraction.js';
import { zeroCounts } from './counts.js';
import { type CycleRule, cycles, cycleUnits } from './cycle-rule.js';

const rule: CycleRule = {
  id: 'r',
  perFlight: 4,
  perLanding: 0,
  perTouchAndGo: 1,
  perStart: 2,
  perAbortedTakeOff: 3,
  denominator: 4,
};

describe('a cycle rule', () => {
  it('weighs each kind of event', () => {
    const counts = {
      ...zeroCounts,
      minutes: 90,
      flights: 1,
      landings: 3,
      touchAndGoes: 2,
      starts: 1,
      abortedTakeOffs: 1,
    };
    expect(cycleUnits(counts, rule)).toBe(4 + 2 + 2 + 3);
    expect(cycles(counts, rule)).toEqual(fraction(11, 4));
    expect(cycleUnits(counts, { ...rule, perFlight: 0, perLanding: 4 })).toBe(12 + 2 + 2 + 3);
  });

  it('makes no cycles of minutes alone', () => {
    expect(cycleUnits({ ...zeroCounts, minutes: 600 }, rule)).toBe(0);
  });
});
