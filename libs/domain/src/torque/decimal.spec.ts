import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { fraction } from '../units/fraction.js';
import { decimalText, readDecimal, readSignedDecimal, shortText } from './decimal.js';

describe('a number as typed', () => {
  it.each([
    ['118.4', fraction(1184, 10)],
    ['112,5', fraction(1125, 10)],
    ['105.0', fraction(105)],
    ['115.01', fraction(11_501, 100)],
    [' 42 ', fraction(42)],
    ['007', fraction(7)],
    ['0', fraction(0)],
    ['1,250', fraction(125, 100)],
  ])('%j is read exactly', (typed, value) => {
    expect(readDecimal(typed)).toEqual(value);
  });

  it.each([
    '',
    ' ',
    '1e2',
    '1.2.3',
    '1,234.5',
    '1 200',
    '-3',
    '+3',
    '.5',
    '5.',
    '0x10',
    'NaN',
    'Infinity',
    '١٢',
    '1_0',
    '118.4 N·m',
  ])('%j is no number', (typed) => {
    expect(readDecimal(typed)).toBeNull();
  });

  it('may be up to forty characters long', () => {
    expect(readDecimal('1'.repeat(40))).not.toBeNull();
    expect(readDecimal('1'.repeat(41))).toBeNull();
  });

  it.each([
    ['-3.5', fraction(-35, 10)],
    ['−3,5', fraction(-35, 10)],
    ['3.5', fraction(35, 10)],
    ['- 3', null],
    ['--3', null],
    ['-', null],
  ])('%j with a sign allowed is %j', (typed, value) => {
    expect(readSignedDecimal(typed)).toEqual(value);
  });
});

describe('a number as text', () => {
  it.each([
    [fraction(1185, 10), 2, '118.50'],
    [fraction(2, 3), 3, '0.667'],
    [fraction(1, 2), 0, '1'],
    [fraction(-1, 2), 0, '-1'],
    [fraction(5, 1000), 2, '0.01'],
    [fraction(-1, 1000), 2, '0.00'],
    [fraction(12), 0, '12'],
  ])('%j with %i decimals is %s, a half away from zero', (value, digits, text) => {
    expect(decimalText(value, digits)).toBe(text);
  });

  it('is rounded to the side asked for, below zero too', () => {
    expect(decimalText(fraction(1, 3), 2, 'up')).toBe('0.34');
    expect(decimalText(fraction(2, 3), 2, 'down')).toBe('0.66');
    expect(decimalText(fraction(-1, 3), 2, 'up')).toBe('-0.33');
    expect(decimalText(fraction(-1, 3), 2, 'down')).toBe('-0.34');
    expect(decimalText(fraction(1, 4), 2, 'up')).toBe('0.25');
  });

  it('is short where it ends, and full where it does not', () => {
    expect(shortText(fraction(504), 3)).toBe('504');
    expect(shortText(fraction(500), 0)).toBe('500');
    expect(shortText(fraction(1185, 10), 3)).toBe('118.5');
    expect(shortText(fraction(2, 3), 3)).toBe('0.667');
    expect(shortText(fraction(29_999, 10_000), 2)).toBe('3.00');
  });

  it('is read back as the same number', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 0n, max: 10n ** 12n }), fc.integer({ min: 1, max: 9 }), (num, digits) => {
        const value = fraction(num, 10n ** BigInt(digits));
        expect(readDecimal(decimalText(value, digits))).toEqual(value);
        expect(readDecimal(shortText(value, digits))).toEqual(value);
      }),
    );
  });
});
