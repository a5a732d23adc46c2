import type { HistoryEvent, HistoryFact } from '@strutbook/domain/history/history.js';
import type { Precision } from '@strutbook/domain/stays/boundary.js';
import { toInstant } from '../../platform/http/instants.js';
import type { Entries } from './entries.js';
import type { ToldWork } from './told-line.js';

/** A fact of a history with the words it is told in. */
export interface Tellable {
  readonly fact: HistoryFact;
  readonly title: string;
  readonly detail: string;
  readonly placed: string | null;
  readonly hash: string | null;
  readonly work: ToldWork | null;
}

/** A row of the records as it becomes a fact: numbers name its entries in the journal. */
export interface RecordedRow {
  readonly id: string;
  readonly at: Date;
  readonly precision?: Precision;
  readonly placed?: string | null;
  readonly recordedSeq: bigint;
  readonly voidedSeq?: bigint | null;
  readonly voidReason?: string | null;
  readonly title: string;
  readonly detail: string;
  readonly event: HistoryEvent;
  readonly work?: ToldWork;
}

/** The fact of a row, with who recorded it, when, and who struck it. */
export function tellable(row: RecordedRow, entries: Entries): Tellable {
  const entry = entries(row.recordedSeq);
  const struck = row.voidedSeq == null ? null : entries(row.voidedSeq);
  return {
    title: row.title,
    detail: row.detail,
    placed: row.placed ?? null,
    hash: entry.hash,
    work: row.work ?? null,
    fact: {
      id: row.id,
      at: toInstant(row.at),
      precision: row.precision ?? 'minute',
      journalNumber: Number(row.recordedSeq),
      recordedAt: toInstant(entry.recordedAt),
      by: entry.by,
      voided:
        struck === null
          ? null
          : {
              recordedAt: toInstant(struck.recordedAt),
              by: struck.by,
              reason: row.voidReason ?? 'no reason recorded',
            },
      event: row.event,
    },
  };
}

const PLACED: Readonly<Record<string, (text: string) => string>> = {
  'after-page': (page) => `after log page ${page}`,
  'before-first': (day) => `before the first flight of ${day}`,
  'after-last': (day) => `after the last flight of ${day}`,
};

/** How a boundary is known, in words; null when it is known to the minute. Total. */
export function placedInWords(kind: string | null, text: string | null): string | null {
  const words = kind === null ? undefined : PLACED[kind];
  return words === undefined ? null : words(text ?? 'not told');
}

/** How exactly a boundary of that kind is known. Total. */
export function precisionOf(kind: string | null): Precision {
  return kind === 'after-page' ? 'page' : kind === 'before-first' || kind === 'after-last' ? 'day' : 'minute';
}
