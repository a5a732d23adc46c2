import { describe, expect, it } from '@jest/globals';
import { inSerialRange, isSerialRange } from './serial-range.js';

describe('a range of serial numbers', () => {
  it('is compared by the number at their end, so that 9 comes before 10', () => {
    const range = { from: 'KT-9', to: 'KT-120' };
    expect(
      ['KT-8', 'KT-9', 'KT-10', 'KT-0099', 'KT-120', 'KT-121'].map((one) => inSerialRange(one, range)),
    ).toEqual([false, true, true, true, true, false]);
  });

  it('is open where it has no end, and of its own series alone', () => {
    expect(inSerialRange('KT-900', { from: 'KT-9', to: null })).toBe(true);
    expect(inSerialRange('KT-1', { from: null, to: 'KT-9' })).toBe(true);
    expect(inSerialRange('RV-10', { from: 'KT-9', to: null })).toBe(false);
    expect(inSerialRange('10', { from: 'KT-9', to: null })).toBe(false);
  });

  it('leaves what does not end in a number undecided', () => {
    expect(inSerialRange('KT-10A', { from: 'KT-9', to: 'KT-12' })).toBeNull();
  });

  it('needs ends that can be compared, in their order', () => {
    expect(isSerialRange({ from: 'KT-9', to: 'KT-10' })).toBe(true);
    expect(isSerialRange({ from: 'KT-9', to: null })).toBe(true);
    expect(isSerialRange({ from: 'KT-10', to: 'KT-9' })).toBe(false);
    expect(isSerialRange({ from: 'KT-10', to: 'RV-19' })).toBe(false);
    expect(isSerialRange({ from: 'KT-A', to: null })).toBe(false);
    expect(isSerialRange({ from: null, to: null })).toBe(false);
  });
});
