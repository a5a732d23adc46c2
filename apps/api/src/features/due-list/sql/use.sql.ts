/** By what a date is projected: what was flown, a planned rate, or the flights planned. */
export const BASES = ['average', 'rate', 'flights'] as const;

export type Basis = (typeof BASES)[number];

/** What the parameters of a statement are called in it. */
export interface DueParameters {
  readonly operator: string;
  readonly now: string;
  readonly airframe: string;
  /** One of BASES. */
  readonly basis: string;
  /** Days that an average is of. */
  readonly days: string;
}

/**
 * The part of a statement that reads the clocks: `hand`, each with its reading and what it uses in `period` days by the
 * basis: what was flown in the last days, counted by whole months and the flights of the one that is cut; the planned
 * rate in force where the airframe is; or the flights planned from now on, to the day of the last landing. What is
 * planned is one landing and one start a flight, and runs every position alike.
 */
export const clockHands = ({ operator, now, airframe, basis, days }: DueParameters): string => `past AS (
  SELECT ${now}::timestamptz - ${days}::int * interval '1 day' AS at, month_of(${now}::timestamptz - ${days}::int * interval '1 day') AS month
), hung AS MATERIALIZED (
  -- An auxiliary power unit is its own carrier, and hangs on an airframe or on none.
  SELECT c.id, c.kind, coalesce(c.airframe_id, hung.airframe_id) AS airframe_id, coalesce(c.position_id, hung.position_id) AS position_id
    FROM carrier c
    LEFT JOIN LATERAL (
      SELECT o.airframe_id, o.id AS position_id FROM stay st
        JOIN slot s ON s.operator_id = st.operator_id AND s.id = st.slot_id
        JOIN position o ON o.operator_id = s.operator_id AND o.id = s.position_id
       WHERE c.kind = 'apu-counter' AND st.operator_id = ${operator}::int AND st.component_id = c.id
         AND st.voided_seq IS NULL AND st.to_at IS NULL
    ) AS hung ON true
   WHERE c.operator_id = ${operator}::int AND (${airframe}::uuid IS NULL OR coalesce(c.airframe_id, hung.airframe_id) = ${airframe}::uuid)
), own_use AS MATERIALIZED (
  SELECT c.id AS carrier_id, c.kind, c.airframe_id, c.position_id, u.*, ${days}::int AS period
    FROM hung AS c CROSS JOIN past
    CROSS JOIN LATERAL (
      SELECT coalesce(sum(minutes), 0) AS minutes, coalesce(sum(flights), 0) AS flights, coalesce(sum(landings), 0) AS landings,
             coalesce(sum(touch_and_goes), 0) AS touch_and_goes, coalesce(sum(starts), 0) AS starts,
             coalesce(sum(aborted_take_offs), 0) AS aborted_take_offs
        FROM (
          SELECT minutes, flights, landings, touch_and_goes, starts, aborted_take_offs FROM bucket b
           WHERE b.operator_id = ${operator}::int AND b.carrier_id = c.id AND b.month > past.month
          UNION ALL
          SELECT minutes, 1, 1 + touch_and_goes, touch_and_goes, starts, aborted_take_offs FROM flight f
           WHERE f.operator_id = ${operator}::int AND f.airframe_id = c.id AND f.voided_seq IS NULL AND f.landing_at > past.at
             AND f.landing_at < (past.month + interval '1 month') AT TIME ZONE 'UTC'
          UNION ALL
          SELECT -minutes, -flights, -landings, -touch_and_goes, -starts, -aborted_take_offs FROM flight_exception e
           WHERE e.operator_id = ${operator}::int AND e.position_id = c.id AND e.voided_seq IS NULL AND e.landing_at > past.at
             AND e.landing_at < (past.month + interval '1 month') AT TIME ZONE 'UTC'
          UNION ALL
          SELECT counted_minutes, 0, 0, 0, starts, aborted_take_offs FROM ground_run g
           WHERE g.operator_id = ${operator}::int AND g.carrier_id = c.id AND g.voided_seq IS NULL AND g.ended_at > past.at
             AND g.ended_at < (past.month + interval '1 month') AT TIME ZONE 'UTC'
          UNION ALL
          SELECT minutes, 0, 0, 0, starts, 0 FROM counter_posting t
           WHERE c.kind = 'apu-counter' AND t.operator_id = ${operator}::int AND t.carrier_id = c.id AND t.at > past.at
             AND t.at < (past.month + interval '1 month') AT TIME ZONE 'UTC'
        ) AS posted
    ) AS u
   WHERE ${basis}::text = 'average'
  UNION ALL
  SELECT c.id, c.kind, c.airframe_id, c.position_id, coalesce(u.minutes, 0), coalesce(u.flights, 0), coalesce(u.flights, 0), 0,
         coalesce(u.flights, 0), 0, coalesce(u.period, 1)
    FROM hung AS c
    LEFT JOIN LATERAL (
      (SELECT t.minutes::numeric AS minutes, t.flights::numeric AS flights, t.days AS period
         FROM planned_rate t JOIN airframe a ON a.operator_id = t.operator_id AND a.id = t.airframe_id
        WHERE t.operator_id = ${operator}::int AND t.airframe_id = c.airframe_id AND t.voided_seq IS NULL
          AND t.from_on <= (${now}::timestamptz AT TIME ZONE a.day_zone)::date AND ${basis}::text = 'rate'
        ORDER BY t.from_on DESC LIMIT 1)
      UNION ALL
      SELECT sum(extract(epoch FROM t.landing_at - t.take_off_at) / 60), count(*)::numeric,
             greatest(1, ceil(extract(epoch FROM max(t.landing_at) - ${now}::timestamptz) / 86400))::int
        FROM planned_flight t
       WHERE t.operator_id = ${operator}::int AND t.airframe_id = c.airframe_id AND t.voided_seq IS NULL
         AND t.take_off_at >= ${now}::timestamptz AND ${basis}::text = 'flights'
      HAVING count(*) > 0
    ) AS u ON c.kind = 'airframe'
   WHERE ${basis}::text <> 'average'
), hand AS MATERIALIZED (
  SELECT n.carrier_id, o.airframe_id, o.position_id, a.airframe_type_id,
         n.minutes, n.flights, n.landings, n.touch_and_goes, n.starts, n.aborted_take_offs,
         coalesce(w.period, o.period) AS period,
         o.minutes + coalesce(w.minutes, 0) AS used_minutes, o.flights + coalesce(w.flights, 0) AS used_flights,
         o.landings + coalesce(w.landings, 0) AS used_landings,
         o.touch_and_goes + coalesce(w.touch_and_goes, 0) AS used_touch_and_goes,
         o.starts + coalesce(w.starts, 0) AS used_starts,
         o.aborted_take_offs + coalesce(w.aborted_take_offs, 0) AS used_aborted_take_offs
    FROM own_use o
    JOIN clock_now n ON n.operator_id = ${operator}::int AND n.carrier_id = o.carrier_id
    LEFT JOIN own_use w ON o.kind = 'position' AND w.carrier_id = o.airframe_id
    LEFT JOIN airframe a ON a.operator_id = ${operator}::int AND a.id = o.airframe_id
)`;
