import { readFileSync } from 'node:fs';
import { describe, expect, it } from '@jest/globals';
import { canonical, type Json } from '@strutbook/journal/canonical.js';
import { utf8 } from '@strutbook/journal/utf8.js';

const read = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`./data/${name}`, import.meta.url), 'utf8'));
const vectors = read('rfc8785-vectors.json') as Readonly<
  Record<string, { readonly input: string; readonly outputHex: string }>
>;
const numbers = read('rfc8785-numbers.json') as readonly {
  readonly ieee754: string;
  readonly text: string;
}[];

/** Source: RFC 8785; the vectors of its author, cyberphone/json-canonicalization, testdata (Apache-2.0). */
describe('the canonical form (RFC 8785)', () => {
  it.each(Object.entries(vectors))('writes the author’s vector %s', (_, { input, outputHex }) => {
    expect(Buffer.from(utf8(canonical(JSON.parse(input) as Json))).toString('hex')).toBe(outputHex);
  });

  it('has all six vectors', () => {
    expect(Object.keys(vectors)).toHaveLength(6);
  });

  // RFC 8785, appendix B; from memory, and agreeing with ECMAScript.
  it.each(numbers.map(({ ieee754, text }) => [ieee754, text]))(
    'writes the number %s as %s (appendix B)',
    (bits, text) => {
      expect(canonical(Buffer.from(bits ?? '', 'hex').readDoubleBE())).toBe(text);
    },
  );

  it.each(['7fffffffffffffff', '7ff0000000000000', 'fff0000000000000'])(
    'refuses %s, which is no number of JSON',
    (bits) => {
      expect(() => canonical(Buffer.from(bits, 'hex').readDoubleBE())).toThrow();
    },
  );
});
