import { describe, expect, test } from '@jest/globals';
import { calendarDate, instantOf, isoOf, utcDate, utcMoment, utcTime } from './utc-date.js';
import { parseDate, parseMoment } from './utc-moment.js';

describe('a typed moment', () => {
  test('is read as UTC', () => {
    const parsed = parseMoment('2026-11-11 14:05');
    expect(parsed).toEqual({ ok: true, instant: Date.UTC(2026, 10, 11, 14, 5) / 60_000 });
    expect(parseMoment(' 2026-11-11T14:05Z ')).toEqual(parsed);
    expect(parseMoment('2024-02-29 00:00')).toEqual({ ok: true, instant: Date.UTC(2024, 1, 29) / 60_000 });
  });

  test.each(['2026-11-31 10:00', '2025-02-29 10:00', '2026-13-01 10:00'])(
    'is refused on a day the calendar lacks: %p',
    (typed) => {
      expect(parseMoment(typed)).toMatchObject({
        ok: false,
        reason: expect.stringContaining('no such date'),
      });
    },
  );

  test.each(['2026-11-11 24:00', '2026-11-11 10:60'])('is refused at a time the day lacks: %p', (typed) => {
    expect(parseMoment(typed)).toEqual({ ok: false, reason: 'Enter a time from 00:00 to 23:59' });
  });

  test.each(['11.11.2026 14:05', '03/04/26', '2026-11-11', ''])(
    'is refused in another order, never guessed: %p',
    (typed) => {
      expect(parseMoment(typed)).toMatchObject({
        ok: false,
        reason: expect.stringContaining('2026-11-11 14:05'),
      });
    },
  );
});

describe('dates', () => {
  const instant = Date.UTC(2026, 10, 11, 14, 5) / 60_000;

  test('are shown in UTC whatever the zone of the machine', () => {
    expect(utcDate(instant)).toBe('11 Nov 2026');
    expect(utcTime(instant)).toBe('14:05Z');
    expect(utcMoment(instant)).toBe('11 Nov 2026 14:05Z');
    expect(utcMoment(0)).toBe('1 Jan 1970 00:00Z');
  });

  test('go to the wire and back', () => {
    expect(isoOf(instant)).toBe('2026-11-11T14:05:00.000Z');
    expect(instantOf('2026-11-11T14:05:59.999Z')).toBe(instant);
    expect(instantOf('soon')).toBeNull();
  });

  test('without a time keep their day', () => {
    expect(calendarDate('2026-03-02')).toBe('2 Mar 2026');
    expect(calendarDate('2026-3-2')).toBe('2026-3-2');
    expect(parseDate('2026-11-11')).toEqual({ ok: true, date: '2026-11-11' });
    expect(parseDate('2026-02-30').ok).toBe(false);
  });
});
