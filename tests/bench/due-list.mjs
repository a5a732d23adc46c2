import { DUE_PAGE_SQL } from '../../apps/api/dist/features/due-list/due-page.sql.js';

// What somebody who knows the tables would write by hand: all due points against their clocks, sorted, the first page.
const byHand = `
WITH used AS (
  SELECT carrier_id, sum(minutes) AS minutes, sum(flights) AS flights, sum(touch_and_goes) AS touch_and_goes
    FROM bucket WHERE operator_id = 1 AND month > ($1::timestamptz - interval '90 days')::date GROUP BY carrier_id
)
SELECT d.id, c.serial_number, c.description, e.serial_number AS engine, a.registration, p.number, l.cycles, l.document, l.revision,
       d.due_at - reading.now AS left_units, r.denominator
  FROM due_point d
  JOIN carrier k ON k.operator_id = 1 AND k.id = d.carrier_id
  JOIN carrier h ON h.operator_id = 1 AND h.id = k.airframe_id
  JOIN cycle_rule r ON r.operator_id = 1 AND r.id = d.cycle_rule_id
  CROSS JOIN LATERAL (SELECT r.per_flight * (k.flights + h.flights) + r.per_touch_and_go * (k.touch_and_goes + h.touch_and_goes) AS now) AS reading
  LEFT JOIN used u ON u.carrier_id = h.id
  JOIN component c ON c.operator_id = 1 AND c.id = d.component_id
  LEFT JOIN component e ON e.operator_id = 1 AND e.id = d.engine_id
  JOIN position p ON p.operator_id = 1 AND p.id = k.position_id
  JOIN airframe a ON a.operator_id = 1 AND a.id = k.airframe_id
  LEFT JOIN life_limit l ON l.operator_id = 1 AND l.id = d.life_limit_id
 WHERE d.operator_id = 1
 ORDER BY (d.due_at - reading.now) * 90 / nullif(r.per_flight * u.flights + r.per_touch_and_go * u.touch_and_goes, 0), d.id
 LIMIT 51`;

/** The first page of what is due by the product's one statement, against the same by hand, both as `app`. */
export async function dueListWays(client) {
  await client.query("SELECT set_config('app.operator_id', '1', false)");
  // The filling flies to the autumn of 2022: then it is 'now'.
  const now = new Date(Date.UTC(2022, 10, 8));
  return {
    product: () =>
      client.query({
        name: 'due',
        text: DUE_PAGE_SQL,
        values: [1, now, 51, null, null, null, null, null, 'average', 90],
      }),
    twin: () => client.query({ name: 'due by hand', text: byHand, values: [now] }),
  };
}
