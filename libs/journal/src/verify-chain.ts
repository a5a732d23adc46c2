import { type ChainEntry, type Digest, entryHash, NO_PREVIOUS } from './chain.js';

/** An entry as it is kept, with the hash written beside it. */
export interface KeptEntry extends ChainEntry {
  readonly hash: Uint8Array;
}

/** What a check of a stream found: whole, or the first entry that does not fit and why. */
export type ChainVerdict =
  | { readonly whole: true; readonly entries: number; readonly head: Uint8Array }
  | {
      readonly whole: false;
      readonly seq: bigint;
      readonly fault: 'sequence' | 'stream' | 'previous-hash' | 'hash' | 'no-canonical-form';
    };

/**
 * Checks one stream from its first entry: each follows the one before in number and hash, belongs to the same
 * stream and operator, and its own hash is that of its bytes.
 *
 * `from` continues after an entry already checked. A chain proves that nothing inside it was changed, not that
 * nothing was cut off its end: compare the head with one noted elsewhere. Total.
 */
export function verifyChain(
  entries: Iterable<KeptEntry>,
  digest: Digest,
  from: { readonly seq: bigint; readonly hash: Uint8Array } = { seq: 0n, hash: NO_PREVIOUS },
): ChainVerdict {
  let { seq, hash } = from;
  let first: KeptEntry | null = null;
  let count = 0;
  for (const entry of entries) {
    first ??= entry;
    const fault = faultOf(entry, { first, seq, hash }, digest);
    if (fault !== null) return { whole: false, seq: entry.seq, fault };
    ({ seq, hash } = entry);
    count += 1;
  }
  return { whole: true, entries: count, head: hash };
}

interface Before {
  readonly first: KeptEntry;
  readonly seq: bigint;
  readonly hash: Uint8Array;
}

type Fault = Extract<ChainVerdict, { whole: false }>['fault'];

function faultOf(entry: KeptEntry, before: Before, digest: Digest): Fault | null {
  if (entry.streamId !== before.first.streamId || entry.operatorId !== before.first.operatorId)
    return 'stream';
  if (entry.seq !== before.seq + 1n) return 'sequence';
  if (!sameBytes(entry.prev, before.hash)) return 'previous-hash';
  try {
    return sameBytes(entry.hash, entryHash(entry, digest)) ? null : 'hash';
  } catch {
    return 'no-canonical-form';
  }
}

function sameBytes(a: Uint8Array, b: Uint8Array): boolean {
  return a.length === b.length && a.every((byte, index) => byte === b[index]);
}
