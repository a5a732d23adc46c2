import { createHash } from 'node:crypto';
import { describe, expect, it } from '@jest/globals';
import { entryBytes, entryHash, NO_PREVIOUS } from '@strutbook/journal/chain.js';

const digest = (bytes: Uint8Array): Uint8Array => createHash('sha256').update(bytes).digest();
const hex = (bytes: Uint8Array) => Buffer.from(bytes).toString('hex');

/** Source: FIPS 180-4, the examples of NIST, from memory; the digest the journal is given must be this one. */
describe('SHA-256 (FIPS 180-4 examples, from memory)', () => {
  it.each([
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
    ['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
  ])('of %.20j… is as printed', (text, expected) => {
    expect(hex(digest(Buffer.from(text)))).toBe(expected);
  });

  it('of an entry is that of its bytes', () => {
    const streamId = '00000000-0000-0000-0000-000000000001';
    const entry = {
      operatorId: 1,
      streamId,
      seq: 1n,
      number: 1n,
      recordedAtMicros: 0n,
      prev: NO_PREVIOUS,
      body: { abc: 1 },
    };
    expect(hex(entryHash(entry, digest))).toBe(hex(digest(entryBytes(entry))));
  });
});
