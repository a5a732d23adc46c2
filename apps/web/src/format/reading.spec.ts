import { describe, expect, test } from '@jest/globals';
import { parseReading, verdictOf } from './reading.js';

const range = { low: '105.0', high: '115.0' };

function verdictOn(typed: string) {
  const parsed = parseReading(typed);
  if (!parsed.ok) throw new Error(parsed.reason);
  return verdictOf(parsed.value, range);
}

describe('a typed reading', () => {
  test('keeps every digit', () => {
    expect(parseReading('112.370')).toEqual({
      ok: true,
      value: { scaled: 112_370n, scale: 3 },
      text: '112.370',
    });
    expect(parseReading('0.05')).toEqual({ ok: true, value: { scaled: 5n, scale: 2 }, text: '0.05' });
  });

  test('takes a comma or a point as the decimal mark', () => {
    expect(parseReading('112,5')).toEqual(parseReading('112.5'));
  });

  test.each(['1e2', '1,112.5', '112.', '.5', '', '12a', '1 2', '0x10', 'NaN'])('refuses %p', (typed) => {
    expect(parseReading(typed)).toEqual({ ok: false, reason: 'Enter digits with at most one decimal mark' });
  });
});

describe('the verdict', () => {
  test('counts both bounds as inside', () => {
    for (const typed of ['105', '105.0', '115', '115.000', '110'])
      expect(verdictOn(typed)).toEqual({ kind: 'inside' });
  });

  test('says by how much a reading misses the range, without rounding', () => {
    expect(verdictOn('118.4')).toEqual({ kind: 'above', by: '3.4' });
    expect(verdictOn('115.01')).toEqual({ kind: 'above', by: '0.01' });
    expect(verdictOn('104.999')).toEqual({ kind: 'below', by: '0.001' });
    expect(verdictOn('-1')).toEqual({ kind: 'below', by: '106' });
  });

  test('is withheld when a bound cannot be read', () => {
    expect(verdictOf({ scaled: 1n, scale: 0 }, { low: '', high: '2' })).toBeNull();
  });
});
