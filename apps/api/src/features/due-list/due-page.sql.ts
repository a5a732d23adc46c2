import { datedLives } from './dated-lives.sql.js';
import { DUTY_DUES_SQL, DUTY_SQL, type DutyDue } from './duty.sql.js';

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

/** Days left at the use of the last 90 days, rounded down; on a clock that did not run, what is left of it. */
const urgencyOf = (clock: string, dueAt: string): string =>
  `(CASE WHEN ${clock}.used > 0 THEN floor((${dueAt} - ${clock}.reading) * 90 / ${clock}.used::numeric)
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
           AND p.due_at IS NOT NULL AND p.requirement_id IS NULL AND ${condition} AND ${afterLast('c')}
         ORDER BY p.due_at, p.id LIMIT ${limit}) AS d WHERE ${which}`,
    )
    .join(' UNION ALL ');

/**
 * One page of the due list, the most urgent first, in one statement, life limits and requirements together. Parameters: $1 operator, $2 now, $3 how many
 * rows, $4 an airframe or null, $5 to $8 the key of the last row seen (rank, urgency, due at, due point) or nulls.
 *
 * The order is by rank, then urgency: 0 over the limit, 1 not verified or not authorised, 2 by the days left at the
 * average use of the last 90 days, 3 by what is left on a clock that did not run. On one clock both only rise with
 * the due point, so the next rows of each clock are found by its index, and only clocks whose first row can be on
 * the page give more than one. Remaining is computed here and stored nowhere.
 */
export const DUE_PAGE_SQL = `
WITH past AS (
  SELECT $2::timestamptz - interval '90 days' AS at, month_of($2::timestamptz - interval '90 days') AS month
), own_use AS MATERIALIZED (
  SELECT c.id AS carrier_id, c.kind, coalesce(c.airframe_id, hung.airframe_id) AS airframe_id,
         coalesce(c.position_id, hung.position_id) AS position_id, u.*
    FROM carrier c CROSS JOIN past
    LEFT JOIN LATERAL (
      -- an auxiliary power unit is its own carrier, and hangs on an airframe or on none
      SELECT o.airframe_id, o.id AS position_id FROM stay st
        JOIN slot s ON s.operator_id = st.operator_id AND s.id = st.slot_id
        JOIN position o ON o.operator_id = s.operator_id AND o.id = s.position_id
       WHERE c.kind = 'apu-counter' AND st.operator_id = $1::int AND st.component_id = c.id
         AND st.voided_seq IS NULL AND st.to_at IS NULL
    ) AS hung ON true
    CROSS JOIN LATERAL (
      SELECT coalesce(sum(minutes), 0) AS minutes, coalesce(sum(flights), 0) AS flights, coalesce(sum(landings), 0) AS landings,
             coalesce(sum(touch_and_goes), 0) AS touch_and_goes, coalesce(sum(starts), 0) AS starts,
             coalesce(sum(aborted_take_offs), 0) AS aborted_take_offs
        FROM (
          SELECT minutes, flights, landings, touch_and_goes, starts, aborted_take_offs FROM bucket b
           WHERE b.operator_id = $1::int AND b.carrier_id = c.id AND b.month > past.month
          UNION ALL
          SELECT minutes, 1, 1 + touch_and_goes, touch_and_goes, starts, aborted_take_offs FROM flight f
           WHERE f.operator_id = $1::int AND f.airframe_id = c.id AND f.voided_seq IS NULL AND f.landing_at > past.at
             AND f.landing_at < (past.month + interval '1 month') AT TIME ZONE 'UTC'
          UNION ALL
          SELECT -minutes, -flights, -landings, -touch_and_goes, -starts, -aborted_take_offs FROM flight_exception e
           WHERE e.operator_id = $1::int AND e.position_id = c.id AND e.voided_seq IS NULL AND e.landing_at > past.at
             AND e.landing_at < (past.month + interval '1 month') AT TIME ZONE 'UTC'
          UNION ALL
          SELECT counted_minutes, 0, 0, 0, starts, aborted_take_offs FROM ground_run g
           WHERE g.operator_id = $1::int AND g.carrier_id = c.id AND g.voided_seq IS NULL AND g.ended_at > past.at
             AND g.ended_at < (past.month + interval '1 month') AT TIME ZONE 'UTC'
          UNION ALL
          SELECT minutes, 0, 0, 0, starts, 0 FROM counter_posting t
           WHERE c.kind = 'apu-counter' AND t.operator_id = $1::int AND t.carrier_id = c.id AND t.at > past.at
             AND t.at < (past.month + interval '1 month') AT TIME ZONE 'UTC'
        ) AS posted
    ) AS u
   WHERE c.operator_id = $1::int AND ($4::uuid IS NULL OR coalesce(c.airframe_id, hung.airframe_id) = $4::uuid)
), hand AS MATERIALIZED (
  SELECT n.carrier_id, o.airframe_id, o.position_id, a.airframe_type_id,
         n.minutes, n.flights, n.landings, n.touch_and_goes, n.starts, n.aborted_take_offs,
         o.minutes + coalesce(w.minutes, 0) AS used_minutes, o.flights + coalesce(w.flights, 0) AS used_flights,
         o.landings + coalesce(w.landings, 0) AS used_landings,
         o.touch_and_goes + coalesce(w.touch_and_goes, 0) AS used_touch_and_goes,
         o.starts + coalesce(w.starts, 0) AS used_starts,
         o.aborted_take_offs + coalesce(w.aborted_take_offs, 0) AS used_aborted_take_offs
    FROM own_use o
    JOIN clock_now n ON n.operator_id = $1::int AND n.carrier_id = o.carrier_id
    LEFT JOIN own_use w ON o.kind = 'position' AND w.carrier_id = o.airframe_id
    LEFT JOIN airframe a ON a.operator_id = $1::int AND a.id = o.airframe_id
), clock AS MATERIALIZED (
  SELECT carrier_id, airframe_id, position_id, 'minutes' AS dimension, NULL::uuid AS rule_id,
         minutes::bigint AS reading, 1 AS denominator, used_minutes::bigint AS used FROM hand
  UNION ALL
  SELECT h.carrier_id, h.airframe_id, h.position_id, 'cycles', r.id,
         r.per_flight * h.flights + r.per_landing * h.landings + r.per_touch_and_go * h.touch_and_goes
           + r.per_start * h.starts + r.per_aborted_take_off * h.aborted_take_offs,
         r.denominator,
         (r.per_flight * h.used_flights + r.per_landing * h.used_landings + r.per_touch_and_go * h.used_touch_and_goes
           + r.per_start * h.used_starts + r.per_aborted_take_off * h.used_aborted_take_offs)::bigint
    FROM hand h
    JOIN cycle_rule r ON r.operator_id = $1::int
     AND (h.airframe_id IS NULL OR r.airframe_type_id IS NULL OR r.airframe_type_id = h.airframe_type_id)
  UNION ALL
  SELECT carrier_id, airframe_id, position_id, 'cycles', NULL, 0, 1, 0 FROM hand
  UNION ALL
  SELECT NULL, NULL, NULL, still.dimension, NULL, 0, 1, 0
    FROM (VALUES ('minutes'), ('cycles')) AS still (dimension) WHERE $4::uuid IS NULL
), seen AS (
  -- From which due point on a clock's rows come after the last one seen.
  SELECT c.*, CASE
      WHEN $5::int IS NULL THEN NULL
      WHEN $5::int = 1 THEN c.reading
      WHEN $5::int = 0 AND c.used > 0 THEN least(greatest($7::bigint, c.reading + ceil($6::bigint * c.used / 90::numeric)),
                                                 c.reading + ceil(($6::bigint + 1) * c.used / 90::numeric))
      WHEN $5::int = 0 THEN least(greatest($7::bigint, c.reading + $6::bigint * c.denominator), c.reading + ($6::bigint + 1) * c.denominator)
      WHEN $5::int = 2 AND c.used > 0 THEN least(greatest($7::bigint, c.reading + ceil($6::bigint * c.used / 90::numeric)),
                                                 c.reading + ceil(($6::bigint + 1) * c.used / 90::numeric))
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
), ${datedLives(lifeColumns('p'))}, ${DUTY_SQL}, page AS MATERIALIZED (
  SELECT * FROM (
    SELECT id, kind, component_id, engine_id, airframe_id, position_id, NULL::uuid AS requirement_id, NULL::uuid AS subject_id,
           verdict, dimension, life_limit_id, flagged, reason, span, due_at, due_on, left_units, denominator, rank, urgency
      FROM (SELECT * FROM counted UNION ALL SELECT * FROM dated UNION ALL SELECT * FROM unknown) AS life
    UNION ALL
    SELECT id, 'requirement', component_id, engine_id, airframe_id, position_id, requirement_id, subject_id,
           verdict, dimension, NULL, false, reason, span, due_at, due_on, left_units, denominator, rank, urgency FROM duty
  ) AS due
   WHERE $5::int IS NULL OR (due.rank, due.urgency, coalesce(due.due_at, 0), due.id) > ($5::int, $6::bigint, $7::bigint, $8::uuid)
   ORDER BY due.rank, due.urgency, coalesce(due.due_at, 0), due.id LIMIT $3::int
), ${DUTY_DUES_SQL}
SELECT p.id, p.kind, p.component_id AS "componentId", k.description, k.part_number AS "partNumber", k.serial_number AS "serialNumber",
       p.engine_id AS "engineId", e.serial_number AS "engineSerial", a.id AS "airframeId", a.registration,
       o.number AS "positionNumber", p.verdict, p.dimension, p.flagged, p.reason, p.rank, p.urgency::float8 AS urgency,
       coalesce(p.due_at, 0)::float8 AS "dueAt", floor(p.left_units / p.denominator::numeric)::float8 AS remaining,
       CASE WHEN p.rank = 2 THEN p.urgency::float8 END AS "daysLeft", to_char(p.due_on, 'YYYY-MM-DD') AS "dueOn",
       CASE WHEN p.requirement_id IS NOT NULL OR p.due_on IS NOT NULL THEN p.span WHEN p.dimension = 'cycles' THEN l.cycles ELSE l.minutes END::float8 AS "limit",
       coalesce(q.document, l.document) AS document, coalesce(q.revision, l.revision) AS revision,
       q.id AS "requirementId", q.code AS "requirementCode", q.title AS "requirementTitle", q.kind AS "requirementKind", q.combine,
       dd.dues
  FROM page p
  LEFT JOIN component k ON k.operator_id = $1::int AND k.id = p.component_id
  LEFT JOIN component e ON e.operator_id = $1::int AND e.id = p.engine_id
  LEFT JOIN airframe a ON a.operator_id = $1::int AND a.id = p.airframe_id
  LEFT JOIN position o ON o.operator_id = $1::int AND o.id = p.position_id
  LEFT JOIN life_limit l ON l.operator_id = $1::int AND l.id = p.life_limit_id
  LEFT JOIN duty_dues dd ON dd.requirement_id = p.requirement_id AND dd.subject_id = p.subject_id
  LEFT JOIN requirement q ON q.operator_id = $1::int AND q.id = p.requirement_id
 ORDER BY p.rank, p.urgency, coalesce(p.due_at, 0), p.id`;

/** A row of the page as the statement gives it. */
export interface DuePageRow {
  id: string;
  kind: 'life-limit' | 'counters' | 'requirement';
  /** Null for a requirement of an airframe or a position, as are its numbers. */
  componentId: string | null;
  description: string | null;
  partNumber: string | null;
  serialNumber: string | null;
  engineId: string | null;
  engineSerial: string | null;
  airframeId: string | null;
  registration: string | null;
  positionNumber: number | null;
  verdict: string;
  dimension: string;
  flagged: boolean;
  reason: string | null;
  rank: number;
  urgency: number;
  dueAt: number;
  remaining: number | null;
  daysLeft: number | null;
  dueOn: string | null;
  limit: number | null;
  document: string | null;
  revision: string | null;
  requirementId: string | null;
  requirementCode: string | null;
  requirementTitle: string | null;
  requirementKind: string | null;
  combine: 'first' | 'last' | null;
  dues: DutyDue[] | null;
}
