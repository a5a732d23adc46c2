import { describe, expect, it } from '@jest/globals';
import { formatHours } from '@strutbook/domain/units/minutes.js';
import { flightCounts } from '@strutbook/domain/usage/flight.js';
import { flight, utc } from './engine-in-service.js';

/**
 * Source: 'time in service' of 14 CFR 1.1, as explained by aviationpros.com and askbob.aero: from leaving the
 * surface until touching it at the next landing. The times are invented.
 */
describe('time in service (14 CFR 1.1, as explained in two trade articles)', () => {
  it('runs from take-off to touchdown, not from block to block: 10:12 to 12:47 is 2:35, one flight', () => {
    // Off blocks 09:58, on blocks 12:58: three hours of block time, of no meaning here.
    const counts = flightCounts(flight(utc('2026-03-01', '10:12'), utc('2026-03-01', '12:47')));
    expect([formatHours(counts.minutes), counts.flights]).toEqual(['2:35', 1]);
  });

  it('runs on over midnight and the month’s end: 23:40 to 01:25 is 1:45, one flight', () => {
    const counts = flightCounts(flight(utc('2026-06-30', '23:40'), utc('2026-07-01', '1:25')));
    expect([formatHours(counts.minutes), counts.flights]).toEqual(['1:45', 1]);
  });
});
