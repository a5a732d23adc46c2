/**
 * The part of the page that finds requirements: one row for each and what it is held against, with its governing
 * dimension. Other than limits they are few, and which dimension governs depends on the use of all of them: so all are
 * looked at. Uses `hand` and the parameters of the page.
 *
 * In each dimension: what is left, in units of the clock or in days, and the days until then. What is past comes first,
 * and among it what is over; then by the days left, and last what is not used; whichever comes last turns the order round.
 */
export const DUTY_SQL = `duty_part AS MATERIALIZED (
  SELECT p.id, p.component_id, p.engine_id, p.requirement_id, p.verdict, p.dimension, p.reason, p.span, p.due_at, p.due_on, p.bound,
         coalesce(p.component_id, p.position_id, p.airframe_id) AS subject_id, q.combine, p.position_id AS at_position_id,
         coalesce(h.airframe_id, p.airframe_id) AS airframe_id, coalesce(h.position_id, p.position_id) AS position_id,
         c.denominator, c.used,
         -- What was due at an event is past on the day it happened.
         CASE WHEN p.due_on IS NOT NULL THEN p.due_on - c.today - (p.dimension = 'event')::int
              ELSE p.due_at - c.reading END AS left_units,
         CASE WHEN p.due_on IS NOT NULL THEN coalesce(p.latest_on, p.due_on) - c.today - (p.dimension = 'event')::int
              ELSE coalesce(p.latest_at, p.due_at) - c.reading END AS latest_units
    FROM due_point p
    JOIN requirement q ON q.operator_id = $1::int AND q.id = p.requirement_id
    LEFT JOIN hand h ON h.carrier_id = p.carrier_id
    LEFT JOIN airframe a ON a.operator_id = $1::int AND a.id = coalesce(h.airframe_id, p.airframe_id)
    LEFT JOIN cycle_rule r ON r.operator_id = $1::int AND r.id = p.cycle_rule_id
    CROSS JOIN LATERAL (
      SELECT coalesce(CASE p.dimension WHEN 'minutes' THEN h.minutes WHEN 'flights' THEN h.flights
               WHEN 'cycles' THEN r.per_flight * h.flights + r.per_landing * h.landings + r.per_touch_and_go * h.touch_and_goes
                 + r.per_start * h.starts + r.per_aborted_take_off * h.aborted_take_offs END, 0)::bigint AS reading,
             coalesce(CASE p.dimension WHEN 'minutes' THEN h.used_minutes WHEN 'flights' THEN h.used_flights
               WHEN 'cycles' THEN r.per_flight * h.used_flights + r.per_landing * h.used_landings
                 + r.per_touch_and_go * h.used_touch_and_goes + r.per_start * h.used_starts
                 + r.per_aborted_take_off * h.used_aborted_take_offs END, 0)::bigint AS used,
             coalesce(r.denominator, 1) AS denominator,
             (($2::timestamptz) AT TIME ZONE coalesce(a.day_zone, 'UTC'))::date AS today
    ) AS c
   WHERE p.operator_id = $1::int AND p.kind = 'requirement'
     AND ($4::uuid IS NULL OR coalesce(h.airframe_id, p.airframe_id) = $4::uuid)
), duty_timed AS MATERIALIZED (
  SELECT d.*,
         CASE WHEN d.due_on IS NOT NULL THEN d.left_units
              WHEN d.used > 0 THEN floor(d.left_units * 90 / d.used::numeric) END::bigint AS days,
         floor(d.left_units / d.denominator::numeric)::bigint AS remaining,
         floor(d.latest_units / d.denominator::numeric)::bigint AS latest,
         CASE WHEN d.latest_units < 0 THEN 0 WHEN d.left_units < 0 THEN 1 END AS past
    FROM duty_part d
), duty_ordered AS (
  SELECT d.*, max(CASE WHEN d.dimension = 'none' THEN d.id::text END) OVER whole AS unknown_id,
         max(CASE WHEN d.dimension = 'none' THEN d.reason END) OVER whole AS unknown_reason,
         row_number() OVER (PARTITION BY d.requirement_id, d.subject_id, d.bound ORDER BY d.dimension = 'none',
           s.sign * coalesce(d.past, CASE WHEN d.days IS NULL THEN 3 ELSE 2 END),
           s.sign * coalesce(d.days, d.remaining), d.id) AS place
    FROM duty_timed d CROSS JOIN LATERAL (SELECT CASE WHEN d.combine = 'last' AND NOT d.bound THEN -1 ELSE 1 END AS sign) AS s
  WINDOW whole AS (PARTITION BY d.requirement_id, d.subject_id)
), duty_first AS (
  -- An outer bound governs as soon as it comes, whatever the rest combines.
  SELECT DISTINCT ON (d.requirement_id, d.subject_id) d.* FROM duty_ordered d WHERE d.place = 1
   ORDER BY d.requirement_id, d.subject_id, d.dimension = 'none', coalesce(d.past, CASE WHEN d.days IS NULL THEN 3 ELSE 2 END),
         coalesce(d.days, d.remaining), d.id
), duty AS (
  -- Something unknown is shown for the whole, unless whichever comes first is past already.
  SELECT CASE WHEN u.shown THEN d.unknown_id::uuid ELSE d.id END AS id, d.component_id, d.engine_id, d.requirement_id,
         d.subject_id, d.airframe_id, d.position_id,
         CASE WHEN u.shown THEN 'not-verified' ELSE d.verdict END AS verdict,
         CASE WHEN u.shown THEN 'none' ELSE d.dimension END AS dimension,
         CASE WHEN u.shown THEN d.unknown_reason ELSE d.reason END AS reason, CASE WHEN NOT u.shown THEN d.span END AS span,
         CASE WHEN NOT u.shown THEN d.due_at END AS due_at, CASE WHEN NOT u.shown THEN d.due_on END AS due_on,
         CASE WHEN NOT u.shown THEN d.left_units END AS left_units, d.denominator,
         CASE WHEN u.shown THEN 1 WHEN d.past = 0 THEN 0 WHEN d.days IS NOT NULL THEN 2 ELSE 3 END AS rank,
         CASE WHEN u.shown THEN 0 ELSE coalesce(d.days, d.remaining) END::bigint AS urgency
    FROM duty_first d
    CROSS JOIN LATERAL (
      SELECT d.unknown_id IS NOT NULL AND NOT ((d.combine = 'first' OR d.bound) AND coalesce(d.past = 0, false)) AS shown
    ) AS u
)`;

/** All dimensions that can be told of the requirements on the page, as JSON: one row for each and its subject. */
export const DUTY_DUES_SQL = `duty_dues AS MATERIALIZED (
  SELECT t.requirement_id, t.subject_id,
         jsonb_agg(jsonb_build_object('dimension', t.dimension, 'span', t.span, 'remaining', t.remaining,
           'latest', t.latest, 'bound', t.bound, 'dueOn', t.due_on)) AS dues
    FROM duty_timed t
   WHERE t.dimension NOT IN ('none', 'event') AND EXISTS (
     SELECT FROM page p WHERE p.requirement_id = t.requirement_id AND p.subject_id = t.subject_id)
   GROUP BY t.requirement_id, t.subject_id
)`;

/** One dimension of a requirement as the statement gives it. */
export interface DutyDue {
  dimension: 'minutes' | 'cycles' | 'flights' | 'days' | 'months';
  span: number;
  remaining: number;
  /** What is left until the end of what is granted past it. */
  latest: number;
  /** Whether it is of an outer bound. */
  bound: boolean;
  dueOn: string | null;
}
