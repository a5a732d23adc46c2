import { createHash } from 'node:crypto';
import { describe, expect, it } from '@jest/globals';
import { leafHash, merkleRoot, nodeHash } from './merkle.js';

const sha256 = (bytes: Uint8Array): Uint8Array => new Uint8Array(createHash('sha256').update(bytes).digest());
const hex = (bytes: Uint8Array): string => Buffer.from(bytes).toString('hex');
const bytesOf = (text: string): Uint8Array => Uint8Array.from(Buffer.from(text, 'hex'));

// The definition itself, word by word: split at the largest power of two below the length.
function byDefinition(leaves: readonly Uint8Array[]): Uint8Array {
  const [only] = leaves;
  if (only === undefined) return sha256(new Uint8Array(0));
  if (leaves.length === 1) return leafHash(only, sha256);
  let split = 1;
  while (split * 2 < leaves.length) split *= 2;
  return nodeHash(byDefinition(leaves.slice(0, split)), byDefinition(leaves.slice(split)), sha256);
}

describe('merkleRoot', () => {
  it('is the hash of nothing for no leaves', () => {
    // SHA-256 of the empty string: FIPS 180-4 example value.
    expect(hex(merkleRoot([], sha256))).toBe(
      'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855',
    );
  });

  it('agrees with the roots of the eight test leaves used by certificate transparency logs', () => {
    // Leaves and roots from the reference tests of certificate transparency logs; from memory.
    const leaves = [
      '',
      '00',
      '10',
      '2021',
      '3031',
      '40414243',
      '5051525354555657',
      '606162636465666768696a6b6c6d6e6f',
    ].map(bytesOf);
    expect(hex(merkleRoot(leaves.slice(0, 1), sha256))).toBe(
      '6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d',
    );
    expect(hex(merkleRoot(leaves.slice(0, 2), sha256))).toBe(
      'fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125',
    );
    expect(hex(merkleRoot(leaves, sha256))).toBe(
      '5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328',
    );
  });

  it('follows the definition for every length up to 70', () => {
    const leaves = Array.from({ length: 70 }, (_, index) => Uint8Array.from([index, index * 3]));
    for (let length = 0; length <= leaves.length; length += 1) {
      const some = leaves.slice(0, length);
      expect(hex(merkleRoot(some, sha256))).toBe(hex(byDefinition(some)));
    }
  });

  it('is another root when two leaves change places', () => {
    const [a, b] = [bytesOf('01'), bytesOf('02')];
    expect(hex(merkleRoot([a, b], sha256))).not.toBe(hex(merkleRoot([b, a], sha256)));
  });
});
