import { describe, expect, it } from '@jest/globals';
import { offsetAtStartOf } from './day-zone.js';

// Clock changes of 2025: IANA time zone database (Europe/Berlin 30 March and 26 October, 01:00 UTC).
describe('the offset where a day begins', () => {
  it('is the old one on the day the clocks change, and the new one the day after', () => {
    expect(offsetAtStartOf('Europe/Berlin', '2025-03-30')).toBe(60);
    expect(offsetAtStartOf('Europe/Berlin', '2025-03-31')).toBe(120);
    expect(offsetAtStartOf('Europe/Berlin', '2025-10-26')).toBe(120);
    expect(offsetAtStartOf('Europe/Berlin', '2025-10-27')).toBe(60);
  });

  it('holds far from Greenwich too, where the day begins on another date in UTC', () => {
    expect(offsetAtStartOf('Pacific/Auckland', '2025-04-06')).toBe(780);
    expect(offsetAtStartOf('Pacific/Auckland', '2025-04-07')).toBe(720);
    expect(offsetAtStartOf('America/New_York', '2025-03-09')).toBe(-300);
    expect(offsetAtStartOf('America/New_York', '2025-03-10')).toBe(-240);
    expect(offsetAtStartOf('UTC', '2025-03-30')).toBe(0);
  });
});
