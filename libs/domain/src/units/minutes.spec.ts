import { describe, expect, it } from '@jest/globals';
import { formatHours, instant, later, minutes, parseHours, tenths } from './minutes.js';

describe('whole minutes', () => {
  it('throw on a fraction', () => {
    expect(() => minutes(1.5)).toThrow(RangeError);
    expect(() => instant(Number.NaN)).toThrow(RangeError);
  });

  it('move an instant', () => {
    expect(later(instant(100), -30)).toBe(70);
  });
});

describe('hours as text', () => {
  it.each([
    [0, '0:00'],
    [59, '0:59'],
    [60, '1:00'],
    [540_390, '9006:30'],
    [-61, '-1:01'],
  ])('writes %i minutes as %s', (count, text) => {
    expect(formatHours(count)).toBe(text);
  });

  it.each([
    ['21,450:30', 1_287_030],
    ['21 450:30', 1_287_030],
    ['9006:30', 540_390],
    [' 0:05 ', 5],
  ])('reads %s', (text, count) => {
    expect(parseHours(text)).toEqual({ ok: true, value: count });
  });

  it.each(['2.5', '2:60', '-1:00', '', '1:5', '12,34:00', '2:05h'])('refuses %j', (text) => {
    expect(parseHours(text)).toEqual({ ok: false, refusal: { code: 'NOT_A_DURATION', text } });
  });
});

describe('tenths of an hour', () => {
  it('rounds a half tenth up or down as the convention says', () => {
    expect([2, 3, 8, 9].map((count) => tenths(count, 'half-up'))).toEqual([0, 1, 1, 2]);
    expect([3, 4, 9, 10].map((count) => tenths(count, 'half-down'))).toEqual([0, 1, 1, 2]);
  });

  it('rounds a negative duration by its size', () => {
    expect(tenths(-3, 'half-up')).toBe(-1);
    expect(tenths(-2, 'half-up')).toBe(0);
  });
});
