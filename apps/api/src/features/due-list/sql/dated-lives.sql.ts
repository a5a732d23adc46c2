/**
 * The part of the page that finds calendar lives: `dated`, good through a day, which is counted where the airframe's is.
 * Past its day a life is over; else it stands among all others by the days left. Uses `hand` and the page's parameters;
 * `columns` are what the page takes from a due point `p`.
 */
export const datedLives = (columns: string): string => `dated AS (
  SELECT ${columns}, h.airframe_id, h.position_id, d.days::bigint AS left_units, 1 AS denominator, 0::bigint AS used,
         CASE WHEN d.days < 0 THEN 0 ELSE 2 END AS rank, d.days::bigint AS urgency
    FROM due_point p
    LEFT JOIN hand h ON h.carrier_id = p.carrier_id
    LEFT JOIN airframe a ON a.operator_id = $1::int AND a.id = h.airframe_id
    CROSS JOIN LATERAL (
      SELECT p.due_on - (($2::timestamptz) AT TIME ZONE coalesce(a.day_zone, 'UTC'))::date AS days) AS d
   WHERE p.operator_id = $1::int AND p.due_on IS NOT NULL AND p.requirement_id IS NULL AND NOT p.is_one_of
     AND ($4::uuid IS NULL OR h.airframe_id = $4::uuid)
     -- A day of any zone is within one of that in UTC.
     AND ($5::int IS NULL OR $5::int = 1 OR p.due_on >= ($2::timestamptz AT TIME ZONE 'UTC')::date + $6::bigint::int - 1)
)`;
