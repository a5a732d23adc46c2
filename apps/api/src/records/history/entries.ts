import type { Tx } from '../../platform/database/database.js';

/** Who recorded something, when, and the beginning of the entry's hash. */
export interface Entry {
  readonly recordedAt: Date;
  readonly by: string;
  readonly hash: string | null;
}

/** The entries of the journal by number. */
export type Entries = (number: bigint) => Entry;

/** How much of a hash is shown: enough to find an entry again, not to prove it. */
export const HASH_SHOWN = 8;

const NO_ENTRY: Entry = { recordedAt: new Date(0), by: 'not recorded', hash: null };

/** Loads these entries in one statement. */
export async function loadEntries(tx: Tx, operatorId: number, numbers: readonly bigint[]): Promise<Entries> {
  const rows = await tx.journalEntry.findMany({
    where: { operatorId, number: { in: [...new Set(numbers)] } },
    select: { number: true, recordedAt: true, hash: true, person: { select: { fullName: true } } },
  });
  const found = new Map(
    rows.map(({ number, recordedAt, hash, person }): [bigint, Entry] => [
      number,
      {
        recordedAt,
        by: person?.fullName ?? 'the system',
        hash: Buffer.from(hash).toString('hex').slice(0, HASH_SHOWN),
      },
    ]),
  );
  return (number) => found.get(number) ?? NO_ENTRY;
}
