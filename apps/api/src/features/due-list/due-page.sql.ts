import { datedLives } from './sql/dated-lives.sql.js';
import { rowColumns } from './sql/due-columns.sql.js';
import { duties, dutyDues } from './sql/duty.sql.js';
import { clockHands, type DueParameters } from './sql/use.sql.js';

const NAMES: DueParameters = { operator: '$1', now: '$2', airframe: '$4', basis: '$9', days: '$10' };

/** What the page takes from a due point of a life limit; where it hangs it takes from its clock. */
const lifeColumns = (of: string): string =>
  [
    'id',
    'kind',
    'component_id',
    'engine_id',
    'verdict',
    'dimension',
    'life_limit_id',
    'flagged',
    'reason',
    'span',
    'due_at',
    'due_on',
  ]
    .map((column) => `${of}.${column}`)
    .join(', ');

/** The rank of a due point on a clock: 0 past it, 2 on a clock that ran of late, 3 on one that did not. */
const rankOf = (clock: string, dueAt: string): string =>
  `(CASE WHEN ${dueAt} < ${clock}.reading THEN 0 WHEN ${clock}.used > 0 THEN 2 ELSE 3 END)`;

/** Days left by the basis, rounded down; on a clock that did not run, what is left of it. */
const urgencyOf = (clock: string, dueAt: string): string =>
  `(CASE WHEN ${clock}.used > 0 THEN floor((${dueAt} - ${clock}.reading) * ${clock}.period / ${clock}.used::numeric)
    ELSE floor((${dueAt} - ${clock}.reading) / ${clock}.denominator::numeric) END)::bigint`;

/** Whether a due point on a clock comes after the last row seen. */
const afterLast = (clock: string): string =>
  `($5::int IS NULL OR (${rankOf(clock, 'p.due_at')}, ${urgencyOf(clock, 'p.due_at')}, p.due_at, p.id)
    > ($5::int, $6::bigint, $7::bigint, $8::uuid))`;

/**
 * The first due points of each clock by its index: apart for clocks of a rule, of time, and the one that stands
 * still, as an index finds no 'is not distinct from'.
 */
const firstOnEach = (
  clocks: string,
  {
    select,
    condition,
    limit,
  }: { readonly select: string; readonly condition: string; readonly limit: string },
): string =>
  [
    ['c.rule_id IS NOT NULL', 'p.carrier_id = c.carrier_id AND p.cycle_rule_id = c.rule_id'],
    [
      'c.rule_id IS NULL AND c.carrier_id IS NOT NULL',
      'p.carrier_id = c.carrier_id AND p.cycle_rule_id IS NULL',
    ],
    ['c.carrier_id IS NULL', 'p.carrier_id IS NULL AND p.cycle_rule_id IS NULL'],
  ]
    .map(
      ([which, here]) => `SELECT ${select} FROM ${clocks} c CROSS JOIN LATERAL (
        SELECT p.* FROM due_point p WHERE p.operator_id = $1::int AND ${here} AND p.dimension = c.dimension
           AND p.due_at IS NOT NULL AND p.requirement_id IS NULL AND NOT p.is_one_of AND ${condition} AND ${afterLast('c')}
         ORDER BY p.due_at, p.id LIMIT ${limit}) AS d WHERE ${which}`,
    )
    .join(' UNION ALL ');

/**
 * One page of the due list, the most urgent first, in one statement, life limits and requirements together. Parameters: $1 operator, $2 now, $3 how many
 * rows, $4 an airframe or null, $5 to $8 the key of the last row seen (rank, urgency, due at, due point) or nulls, $9 the
 * basis and $10 the days of an average.
 *
 * The order is by rank, then urgency: 0 over the limit, 1 not verified or not authorised, 2 by the days left by
 * the basis, 3 by what is left on a clock that did not run. On one clock both only rise with
 * the due point, so the next rows of each clock are found by its index, and only clocks whose first row can be on
 * the page give more than one. Remaining is computed here and stored nowhere.
 */
export const DUE_PAGE_SQL = `
WITH ${clockHands(NAMES)}, clock AS MATERIALIZED (
  SELECT carrier_id, airframe_id, position_id, 'minutes' AS dimension, NULL::uuid AS rule_id,
         minutes::bigint AS reading, 1 AS denominator, used_minutes::bigint AS used, period FROM hand
  UNION ALL
  SELECT h.carrier_id, h.airframe_id, h.position_id, 'cycles', r.id,
         r.per_flight * h.flights + r.per_landing * h.landings + r.per_touch_and_go * h.touch_and_goes
           + r.per_start * h.starts + r.per_aborted_take_off * h.aborted_take_offs,
         r.denominator,
         (r.per_flight * h.used_flights + r.per_landing * h.used_landings + r.per_touch_and_go * h.used_touch_and_goes
           + r.per_start * h.used_starts + r.per_aborted_take_off * h.used_aborted_take_offs)::bigint,
         h.period
    FROM hand h
    JOIN cycle_rule r ON r.operator_id = $1::int
     AND (h.airframe_id IS NULL OR r.airframe_type_id IS NULL OR r.airframe_type_id = h.airframe_type_id)
  UNION ALL
  SELECT carrier_id, airframe_id, position_id, 'cycles', NULL, 0, 1, 0, 1 FROM hand
  UNION ALL
  SELECT NULL, NULL, NULL, still.dimension, NULL, 0, 1, 0, 1
    FROM (VALUES ('minutes'), ('cycles')) AS still (dimension) WHERE $4::uuid IS NULL
), seen AS (
  -- From which due point on a clock's rows come after the last one seen.
  SELECT c.*, CASE
      WHEN $5::int IS NULL THEN NULL
      WHEN $5::int = 1 THEN c.reading
      WHEN $5::int = 0 AND c.used > 0 THEN least(greatest($7::bigint, c.reading + ceil($6::bigint * c.used / c.period::numeric)),
                                                 c.reading + ceil(($6::bigint + 1) * c.used / c.period::numeric))
      WHEN $5::int = 0 THEN least(greatest($7::bigint, c.reading + $6::bigint * c.denominator), c.reading + ($6::bigint + 1) * c.denominator)
      WHEN $5::int = 2 AND c.used > 0 THEN least(greatest($7::bigint, c.reading + ceil($6::bigint * c.used / c.period::numeric)),
                                                 c.reading + ceil(($6::bigint + 1) * c.used / c.period::numeric))
      WHEN $5::int = 2 THEN c.reading
      ELSE least(greatest($7::bigint, c.reading + $6::bigint * c.denominator), c.reading + ($6::bigint + 1) * c.denominator)
    END::bigint AS from_due
    FROM clock c WHERE $5::int IS DISTINCT FROM 3 OR c.used = 0
), first_row AS (
  ${firstOnEach('seen', {
    select: 'c.*, d.due_at AS first_due, d.id AS first_id',
    condition: 'p.due_at >= coalesce(c.from_due, -9e18::bigint)',
    limit: '1',
  })}
), chosen AS (
  -- The page's rows lie on the clocks whose first rows come first; the order must be whole, or ties would be lost.
  SELECT f.* FROM first_row f
   ORDER BY ${rankOf('f', 'f.first_due')}, ${urgencyOf('f', 'f.first_due')}, f.first_due, f.first_id LIMIT $3::int
), counted AS (
  ${firstOnEach('chosen', {
    select: `${lifeColumns('d')}, c.airframe_id, c.position_id, d.due_at - c.reading AS left_units, c.denominator, c.used,
      ${rankOf('c', 'd.due_at')} AS rank, ${urgencyOf('c', 'd.due_at')} AS urgency`,
    condition: 'p.due_at >= c.first_due',
    limit: '$3::int',
  })}
), unknown AS (
  SELECT ${lifeColumns('p')}, here.airframe_id, here.position_id, NULL::bigint AS left_units, 1 AS denominator, 0::bigint AS used, 1 AS rank,
         CASE p.verdict WHEN 'not-authorised' THEN -1 ELSE 0 END::bigint AS urgency
    FROM due_point p
    LEFT JOIN LATERAL (
      SELECT o.airframe_id, o.id AS position_id FROM stay st
        JOIN slot s ON s.operator_id = st.operator_id AND s.id = st.slot_id
        JOIN position o ON o.operator_id = s.operator_id AND o.id = s.position_id
       WHERE st.operator_id = $1::int AND st.component_id = p.engine_id AND st.voided_seq IS NULL AND st.to_at IS NULL
    ) AS here ON true
   WHERE p.operator_id = $1::int AND p.requirement_id IS NULL AND p.verdict IN ('not-verified', 'not-authorised')
     AND ($4::uuid IS NULL OR here.airframe_id = $4::uuid) AND coalesce($5::int, 0) < 2
), ${datedLives(lifeColumns('p'))}, ${duties('combined', NAMES)}, page AS MATERIALIZED (
  SELECT * FROM (
    SELECT id, kind, component_id, engine_id, airframe_id, position_id, NULL::uuid AS requirement_id, NULL::uuid AS duty_id,
           NULL::uuid AS subject_id, verdict, dimension, life_limit_id, flagged, reason, span, due_at, due_on, left_units, denominator,
           rank, urgency
      FROM (SELECT * FROM counted UNION ALL SELECT * FROM dated UNION ALL SELECT * FROM unknown) AS life
    UNION ALL
    SELECT id, kind, component_id, engine_id, airframe_id, position_id, requirement_id, duty_id,
           subject_id, verdict, dimension, life_limit_id, flagged, reason, span, due_at, due_on, left_units, denominator,
           rank, urgency FROM duty
  ) AS due
   WHERE $5::int IS NULL OR (due.rank, due.urgency, coalesce(due.due_at, 0), due.id) > ($5::int, $6::bigint, $7::bigint, $8::uuid)
   ORDER BY due.rank, due.urgency, coalesce(due.due_at, 0), due.id LIMIT $3::int
), ${dutyDues('page')}${rowColumns('$1')}
 ORDER BY p.rank, p.urgency, coalesce(p.due_at, 0), p.id`;
