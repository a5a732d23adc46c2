import type { CalendarLimit } from '@strutbook/domain/life/calendar-life.js';
import type { LifeLimit } from '@strutbook/domain/life/limits-in-force.js';
import { instant } from '@strutbook/domain/units/minutes.js';
import { type Columns, rowsOf } from '../../platform/database/columns.js';
import type { Tx } from '../../platform/database/database.js';
import { Prisma } from '../../platform/database/generated/client.js';

/** A recorded limit with the document it comes from. */
export type RecordedLimit = LifeLimit & { readonly revision: string };

/** What a limit's row says, as it is stored. */
export interface LimitRow {
  readonly id: string;
  readonly partNumber: string;
  readonly modelId: string;
  readonly ratingId: string | null;
  readonly authorisation: string;
  readonly cycles: number | null;
  readonly minutes: number | null;
  readonly calendarSpan: number | null;
  readonly calendarUnit: string | null;
  readonly calendarFrom: string | null;
  readonly monthRule: string | null;
  readonly basis: string;
  readonly document: string;
  readonly revision: string;
  /** Minutes since 1970 of the day's first minute in UTC. */
  readonly effectiveOn: number;
  readonly recorded: number;
}

/** The limits recorded for part numbers (a text[]), as JSON. */
export function limitsFor(operatorId: number, partNumbers: Prisma.Sql): Prisma.Sql {
  return Prisma.sql`(SELECT json_build_object('id', array_agg(id), 'partNumber', array_agg(part_number),
      'modelId', array_agg(engine_model_id), 'ratingId', array_agg(rating_id), 'authorisation', array_agg(authorisation),
      'cycles', array_agg(cycles), 'minutes', array_agg(minutes), 'calendarSpan', array_agg(calendar_span),
      'calendarUnit', array_agg(calendar_unit), 'calendarFrom', array_agg(calendar_from), 'monthRule', array_agg(month_rule),
      'basis', array_agg(basis), 'document', array_agg(document), 'revision', array_agg(revision),
      'effectiveOn', array_agg(extract(epoch FROM effective_on)::bigint / 60), 'recorded', array_agg(recorded_seq))
    FROM life_limit
   WHERE operator_id = ${operatorId}::int AND voided_seq IS NULL AND part_number = ANY (${partNumbers}))`;
}

/** The JSON of `limitsFor`. */
export type LimitColumns = Columns<LimitRow>;

/** The limits of such JSON, as the core reads them. Total. */
export function recordedLimits(columns: LimitColumns): RecordedLimit[] {
  return rowsOf(columns).map(recordedLimit);
}

/** A limit as the core reads it; the minute of effect is the day's first in UTC. Total. */
export function recordedLimit(row: LimitRow): RecordedLimit {
  const base = {
    id: row.id,
    partNumber: row.partNumber,
    modelId: row.modelId,
    basis: row.basis === 'directive' ? ('directive' as const) : ('manual' as const),
    revisionId: `${row.document} ${row.revision}`,
    effectiveAt: instant(row.effectiveOn),
    recorded: row.recorded,
    ratingId: row.ratingId,
    document: row.document,
    revision: row.revision,
  };
  if (row.authorisation === 'not-authorised') return { ...base, kind: 'not-authorised' };
  if (row.authorisation === 'not-limited') return { ...base, kind: 'not-limited' };
  return { ...base, kind: 'limited', cycles: row.cycles, minutes: row.minutes, calendar: calendarOf(row) };
}

function calendarOf(row: LimitRow): CalendarLimit[] {
  if (row.calendarSpan === null) return [];
  return [
    {
      limitId: row.id,
      span: row.calendarSpan,
      unit: row.calendarUnit === 'days' ? 'days' : 'months',
      countedFrom:
        row.calendarFrom === 'overhaul' || row.calendarFrom === 'first-installation'
          ? row.calendarFrom
          : 'new',
      monthRule: row.monthRule === 'month-end' ? 'month-end' : 'same-day',
    },
  ];
}

/** All limits recorded for these part numbers. */
export async function loadLifeLimits(
  tx: Tx,
  operatorId: number,
  partNumbers: readonly string[],
): Promise<RecordedLimit[]> {
  const named = Prisma.sql`${[...new Set(partNumbers)]}::text[]`;
  const [found] = await tx.$queryRaw<{ limits: string }[]>`/* planned once */
    SELECT ${limitsFor(operatorId, named)}::text AS limits`;
  return found === undefined ? [] : recordedLimits(JSON.parse(found.limits) as LimitColumns);
}
