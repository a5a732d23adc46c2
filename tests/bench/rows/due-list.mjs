import assert from 'node:assert/strict';
import { NOW } from '../fleet/scales.mjs';
import { PERSON } from '../ids.mjs';
import { ACTOR } from '../open-app.mjs';

// What somebody who knows the tables would write by hand: all due points against their clocks, sorted.
const byHand = (limit) => `
WITH used AS (
  SELECT carrier_id, sum(minutes) AS minutes, sum(flights) AS flights, sum(touch_and_goes) AS touch_and_goes
    FROM (SELECT carrier_id, minutes, flights, touch_and_goes FROM bucket WHERE operator_id = 1 AND month > month_of($1::timestamptz - interval '90 days')
          UNION ALL
          SELECT airframe_id, minutes, 1, touch_and_goes FROM flight WHERE operator_id = 1 AND voided_seq IS NULL
             AND landing_at > $1::timestamptz - interval '90 days'
             AND landing_at < (month_of($1::timestamptz - interval '90 days') + interval '1 month') AT TIME ZONE 'UTC') AS posted
   GROUP BY carrier_id
)
SELECT d.id, c.serial_number, c.description, c.part_number, e.serial_number AS engine, a.registration, p.number, l.cycles, l.document,
       l.revision, floor((d.due_at - reading.now) / r.denominator::numeric)::float8 AS remaining, days.left::float8
  FROM due_point d
  JOIN carrier k ON k.operator_id = 1 AND k.id = d.carrier_id
  JOIN carrier h ON h.operator_id = 1 AND h.id = k.airframe_id
  JOIN cycle_rule r ON r.operator_id = 1 AND r.id = d.cycle_rule_id
  CROSS JOIN LATERAL (SELECT r.per_flight * (k.flights + h.flights) + r.per_touch_and_go * (k.touch_and_goes + h.touch_and_goes) AS now) AS reading
  LEFT JOIN used u ON u.carrier_id = h.id
  CROSS JOIN LATERAL (SELECT floor((d.due_at - reading.now) * 90
    / nullif(r.per_flight * u.flights + r.per_touch_and_go * u.touch_and_goes, 0)) AS left) AS days
  JOIN component c ON c.operator_id = 1 AND c.id = d.component_id
  LEFT JOIN component e ON e.operator_id = 1 AND e.id = d.engine_id
  JOIN position p ON p.operator_id = 1 AND p.id = k.position_id
  JOIN airframe a ON a.operator_id = 1 AND a.id = k.airframe_id
  LEFT JOIN life_limit l ON l.operator_id = 1 AND l.id = d.life_limit_id
 WHERE d.operator_id = 1
 ORDER BY d.due_at >= reading.now, days.left, d.due_at, d.id ${limit}`;

const idsOf = (rows) => rows.map((row) => row.id);

async function listOf(app) {
  const service = await app.find('features/due-list/due-list.service.js', 'DueListService');
  (await app.find('platform/time/clock.js', 'Clock')).now = () => NOW; // the made-up fleets flew until then
  const actor = { ...ACTOR, personId: PERSON };
  return (query) => service.page(actor, query);
}

/** The first page of what is due by the product's service, against the same by hand; the same rows in the same order. */
export async function duePageWays(client, app) {
  await client.query("SELECT set_config('app.operator_id', '1', false)");
  const page = await listOf(app);
  const product = () => page({ limit: 50 });
  const twin = () => client.query({ name: 'due by hand', text: byHand('LIMIT 51'), values: [NOW] });
  assert.deepEqual(idsOf((await product()).rows), idsOf((await twin()).rows.slice(0, 50)));
  return { product, twin };
}

/** Everything that is due, streamed as a line of JSON for each, against one hand-written SELECT written as JSON. */
export async function dueFullWays(client, app) {
  await client.query("SELECT set_config('app.operator_id', '1', false)");
  await listOf(app); // sets the moment
  const service = await app.find('features/due-list/due-export.service.js', 'DueExportService');
  const product = async () => {
    const parts = [];
    for await (const part of await service.stream({ ...ACTOR, personId: PERSON }, {}, 'ndjson'))
      parts.push(part);
    return parts;
  };
  const twin = async () => {
    const { rows } = await client.query({ name: 'all due by hand', text: byHand(''), values: [NOW] });
    return rows.map((row) => JSON.stringify(row));
  };
  const lines = Buffer.concat(await product())
    .toString()
    .trimEnd()
    .split('\n');
  assert.deepEqual(
    idsOf(lines.map((line) => JSON.parse(line))),
    idsOf((await twin()).map((line) => JSON.parse(line))),
  );
  return { product, twin };
}
