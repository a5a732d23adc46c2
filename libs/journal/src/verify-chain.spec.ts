import { createHash } from 'node:crypto';
import { describe, expect, it } from '@jest/globals';
import type { Json } from './canonical.js';
import { entryBytes, entryHash, NO_PREVIOUS } from './chain.js';
import { type KeptEntry, verifyChain } from './verify-chain.js';

const digest = (bytes: Uint8Array): Uint8Array => createHash('sha256').update(bytes).digest();
const streamId = '00112233-4455-6677-8899-aabbccddeeff';

function append(chain: readonly KeptEntry[], body: Json): readonly KeptEntry[] {
  const before = chain.at(-1);
  const seq = (before?.seq ?? 0n) + 1n;
  const entry = {
    operatorId: 7,
    streamId,
    seq,
    number: seq + 40n,
    recordedAtMicros: 1_700_000_000_000_000n + seq,
    prev: before?.hash ?? NO_PREVIOUS,
    body,
  };
  return [...chain, { ...entry, hash: entryHash(entry, digest) }];
}
const chain = [{ kind: 'a' }, { kind: 'b', n: 1 }, { kind: 'c' }].reduce<readonly KeptEntry[]>(append, []);
const changed = (index: number, change: Partial<KeptEntry>) =>
  chain.map((entry, at) => (at === index ? { ...entry, ...change } : entry));

describe('an entry’s bytes', () => {
  it('are laid out as written, big-endian', () => {
    const bytes = Buffer.from(
      entryBytes({
        operatorId: 7,
        streamId,
        seq: 1n,
        number: 258n,
        recordedAtMicros: -1n,
        prev: NO_PREVIOUS,
        body: { é: 1 },
      }),
    );
    const text = `00${'00000007'}${'00112233445566778899aabbccddeeff'}${'0000000000000001'}${'0000000000000102'}${'ff'.repeat(8)}${'00'.repeat(32)}`;
    expect(bytes.toString('hex')).toBe(text + Buffer.from('{"é":1}').toString('hex'));
  });

  it.each([
    [{ streamId: 'stream' }],
    [{ prev: new Uint8Array(31) }],
    [{ seq: 2n ** 63n }],
    [{ operatorId: -1 }],
    [{ operatorId: 2 ** 31 }],
  ])('are refused for %j', (change) => {
    const [entry] = chain;
    if (entry === undefined) throw new Error('no entry');
    expect(() => entryBytes({ ...entry, ...change })).toThrow(RangeError);
  });
});

describe('a chain', () => {
  it('is whole as it was written', () => {
    expect(verifyChain(chain, digest)).toEqual({ whole: true, entries: 3, head: chain[2]?.hash });
    expect(verifyChain([], digest)).toEqual({ whole: true, entries: 0, head: NO_PREVIOUS });
  });

  it('can be checked from an entry known to be good', () => {
    const [first] = chain;
    if (first === undefined) throw new Error('no entry');
    expect(verifyChain(chain.slice(1), digest, first)).toMatchObject({ whole: true, entries: 2 });
  });

  it.each<[string, readonly KeptEntry[], string, bigint]>([
    ['a changed body', changed(1, { body: { kind: 'b', n: 2 } }), 'hash', 2n],
    ['a changed time', changed(1, { recordedAtMicros: 5n }), 'hash', 2n],
    ['a changed number', changed(1, { number: 5n }), 'hash', 2n],
    ['another hash', changed(0, { hash: new Uint8Array(32) }), 'hash', 1n],
    ['another previous hash', changed(2, { prev: new Uint8Array(32) }), 'previous-hash', 3n],
    ['another operator', changed(2, { operatorId: 8 }), 'stream', 3n],
    ['a missing entry', chain.filter((_, index) => index !== 1), 'sequence', 3n],
    ['a body without a canonical form', changed(1, { body: { n: Number.NaN } }), 'no-canonical-form', 2n],
  ])('is not whole with %s', (_, entries, fault, seq) => {
    expect(verifyChain(entries, digest)).toEqual({ whole: false, seq, fault });
  });
});
