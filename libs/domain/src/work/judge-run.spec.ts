import { describe, expect, it } from '@jest/globals';
import type { LeakCheckCapture, ReadingsCapture } from './capture.js';
import { judgeLeakCheck, judgeReadings } from './judge-run.js';

const codes = (reasons: readonly { readonly code: string }[]) => reasons.map((reason) => reason.code);

describe('a leak check', () => {
  const capture: LeakCheckCapture = {
    kind: 'leak-check',
    key: 'idle-check',
    label: 'Leak check at idle',
    minMinutes: 5,
    power: 'idle',
  };
  const check = (minutes: string, power: string, found: 'none' | 'leak' = 'none') =>
    codes(judgeLeakCheck(capture, { kind: 'leak-check', minutes, power, found }));

  it('lasts as long as asked for', () => {
    expect(['4', '4.9', '5', '5,0', '12'].map((minutes) => check(minutes, 'idle'))).toEqual([
      ['DURATION_SHORT'],
      ['DURATION_SHORT'],
      [],
      [],
      [],
    ]);
    expect(check('', 'idle')).toEqual(['DURATION_MISSING']);
    expect(check('five', 'idle')).toEqual(['NOT_A_NUMBER']);
  });

  it('is at the power asked for', () => {
    expect(check('5', ' Idle ')).toEqual([]);
    expect(check('5', '')).toEqual(['POWER_MISSING']);
    expect(check('5', 'motoring')).toEqual(['POWER_DIFFERS']);
  });

  it('finds no leak', () => {
    expect(check('5', 'idle', 'leak')).toEqual(['LEAK_FOUND']);
    expect(check('', '', 'leak')).toEqual(['DURATION_MISSING', 'POWER_MISSING', 'LEAK_FOUND']);
  });
});

describe('the readings of a run', () => {
  const capture: ReadingsCapture = {
    kind: 'readings',
    key: 'run',
    label: 'Power run',
    rows: [
      { key: 'n1', label: 'N1', unit: '%', low: '88.0', high: '92.5' },
      { key: 'oat', label: 'Outside air', unit: '°C', low: '-40', high: null },
    ],
  };
  const read = (n1: string, oat = '-3') => judgeReadings(capture, { n1, oat });

  it('lie in their bounds, both included', () => {
    expect(['87.9', '88', '92,5', '92.51'].map((n1) => codes(read(n1)))).toEqual([
      ['BELOW_RANGE'],
      [],
      [],
      ['ABOVE_RANGE'],
    ]);
    expect(codes(read('90', '-40'))).toEqual([]);
    expect(read('90', '-40.1')).toEqual([
      { code: 'BELOW_RANGE', detail: { what: 'Outside air', value: '-40.1 °C', low: '-40 °C' } },
    ]);
  });

  it('are all there, and numbers', () => {
    expect(judgeReadings(capture, { n1: '90' })).toEqual([
      { code: 'READING_MISSING', detail: { what: 'Outside air' } },
    ]);
    expect(codes(read('', '1e1'))).toEqual(['READING_MISSING', 'NOT_A_NUMBER']);
    const odd = { ...capture, rows: [{ key: 'toString', label: 'x', unit: '', low: null, high: null }] };
    expect(codes(judgeReadings(odd, {}))).toEqual(['READING_MISSING']);
  });

  it('are not judged by bounds that are no numbers', () => {
    const rows = [{ key: 'n1', label: 'N1', unit: '%', low: 'low', high: null }];
    expect(() => judgeReadings({ ...capture, rows }, { n1: '90' })).toThrow(RangeError);
  });
});
