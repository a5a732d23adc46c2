import { createHash } from 'node:crypto';
import { withClient } from '../database.js';

interface Entry {
  readonly operator: number;
  readonly number: string;
  readonly stream: string;
  readonly seq: string;
  readonly micros: string;
  readonly body: string;
  readonly prev: Buffer;
  readonly hash: Buffer;
}

/**
 * Recomputes every entry's hash and its link to the one before, from the bytes alone; nothing of the product's own
 * code is used. Answers the entries that don't fit, by stream and place, and how many there are.
 */
export function checkedChains(
  adminUrl: string,
): Promise<{ readonly entries: number; readonly broken: readonly string[] }> {
  return withClient(adminUrl, async (client) => {
    const { rows } = await client.query<Entry>(
      `SELECT operator_id AS operator, number::text, stream, seq::text, body, prev, hash,
         (extract(epoch FROM recorded_at) * 1000000)::bigint::text AS micros
       FROM journal_entry ORDER BY operator_id, stream, journal_entry.seq`,
    );
    const { rows: heads } = await client.query<Pick<Entry, 'operator' | 'stream' | 'seq' | 'hash'>>(
      'SELECT operator_id AS operator, stream, seq::text, hash FROM journal_stream',
    );
    const last = new Map<string, { seq: bigint; hash: Buffer }>();
    const broken: string[] = [];
    for (const entry of rows) {
      const key = `${entry.operator} ${entry.stream}`;
      const before = last.get(key) ?? { seq: 0n, hash: Buffer.alloc(32) };
      const follows = BigInt(entry.seq) === before.seq + 1n && entry.prev.equals(before.hash);
      if (!follows || !entry.hash.equals(hashOf(entry))) broken.push(`${key} ${entry.seq}`);
      last.set(key, { seq: BigInt(entry.seq), hash: entry.hash });
    }
    for (const { operator, stream, seq, hash } of heads) {
      const end = last.get(`${operator} ${stream}`) ?? { seq: 0n, hash: Buffer.alloc(32) };
      if (end.seq !== BigInt(seq) || !end.hash.equals(hash)) broken.push(`head of ${operator} ${stream}`);
    }
    return { entries: rows.length, broken };
  });
}

function hashOf({ operator, stream, seq, number, micros, prev, body }: Entry): Buffer {
  const head = Buffer.alloc(45);
  head.writeInt32BE(operator, 1);
  Buffer.from(stream.replaceAll('-', ''), 'hex').copy(head, 5);
  head.writeBigInt64BE(BigInt(seq), 21);
  head.writeBigInt64BE(BigInt(number), 29);
  head.writeBigInt64BE(BigInt(micros), 37);
  return createHash('sha256').update(head).update(prev).update(body, 'utf8').digest();
}
