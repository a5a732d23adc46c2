import { describe, expect, test } from '@jest/globals';
import { slotWords } from './place-words.js';

describe('a place on an airframe', () => {
  test('is said as a position when its label is a bare number', () => {
    expect(slotWords('ZZ-417, 1')).toBe('Position 1 on ZZ-417');
    expect(slotWords('ZZ-417, 3 (pod)')).toBe('Position 3 on ZZ-417 (pod)');
  });

  test('stays as its type names it otherwise', () => {
    expect(slotWords('ZZ-417, APU')).toBe('ZZ-417, APU');
    expect(slotWords('LPT disk 3 in Low-pressure turbine KT-377-M4')).toBe(
      'LPT disk 3 in Low-pressure turbine KT-377-M4',
    );
  });
});
