import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { canonical, type Json, NotCanonicalError } from './canonical.js';

describe('the canonical form', () => {
  it('sorts members and leaves out white space', () => {
    expect(canonical({ b: [1, true, null], a: 'x', '10': -0, '9': {} })).toBe(
      '{"10":0,"9":{},"a":"x","b":[1,true,null]}',
    );
  });

  it('does not depend on the order in which members were written', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string({ unit: 'grapheme' }), fc.jsonValue()), (value) => {
        const reversed = Object.fromEntries(Object.entries(value).reverse());
        expect(canonical(reversed as Json)).toBe(canonical(value as Json));
        expect(JSON.parse(canonical(value as Json))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
    );
  });

  const cycle: { self?: unknown } = {};
  cycle.self = cycle;
  it.each<[string, unknown]>([
    ['NaN', { a: Number.NaN }],
    ['Infinity', [Number.POSITIVE_INFINITY]],
    ['undefined in an object', { a: undefined }],
    ['a hole in an array', Array(1)],
    ['a bigint', 1n],
    ['a function', () => 0],
    ['a symbol', Symbol('x')],
    ['a lone high surrogate', '\ud800x'],
    ['a lone low surrogate', 'x\udc00'],
    ['a lone surrogate in a name', { '\ud800': 1 }],
    ['a map', new Map([['a', 1]])],
    ['a date', { at: new Date(0) }],
    ['a cycle', cycle],
  ])('refuses %s', (_, value) => {
    expect(() => canonical(value as Json)).toThrow(NotCanonicalError);
  });

  it('names the place of what it refuses', () => {
    expect(() => canonical({ a: [0, { b: Number.NaN }] })).toThrow('/a/1/b');
  });

  it('takes one object met twice', () => {
    const twice = { x: 1 };
    expect(canonical([twice, twice])).toBe('[{"x":1},{"x":1}]');
  });
});
