import type { DueConditions } from './due-filter.js';
import { type DuePageRow, rowColumns } from './sql/due-columns.sql.js';
import { duties, dutyDues } from './sql/duty.sql.js';
import { toldText } from './sql/told-text.sql.js';
import { clockHands, type DueParameters } from './sql/use.sql.js';

const NAMES: DueParameters = { operator: '$1', now: '$2', basis: '$3', days: '$4', airframe: '$5' };

/** How the list may be sorted; each by three numbers, a text and the due point. */
export const SORTS = ['urgency', 'projected', 'subject', 'code', 'remaining'] as const;

export type Sort = (typeof SORTS)[number];

const SUBJECT =
  "lower(concat_ws(' ', n.description, n.serial_number, CASE WHEN n.component_id IS NULL THEN n.registration END, n.position_number, n.code))";

const KEYS: Readonly<Record<Sort, readonly [string, string, string, string]>> = {
  urgency: ['n.rank', 'n.urgency', 'coalesce(n.due_at, 0)', "''"],
  // What has no date comes after what has: past by a counter, not verified, and what is not used.
  projected: ['CASE WHEN n.days IS NOT NULL THEN 0 ELSE 1 + n.rank END', 'coalesce(n.days, 0)', '0', SUBJECT],
  subject: ['0', '0', '0', SUBJECT],
  code: ['0', '0', '0', "lower(concat_ws(' ', coalesce(n.code, n.document), n.serial_number))"],
  // Hours, then cycles, then days: they can't be held against one another.
  remaining: [
    "CASE n.dimension WHEN 'minutes' THEN 0 WHEN 'cycles' THEN 1 WHEN 'flights' THEN 1 WHEN 'none' THEN 3 ELSE 2 END",
    'coalesce(floor(n.left_units / n.denominator::numeric), 0)::bigint',
    '0',
    SUBJECT,
  ],
};

const NAMED = `${clockHands(NAMES)}, ${duties('all', NAMES)}, named AS (
  SELECT d.*, k.description, k.part_number, k.serial_number, e.serial_number AS engine_serial, a.registration,
         o.number AS position_number, q.code, q.title, q.kind AS requirement_kind, coalesce(q.document, l.document) AS document
    FROM duty d
    LEFT JOIN component k ON k.operator_id = $1::int AND k.id = d.component_id
    LEFT JOIN component e ON e.operator_id = $1::int AND e.id = d.engine_id
    LEFT JOIN airframe a ON a.operator_id = $1::int AND a.id = d.airframe_id
    LEFT JOIN position o ON o.operator_id = $1::int AND o.id = d.position_id
    LEFT JOIN requirement q ON q.operator_id = $1::int AND q.id = d.requirement_id
    LEFT JOIN life_limit l ON l.operator_id = $1::int AND l.id = d.life_limit_id
)`;

/** The first parameter that is free for conditions in a page's statement, and in those of the whole list and the totals. */
export const LIST_FIRST = 12;
export const WHOLE_FIRST = 6;

const all = (conditions: readonly string[]): string =>
  conditions.length === 0 ? 'true' : conditions.join(' AND ');

interface Order {
  readonly sort: Sort;
  readonly descending: boolean;
}

/** The rows `keyed` that a question asks for, with the key they are sorted by. */
function keyed({ scope, filters }: DueConditions, sort: Sort): string {
  const [n1, n2, n3, text] = KEYS[sort];
  return `WITH ${NAMED}, keyed AS (
  SELECT n.*, (${n1})::bigint AS n1, (${n2})::bigint AS n2, (${n3})::bigint AS n3, ${text} AS text FROM named n
   WHERE ${all([...scope, ...filters])}
)`;
}

const ordered = (of: string, { descending }: Order): string =>
  ['n1', 'n2', 'n3', 'text COLLATE "C"', 'id']
    .map((key) => `${of}.${key} ${descending ? 'DESC' : 'ASC'}`)
    .join(', ');

/**
 * A page of the list by any filter and order, in one statement that looks at all due points. Parameters: $1 operator, $2
 * now, $3 basis, $4 days of an average, $5 an airframe or null, $6 how many rows, $7 to $11 the key of the last row seen or
 * nulls, then those of the conditions.
 */
export function dueListSql(conditions: DueConditions, order: Order): string {
  return `${keyed(conditions, order.sort)}, page AS MATERIALIZED (
  SELECT * FROM keyed
   WHERE $7::bigint IS NULL
      OR (n1, n2, n3, text COLLATE "C", id) ${order.descending ? '<' : '>'} ($7::bigint, $8::bigint, $9::bigint, $10::text COLLATE "C", $11::uuid)
   ORDER BY ${ordered('keyed', order)} LIMIT $6::int
), ${dutyDues('page')}${rowColumns('$1', { more: ', p.n1::float8 AS n1, p.n2::float8 AS n2, p.n3::float8 AS n3, p.text' })}
 ORDER BY ${ordered('p', order)}`;
}

/**
 * The whole list by any filter and order, each row as one text. Parameters: $1 to $5 as of a page, then those of the conditions.
 */
export function wholeDueListSql(conditions: DueConditions, order: Order): string {
  // No page between: what is read of the names is joined once.
  return toldText(`${keyed(conditions, order.sort)}, ${dutyDues('all')}${rowColumns('$1', { from: 'keyed' })}
 ORDER BY ${ordered('p', order)}`);
}

/** A row with the key it is sorted by. */
export interface DueListRow extends DuePageRow {
  n1: number;
  n2: number;
  n3: number;
  text: string;
}

/** How many there are of each status: in all, in the scope, and by the filters too. Parameters as $1 to $5 of the list. */
export function dueTotalsSql({ scope, filters }: DueConditions): string {
  return `WITH ${NAMED}
SELECT n.status, count(*)::int AS whole, (count(*) FILTER (WHERE ${all(scope)}))::int AS scope,
       (count(*) FILTER (WHERE ${all([...scope, ...filters])}))::int AS shown
  FROM named n GROUP BY n.status`;
}

/** A row of the totals. */
export interface DueTotalsRow {
  status: string;
  whole: number;
  scope: number;
  shown: number;
}
