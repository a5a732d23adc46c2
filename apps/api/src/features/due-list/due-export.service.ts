import { PassThrough, type Readable } from 'node:stream';
import { setImmediate as othersFirst } from 'node:timers/promises';
import { Injectable } from '@nestjs/common';
import { STATUS_WORDS } from '@strutbook/domain/life/status.js';
import { formatHours } from '@strutbook/domain/units/minutes.js';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { csvCell } from '../../platform/http/csv-cell.js';
import { roomOrEnd } from '../../platform/http/room-or-end.js';
import type { DueDimensionDto, DueRowDto } from './due-list.dto.js';
import { DueListService } from './due-list.service.js';
import type { DueExportQueryDto } from './due-query.dto.js';
import { dueRow, type Projecting } from './due-row.js';
import { readTold } from './sql/told-text.sql.js';

/** In what the list is written: comma-separated text, or a line of JSON for each row. */
export type DueFormat = 'csv' | 'ndjson';

const ROWS_AT_ONCE = 500;
// Some milliseconds' work: between two of these others are answered.
const ROWS_OF_A_TURN = 100;
const LONGEST_MS = 120_000;

/** The whole filtered list, streamed: however long it is, some rows of it are in memory. */
@Injectable()
export class DueExportService {
  constructor(
    private readonly database: Database,
    private readonly dueList: DueListService,
  ) {}

  /** Refuses, before anything is sent: INVALID_FIELDS, NOT_FOUND. */
  async stream(actor: Actor, ask: DueExportQueryDto, format: DueFormat): Promise<Readable> {
    await this.database.inOperator(actor, (tx) => this.dueList.whole(tx, actor.operatorId, ask));
    const out = new PassThrough({ highWaterMark: 1 << 16 });
    this.database
      .inOperator(actor, (tx) => this.write(tx, actor.operatorId, { ask, format, out }), {
        ...{ wholeMs: LONGEST_MS, statementMs: LONGEST_MS },
      })
      // What has been sent can't be taken back: the answer breaks off, and no reader takes it for whole.
      .catch((error: unknown) => out.destroy(error instanceof Error ? error : new Error(String(error))));
    return out;
  }

  private async write(
    tx: Tx,
    operatorId: number,
    {
      ask,
      format,
      out,
    }: { readonly ask: DueExportQueryDto; readonly format: DueFormat; readonly out: PassThrough },
  ): Promise<void> {
    const { sql, values, projecting } = await this.dueList.whole(tx, operatorId, ask);
    // All rows are read: a plan that finds the first of them soon takes ten times as long, and sorting to join as well.
    await tx.$executeRaw`SELECT set_config('cursor_tuple_fraction', '1', true),
      set_config('work_mem', '32MB', true), set_config('enable_mergejoin', 'off', true)`;
    await tx.$executeRawUnsafe(`DECLARE due_list NO SCROLL CURSOR FOR ${sql}`, ...values);
    if (format === 'csv') out.write(`\uFEFF${line(COLUMNS.map(([head]) => head))}`);
    let coming = fetched(tx);
    for (;;) {
      const rows = await coming;
      const isLast = rows.length < ROWS_AT_ONCE;
      if (!isLast) coming = fetched(tx); // while these are written
      for (let first = 0; first < rows.length; first += ROWS_OF_A_TURN) {
        const turn = rows.slice(first, first + ROWS_OF_A_TURN);
        const room = out.write(turn.map(({ told }) => textOf(told, { projecting, format })).join(''));
        if (out.destroyed) return;
        await (room ? othersFirst() : roomOrEnd(out));
      }
      if (isLast) break;
    }
    out.end();
  }
}

/** The next rows. What fails shows where they are awaited, and nowhere when nobody does. */
function fetched(tx: Tx): Promise<{ told: string }[]> {
  const rows = tx
    .$queryRawUnsafe<{ told: string }[]>(`FETCH ${ROWS_AT_ONCE} FROM due_list`)
    .then((all) => all);
  rows.catch(() => {});
  return rows;
}

function textOf(
  told: string,
  { projecting, format }: { readonly projecting: Projecting; readonly format: DueFormat },
): string {
  const row = dueRow(readTold(told), projecting);
  return format === 'csv' ? line(COLUMNS.map(([, cell]) => cell(row))) : `${JSON.stringify(row)}\n`;
}

const line = (cells: readonly string[]): string => `${cells.map(csvCell).join(',')}\r\n`;

const left = (of: 'minutes' | 'cycles' | 'days') => (row: DueRowDto) => {
  const due = dueIn(row, of);
  if (due === undefined) return '';
  return of === 'minutes' ? formatHours(due.remaining) : String(due.remaining);
};

function dueIn({ dues }: DueRowDto, of: 'minutes' | 'cycles' | 'days'): DueDimensionDto | undefined {
  return dues.find(({ dimension }) => dimension === of || (of === 'days' && dimension === 'months'));
}

const GOVERNS = {
  minutes: 'hours',
  cycles: 'cycles',
  days: 'calendar',
  months: 'calendar',
  none: '',
} as const;

const COLUMNS: readonly (readonly [string, (row: DueRowDto) => string])[] = [
  ['Status', (row) => STATUS_WORDS[row.status]],
  ['Kind', (row) => row.requirement?.kind ?? row.kind],
  ['Code', (row) => row.requirement?.code ?? ''],
  ['Title', (row) => row.requirement?.title ?? ''],
  ['Description', (row) => row.description ?? ''],
  ['Part number', (row) => row.partNumber ?? ''],
  ['Serial number', (row) => row.serialNumber ?? ''],
  ['Engine', (row) => row.engineSerial ?? ''],
  ['Airframe', (row) => row.airframe ?? ''],
  ['Position', (row) => (row.positionNumber === null ? '' : String(row.positionNumber))],
  ['Governs', (row) => GOVERNS[row.dimension]],
  ['Combines', (row) => (row.requirement === null ? '' : `whichever ${row.requirement.combine}`)],
  ['Hours left', left('minutes')],
  ['Cycles left', left('cycles')],
  ['Days left', left('days')],
  ['Good through', (row) => dueIn(row, 'days')?.dueOn ?? ''],
  ['Projected', (row) => row.projectedOn ?? ''],
  ['Basis', (row) => row.basis],
  ['Reason', (row) => row.reason ?? ''],
  ['Document', (row) => row.document ?? ''],
  ['Revision', (row) => row.revision ?? ''],
];
