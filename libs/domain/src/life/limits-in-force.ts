import type { Instant } from '../units/minutes.js';
import type { RatingLimit } from './life.js';
import { calendarOf, limitAt } from './substantiation.js';

/** One row of a dated document revision: a life limit of a part number in an engine model at a rating. */
export type LifeLimit = RatingLimit & {
  readonly id: string;
  readonly partNumber: string;
  readonly modelId: string;
  /** A manual states limits; a directive lowers them, and never raises one. */
  readonly basis: 'manual' | 'directive';
  /** The document, whichever revision. */
  readonly document: string;
  readonly revisionId: string;
  /** From this instant on the revision is effective. */
  readonly effectiveAt: Instant;
  /** The order in which rows were recorded: of two revisions effective on one day the later counts. */
  readonly recorded: number;
};

/** A limit in force at a rating, with the rows that govern it. */
export type LimitInForce<Row extends LifeLimit = LifeLimit> = RatingLimit & {
  /** The manual's row; null where only a directive states a limit. */
  readonly manual: Row | null;
  /** Rows of directives that lower it in something. */
  readonly directives: readonly Row[];
  /** The row whose cycles, minutes or words govern; null where nothing says so. */
  readonly governs: {
    readonly authorisation: Row;
    readonly cycles: Row | null;
    readonly minutes: Row | null;
  };
};

/** Whose limits are asked for, and as of when. */
export interface LimitAsk {
  readonly partNumber: string;
  readonly modelId: string;
  readonly at: Instant;
}

/**
 * The limits in force for a part number in a model at an instant, one for each rating that is named: the rows of the
 * newest manual revision that is effective by then, each lowered by what the newest revision of every directive says.
 * The lower governs in each of cycles and minutes; calendar lives stand beside each other, and the first to end
 * governs. 'Not authorised' wins over any figure; a directive's 'not limited' takes nothing away. Empty when there is
 * none. Total.
 */
export function limitsInForce<Row extends LifeLimit>(
  limits: readonly Row[],
  { partNumber, modelId, at }: LimitAsk,
): readonly LimitInForce<Row>[] {
  const effective = limits.filter(
    (limit) => limit.partNumber === partNumber && limit.modelId === modelId && limit.effectiveAt <= at,
  );
  const manual = newestOf(effective.filter((limit) => limit.basis === 'manual'));
  const named = effective.filter((limit) => limit.basis === 'directive');
  const directives = [...new Set(named.map((limit) => limit.document))].map((document) =>
    newestOf(named.filter((limit) => limit.document === document)),
  );
  const rows = [...manual, ...directives.flat()];
  return [...new Set(rows.map((limit) => limit.ratingId))].map((ratingId) =>
    combined(
      ratingId,
      rowAt(manual, ratingId),
      directives.flatMap((each) => rowAt(each, ratingId) ?? []),
    ),
  );
}

/** The rows of the newest revision among some; of those effective on one day the one recorded last. */
function newestOf<Row extends LifeLimit>(rows: readonly Row[]): readonly Row[] {
  const newest = rows.reduce<Row | null>(
    (found, row) => (found === null || isNewer(row, found) ? row : found),
    null,
  );
  return rows.filter((row) => row.revisionId === newest?.revisionId);
}

function isNewer(a: LifeLimit, b: LifeLimit): boolean {
  return a.effectiveAt === b.effectiveAt ? a.recorded > b.recorded : a.effectiveAt > b.effectiveAt;
}

/** The row at a rating; a limit for any rating is asked for by null, which finds none of those at one. */
function rowAt<Row extends LifeLimit>(rows: readonly Row[], ratingId: string | null): Row | null {
  if (ratingId === null) return rows.find((row) => row.ratingId === null) ?? null;
  const found = limitAt(rows, ratingId);
  return rows.find((row) => row === found) ?? null;
}

function combined<Row extends LifeLimit>(
  ratingId: string | null,
  manual: Row | null,
  directives: readonly Row[],
): LimitInForce<Row> {
  const rows = [...(manual === null ? [] : [manual]), ...directives];
  const [first] = rows;
  if (first === undefined) throw new RangeError('a rating without a row');
  const stated = { ratingId, manual };
  const forbids = rows.find((row) => row.kind === 'not-authorised');
  if (forbids !== undefined)
    return {
      ...stated,
      kind: 'not-authorised',
      directives: directives.filter(
        (row) => row.kind === 'not-authorised' && manual?.kind !== 'not-authorised',
      ),
      governs: { authorisation: forbids, cycles: null, minutes: null },
    };
  const [cycles, minutes] = [lowestIn('cycles', rows), lowestIn('minutes', rows)];
  const calendar = rows.flatMap(calendarOf);
  if (cycles === null && minutes === null && calendar.length === 0)
    return {
      ...stated,
      kind: 'not-limited',
      directives: [],
      governs: { authorisation: first, cycles: null, minutes: null },
    };
  return {
    ...stated,
    kind: 'limited',
    cycles: cycles?.figure ?? null,
    minutes: minutes?.figure ?? null,
    calendar,
    directives: directives.filter(
      (row) => row === cycles?.row || row === minutes?.row || calendarOf(row).length > 0,
    ),
    governs: {
      authorisation: cycles?.row ?? minutes?.row ?? rows.find((row) => calendarOf(row).length > 0) ?? first,
      cycles: cycles?.row ?? null,
      minutes: minutes?.row ?? null,
    },
  };
}

interface Lowest<Row> {
  readonly row: Row;
  readonly figure: number;
}

/** The row with the lowest figure, the manual's among equals; null when none states one. */
function lowestIn<Row extends LifeLimit>(
  dimension: 'cycles' | 'minutes',
  rows: readonly Row[],
): Lowest<Row> | null {
  return rows.reduce<Lowest<Row> | null>((found, row) => {
    const figure = row.kind === 'limited' ? row[dimension] : null;
    if (figure === null || (found !== null && found.figure <= figure)) return found;
    return { row, figure };
  }, null);
}
