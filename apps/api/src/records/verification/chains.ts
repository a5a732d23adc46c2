import { createHash } from 'node:crypto';
import type { Json } from '@strutbook/journal/canonical.js';
import { NO_PREVIOUS } from '@strutbook/journal/chain.js';
import { type KeptEntry, verifyChain } from '@strutbook/journal/verify-chain.js';
import type { Tx } from '../../platform/database/database.js';
import type { Difference, Verdict } from './difference.js';

const ENTRIES_AT_ONCE = 2000;

interface EntryRow {
  stream: string;
  seq: bigint;
  number: bigint;
  micros: bigint;
  prev: Uint8Array;
  hash: Uint8Array;
  body: string;
}

/** Every chain of the journal from its first entry to its head: hashes, order, and that the head is the last entry. */
export async function verifyChains(tx: Tx, operatorId: number): Promise<Verdict> {
  const streams = await tx.journalStream.findMany({ where: { operatorId } });
  const found = [];
  for (const head of streams) found.push(await verifyStream(tx, operatorId, head));
  return {
    name: 'chains of the journal',
    looked: found.reduce((sum, { looked }) => sum + looked, 0),
    differences: found.flatMap(({ difference }) => difference ?? []),
  };
}

interface Head {
  readonly stream: string;
  readonly seq: bigint;
  readonly hash: Uint8Array;
}

interface Found {
  readonly looked: number;
  readonly difference: Difference | null;
}

async function verifyStream(tx: Tx, operatorId: number, { stream, seq, hash }: Head): Promise<Found> {
  let at = { seq: 0n, hash: NO_PREVIOUS };
  for (let looked = 0; ; ) {
    const entries = await entriesAfter(tx, operatorId, stream, at.seq);
    const verdict = verifyChain(entries, sha256, at);
    looked += entries.length;
    if (!verdict.whole)
      return {
        looked,
        difference: {
          what: 'journal entry',
          id: `${stream} ${verdict.seq}`,
          kept: verdict.fault,
          fromFacts: 'a whole chain',
        },
      };
    at = { seq: entries.at(-1)?.seq ?? at.seq, hash: verdict.head };
    if (entries.length === ENTRIES_AT_ONCE) continue;
    const atHead = at.seq === seq && Buffer.compare(at.hash, hash) === 0;
    const cut = { what: 'journal head', id: stream, kept: `entry ${seq}`, fromFacts: `entry ${at.seq}` };
    return { looked, difference: atHead ? null : cut };
  }
}

async function entriesAfter(tx: Tx, operatorId: number, stream: string, seq: bigint): Promise<KeptEntry[]> {
  const rows = await tx.$queryRaw<EntryRow[]>`
    SELECT stream, seq, number, (extract(epoch FROM recorded_at) * 1000000)::bigint AS micros, prev, hash, body
      FROM journal_entry WHERE operator_id = ${operatorId}::int AND stream = ${stream}::uuid AND seq > ${seq}::bigint
     ORDER BY seq LIMIT ${ENTRIES_AT_ONCE}::int`;
  return rows.map((row) => ({
    operatorId,
    streamId: row.stream,
    seq: row.seq,
    number: row.number,
    recordedAtMicros: row.micros,
    prev: row.prev,
    hash: row.hash,
    body: JSON.parse(row.body) as Json,
  }));
}

function sha256(bytes: Uint8Array): Uint8Array {
  return createHash('sha256').update(bytes).digest();
}
