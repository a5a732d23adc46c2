import { describe, expect, it } from '@jest/globals';
import { instant } from '../units/minutes.js';
import { positionClock, readClock } from './clock.js';
import { zeroCounts } from './counts.js';

const posted = [
  { carrierId: 'a', at: instant(200), counts: { ...zeroCounts, minutes: 50, flights: 1 } },
  { carrierId: 'a', at: instant(100), counts: { ...zeroCounts, minutes: 30, flights: 1 } },
];

describe('a clock', () => {
  it('includes what is posted at the instant it is read', () => {
    expect(readClock(posted, instant(99))).toEqual(zeroCounts);
    expect(readClock(posted, instant(100)).minutes).toBe(30);
    expect(readClock(posted, instant(199)).minutes).toBe(30);
    expect(readClock(posted, instant(200)).flights).toBe(2);
  });

  it('of a position is its airframe’s less what did not run there', () => {
    const flown = { ...zeroCounts, minutes: 80, flights: 2 };
    expect(positionClock(flown, { ...zeroCounts, minutes: -30 })).toEqual({ ...flown, minutes: 50 });
  });
});
