import { describe, expect, test } from '@jest/globals';
import { hours, hoursMinutes, hoursTenths, parseHours, thousands } from './hours.js';

describe('hours', () => {
  test('show minutes after a colon and a comma at each thousand of hours', () => {
    expect(hoursMinutes(21_480 * 60 + 36)).toBe('21,480:36');
    expect(hoursMinutes(1_234_567 * 60)).toBe('1,234,567:00');
    expect(hoursMinutes(222)).toBe('3:42');
    expect(hoursMinutes(0)).toBe('0:00');
    expect(hoursMinutes(5)).toBe('0:05');
  });

  test('keep the sign of a negative amount', () => {
    expect(hoursMinutes(-90)).toBe('\u22121:30');
    expect(thousands(-1234)).toBe('\u22121,234');
  });

  test('round half a tenth up, and leave the minutes alone', () => {
    expect(hoursTenths(63)).toBe('1.1');
    expect(hoursTenths(62)).toBe('1.0');
    expect(hoursTenths(57)).toBe('1.0');
    expect(hoursTenths(21_480 * 60 + 36)).toBe('21,480.6');
    expect(hoursTenths(-1)).toBe('0.0');
    expect(hours(222, 'tenths')).toBe('3.7');
    expect(hours(222)).toBe('3:42');
  });

  test('are read back from what they show', () => {
    for (const minutes of [0, 5, 59, 60, 222, 59_999, 60_000, 1_288_836]) {
      expect(parseHours(hoursMinutes(minutes))).toEqual({ ok: true, minutes });
    }
  });

  test.each(['3.7', '3:7', '3:60', '1,23:00', '', '-1:00', ':30'])(
    'refuse %p with what to enter',
    (typed) => {
      expect(parseHours(typed)).toEqual({
        ok: false,
        reason: 'Enter hours and minutes with a colon, for example 3:42',
      });
    },
  );
});
