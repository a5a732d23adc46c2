import { STATUS_PLACE, TOLD_STATUSES } from './duty-status.sql.js';
import type { DueParameters } from './use.sql.js';

const NO_REQUIREMENT = "'00000000-0000-0000-0000-000000000000'::uuid";
const COUNTERS = "'00000000-0000-0000-0000-000000000001'::uuid";

/** Due points that are told as one with others; or all of them. */
const POINTS = {
  combined: ({ operator }: DueParameters) => `(
      SELECT * FROM due_point WHERE operator_id = ${operator}::int AND requirement_id IS NOT NULL
      UNION ALL
      SELECT * FROM due_point WHERE operator_id = ${operator}::int AND is_one_of AND requirement_id IS NULL)`,
  all: ({ operator }: DueParameters) => `(SELECT * FROM due_point WHERE operator_id = ${operator}::int)`,
};

/** Divided and rounded down, of integers of which the second is above zero; far quicker than of decimals. */
const floorOf = (of: string, by: string): string => `(${of}) / ${by} - ((${of}) % ${by} < 0)::int`;

const ON_PAGE = {
  page: ` AND EXISTS (
     SELECT FROM page p WHERE p.duty_id = t.duty_id AND p.subject_id = t.subject_id)`,
  all: '',
} as const;

/**
 * The part of a statement that tells duties, one row for each life or requirement and what it is of, with its governing
 * dimension: requirements and lives of several dimensions, which are few, or all. Which dimension governs depends on the
 * use of all of them: so all are looked at. Uses `hand`.
 *
 * In each dimension: what is left, in units of the clock or in days, and the days until then. What is past comes first,
 * and among it what is over; then by the days left, and last what is not used; whichever comes last turns the order round.
 */
export const duties = (which: keyof typeof POINTS, p: DueParameters): string => `duty_part AS MATERIALIZED (
  SELECT p.id, p.kind, p.component_id, p.engine_id, p.requirement_id, p.verdict, p.dimension, p.reason, p.due_at, p.due_on, p.bound,
         p.life_limit_id, p.flagged, p.requirement_id IS NULL AND NOT p.is_one_of AS alone,
         coalesce(p.span, CASE p.dimension WHEN 'cycles' THEN l.cycles WHEN 'minutes' THEN l.minutes END) AS span,
         coalesce(p.requirement_id, CASE p.kind WHEN 'counters' THEN ${COUNTERS} ELSE ${NO_REQUIREMENT} END) AS duty_id,
         coalesce(p.component_id, p.position_id, p.airframe_id) AS subject_id, coalesce(q.combine, 'first') AS combine,
         c.airframe_id, c.position_id, c.denominator, c.used, c.period,
         -- What was due at an event is past on the day it happened.
         CASE WHEN p.due_on IS NOT NULL THEN p.due_on - t.today - (p.dimension = 'event')::int
              ELSE p.due_at - c.reading END AS left_units,
         CASE WHEN p.due_on IS NOT NULL THEN coalesce(p.latest_on, p.due_on) - t.today - (p.dimension = 'event')::int
              ELSE coalesce(p.latest_at, p.due_at) - c.reading END AS latest_units
    FROM ${POINTS[which](p)} AS p
    LEFT JOIN requirement q ON q.operator_id = ${p.operator}::int AND q.id = p.requirement_id
    LEFT JOIN life_limit l ON l.operator_id = ${p.operator}::int AND l.id = p.life_limit_id
    LEFT JOIN hand h ON h.carrier_id = p.carrier_id
    LEFT JOIN cycle_rule r ON r.operator_id = ${p.operator}::int AND r.id = p.cycle_rule_id
    LEFT JOIN LATERAL (
      -- What can't be told hangs on no clock: it is where its engine is.
      SELECT o.airframe_id, o.id AS position_id FROM stay st
        JOIN slot s ON s.operator_id = st.operator_id AND s.id = st.slot_id
        JOIN position o ON o.operator_id = s.operator_id AND o.id = s.position_id
       WHERE p.carrier_id IS NULL AND st.operator_id = ${p.operator}::int AND st.component_id = p.engine_id
         AND st.voided_seq IS NULL AND st.to_at IS NULL
    ) AS here ON true
    CROSS JOIN LATERAL (
      SELECT coalesce(h.airframe_id, p.airframe_id, here.airframe_id) AS airframe_id,
             coalesce(h.position_id, p.position_id, here.position_id) AS position_id,
             coalesce(CASE p.dimension WHEN 'minutes' THEN h.minutes WHEN 'flights' THEN h.flights
               WHEN 'cycles' THEN r.per_flight * h.flights + r.per_landing * h.landings + r.per_touch_and_go * h.touch_and_goes
                 + r.per_start * h.starts + r.per_aborted_take_off * h.aborted_take_offs END, 0)::bigint AS reading,
             coalesce(CASE p.dimension WHEN 'minutes' THEN h.used_minutes WHEN 'flights' THEN h.used_flights
               WHEN 'cycles' THEN r.per_flight * h.used_flights + r.per_landing * h.used_landings
                 + r.per_touch_and_go * h.used_touch_and_goes + r.per_start * h.used_starts
                 + r.per_aborted_take_off * h.used_aborted_take_offs END, 0)::bigint AS used,
             coalesce(h.period, 1) AS period, coalesce(r.denominator, 1) AS denominator
    ) AS c
    LEFT JOIN airframe a ON a.operator_id = ${p.operator}::int AND a.id = c.airframe_id
    CROSS JOIN LATERAL (SELECT ((${p.now}::timestamptz) AT TIME ZONE coalesce(a.day_zone, 'UTC'))::date AS today) AS t
   WHERE ${p.airframe}::uuid IS NULL OR c.airframe_id = ${p.airframe}::uuid
), duty_left AS MATERIALIZED (
  SELECT d.*,
         CASE WHEN d.due_on IS NOT NULL THEN d.left_units
              WHEN d.used > 0 THEN ${floorOf('d.left_units * d.period', 'd.used')} END::bigint AS days,
         ${floorOf('d.left_units', 'd.denominator')}::bigint AS remaining,
         ${floorOf('d.latest_units', 'd.denominator')}::bigint AS latest,
         CASE WHEN d.latest_units < 0 THEN 0 WHEN d.left_units < 0 THEN 1 END AS past
    FROM duty_part d
), duty_timed AS MATERIALIZED (
  SELECT d.*, CASE WHEN d.left_units IS NOT NULL THEN ${STATUS_PLACE} END AS status_place FROM duty_left d
), duty_ordered AS (
  SELECT d.*, max(CASE WHEN d.left_units IS NULL THEN d.id::text END) OVER whole AS unknown_id,
         max(CASE WHEN d.left_units IS NULL THEN d.reason END) OVER whole AS unknown_reason,
         min(CASE WHEN d.left_units IS NULL THEN d.verdict END) OVER whole AS unknown_verdict,
         min(d.status_place) FILTER (WHERE d.bound OR d.combine = 'first') OVER whole AS nearest,
         max(d.status_place) FILTER (WHERE NOT d.bound) OVER whole AS farthest,
         min(d.remaining) FILTER (WHERE d.dimension = 'minutes') OVER whole AS left_minutes,
         min(d.remaining) FILTER (WHERE d.dimension IN ('cycles', 'flights')) OVER whole AS left_cycles,
         row_number() OVER (PARTITION BY d.duty_id, d.subject_id, d.bound ORDER BY d.left_units IS NULL,
           s.sign * coalesce(d.past, CASE WHEN d.days IS NULL THEN 3 ELSE 2 END),
           s.sign * coalesce(d.days, d.remaining), d.id) AS place
    FROM duty_timed d CROSS JOIN LATERAL (SELECT CASE WHEN d.combine = 'last' AND NOT d.bound THEN -1 ELSE 1 END AS sign) AS s
   WHERE NOT d.alone
  WINDOW whole AS (PARTITION BY d.duty_id, d.subject_id)
), duty_first AS (
  -- An outer bound governs as soon as it comes, whatever the rest combines.
  (SELECT DISTINCT ON (d.duty_id, d.subject_id) d.* FROM duty_ordered d WHERE d.place = 1
    ORDER BY d.duty_id, d.subject_id, d.left_units IS NULL, coalesce(d.past, CASE WHEN d.days IS NULL THEN 3 ELSE 2 END),
          coalesce(d.days, d.remaining), d.id)
  UNION ALL
  -- What stands alone, which is nearly all of a fleet's lives, needs no looking at others.
  SELECT d.*, CASE WHEN d.left_units IS NULL THEN d.id::text END, d.reason, d.verdict, d.status_place, d.status_place,
         CASE WHEN d.dimension = 'minutes' THEN d.remaining END,
         CASE WHEN d.dimension IN ('cycles', 'flights') THEN d.remaining END, 1
    FROM duty_timed d WHERE d.alone
), duty AS (
  -- Something unknown is shown for the whole, unless whichever comes first is past already.
  SELECT CASE WHEN u.shown THEN d.unknown_id::uuid ELSE d.id END AS id, d.kind, d.component_id, d.engine_id, d.requirement_id,
         d.duty_id, d.subject_id, d.airframe_id, d.position_id, d.life_limit_id, d.flagged, d.combine,
         CASE WHEN u.shown THEN d.unknown_verdict ELSE d.verdict END AS verdict,
         CASE WHEN u.shown THEN 'none' ELSE d.dimension END AS dimension,
         CASE WHEN u.shown THEN d.unknown_reason ELSE d.reason END AS reason, CASE WHEN NOT u.shown THEN d.span END AS span,
         CASE WHEN NOT u.shown THEN d.due_at END AS due_at, CASE WHEN NOT u.shown THEN d.due_on END AS due_on,
         CASE WHEN NOT u.shown THEN d.left_units END AS left_units, d.denominator, d.left_minutes, d.left_cycles,
         CASE WHEN NOT u.shown THEN d.days END AS days,
         CASE WHEN u.shown THEN 1 WHEN d.past = 0 THEN 0 WHEN d.days IS NOT NULL THEN 2 ELSE 3 END AS rank,
         CASE WHEN u.shown THEN CASE d.unknown_verdict WHEN 'not-authorised' THEN -1 ELSE 0 END
              ELSE coalesce(d.days, d.remaining) END::bigint AS urgency,
         CASE WHEN u.shown THEN CASE d.unknown_verdict WHEN 'not-authorised' THEN 'over' ELSE 'not-verified' END
              WHEN d.past = 0 THEN 'over'
              ELSE (ARRAY[${TOLD_STATUSES.map((status) => `'${status}'`).join(', ')}])[
                1 + CASE WHEN d.combine = 'last' THEN least(d.farthest, d.nearest) ELSE d.nearest END] END AS status
    FROM duty_first d
    CROSS JOIN LATERAL (
      SELECT d.unknown_id IS NOT NULL AND NOT ((d.combine = 'first' OR d.bound) AND coalesce(d.past = 0, false)) AS shown
    ) AS u
)`;

/**
 * All dimensions that can be told of the duties on the page, or of all there are, as JSON: one row for each. What stands
 * alone is its own.
 */
export const dutyDues = (of: 'page' | 'all'): string => `duty_dues AS MATERIALIZED (
  SELECT t.duty_id, t.subject_id,
         jsonb_agg(jsonb_build_object('dimension', t.dimension, 'span', t.span, 'remaining', t.remaining,
           'latest', t.latest, 'bound', t.bound, 'days', t.days, 'dueOn', t.due_on)) AS dues
    FROM duty_timed t
   WHERE NOT t.alone AND t.left_units IS NOT NULL AND t.dimension <> 'event'${ON_PAGE[of]}
   GROUP BY t.duty_id, t.subject_id
)`;

/** One dimension of a duty as the statement gives it. */
export interface DutyDue {
  dimension: 'minutes' | 'cycles' | 'flights' | 'days' | 'months';
  span: number;
  remaining: number;
  /** What is left until the end of what is granted past it. */
  latest: number;
  /** Whether it is of an outer bound. */
  bound: boolean;
  /** Days until nothing is left by the basis; null when nothing is used. */
  days: number | null;
  dueOn: string | null;
}
