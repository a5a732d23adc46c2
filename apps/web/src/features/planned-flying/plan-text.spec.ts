import { describe, expect, it } from '@jest/globals';
import { readPlan } from './plan-text.js';

const flight = { fromStation: 'VDL', toStation: 'KRN' };

describe('flights pasted for a plan', () => {
  it.each([
    ['tabs', '2026-11-30\tVDL\tKRN\t14:20\t16:05'],
    ['commas and a flight number', 'T 12,2026-11-30,vdl,krn,14:20,16:05'],
    ['semicolons, times in full', '2026-11-30;VDL;KRN;2026-11-30 14:20;2026-11-30 16:05'],
    ['headings in another order', 'To\tFrom\tTake-off\tLanding\tDate\nKRN\tVDL\t14:20\t16:05\t2026-11-30'],
  ])('are read by %s', (_what, text) => {
    const { flights, faults } = readPlan(text);
    expect(faults).toEqual([]);
    expect(flights).toMatchObject([
      { ...flight, takeOffAt: '2026-11-30T14:20Z', landingAt: '2026-11-30T16:05Z' },
    ]);
  });

  it('land on the next day where they say so, or earlier in the day than they took off', () => {
    for (const landing of ['00:35+1', '00:35'])
      expect(readPlan(`2026-11-30,VDL,KRN,23:10,${landing}`).flights).toMatchObject([
        { landingAt: '2026-12-01T00:35Z' },
      ]);
  });

  it('tell every line that is not readable, and keep the lines of the rest', () => {
    const text =
      'X1,2026-11-31,VDL,KRN,10:00,11:00\n\nX2,2026-11-30,VDL,KRN,10:00,\nX3,2026-11-30,VDL,KRN,12:00,13:00\nX4,2026-11-30,V,KRN,14:00,15:00';
    const { flights, lines, faults } = readPlan(text);

    expect(flights.map(({ flightNumber }) => flightNumber)).toEqual(['X3']);
    expect(lines).toEqual([4]);
    expect(faults.map(({ line }) => line)).toEqual([1, 3, 5]);
  });

  it('are none of an empty text', () => {
    expect(readPlan(' \n')).toEqual({ flights: [], lines: [], faults: [] });
  });
});
