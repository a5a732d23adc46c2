import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { toWirePrecise } from '../../platform/http/instants.js';
import type { JournalPageDto, JournalQueryDto } from './journal.dto.js';

const ROWS = 100;

interface EntryRow {
  number: bigint;
  stream: string;
  seq: bigint;
  kind: string;
  recordedAt: Date;
  by: string | null;
  body: string;
  prev: Uint8Array;
  hash: Uint8Array;
}

/** The journal as it can be read and checked: entries with their hashes. */
@Injectable()
export class JournalReader {
  constructor(private readonly database: Database) {}

  /** A page of all entries, or of those about a subject, in order. */
  page(actor: Actor, { subject, after = 0, limit = ROWS }: JournalQueryDto): Promise<JournalPageDto> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const rows =
        subject === undefined
          ? await tx.$queryRaw<EntryRow[]>`
              SELECT j.number, j.stream, j.seq, j.kind, j.recorded_at AS "recordedAt", p.full_name AS by, j.body, j.prev, j.hash
                FROM journal_entry j LEFT JOIN person p ON p.operator_id = j.operator_id AND p.id = j.person_id
               WHERE j.operator_id = ${operatorId}::int AND j.number > ${after}::bigint
               ORDER BY j.number LIMIT ${limit + 1}::int`
          : await tx.$queryRaw<EntryRow[]>`
              SELECT j.number, j.stream, j.seq, j.kind, j.recorded_at AS "recordedAt", p.full_name AS by, j.body, j.prev, j.hash
                FROM about b
                JOIN journal_entry j ON j.operator_id = b.operator_id AND j.number = b.number
                LEFT JOIN person p ON p.operator_id = j.operator_id AND p.id = j.person_id
               WHERE b.operator_id = ${operatorId}::int AND b.subject = ${subject}::uuid AND b.number > ${after}::bigint
               ORDER BY b.number LIMIT ${limit + 1}::int`;
      const shown = rows.slice(0, limit);
      return {
        rows: shown.map((row) => ({
          number: Number(row.number),
          stream: row.stream,
          seq: Number(row.seq),
          kind: row.kind,
          recordedAt: toWirePrecise(row.recordedAt),
          by: row.by,
          body: row.body,
          prev: Buffer.from(row.prev).toString('hex'),
          hash: Buffer.from(row.hash).toString('hex'),
        })),
        next: rows.length > limit ? String(shown.at(-1)?.number) : null,
      };
    });
  }
}
