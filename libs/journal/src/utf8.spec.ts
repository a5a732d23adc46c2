import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { utf8 } from './utf8.js';

describe('the bytes of a text', () => {
  it('are those of the platform', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect([...utf8(text)]).toEqual([...new TextEncoder().encode(text)]);
      }),
    );
    expect([...utf8('a\u007f\u0080\u07ff\u0800\uffff\u{10000}\u{10ffff}')]).toEqual([
      ...Buffer.from('a\u007f\u0080\u07ff\u0800\uffff\u{10000}\u{10ffff}'),
    ]);
  });
});
