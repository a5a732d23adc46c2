import assert from 'node:assert/strict';
import crypto from 'node:crypto';
import { airframe, PERSON } from '../ids.mjs';
import { ACTOR } from '../open-app.mjs';

const at = (instant) => new Date(instant).toISOString().replace(':00.000Z', 'Z');

/** What is kept of an airframe and of all that ran on it, as text that can be compared; ids of rows made anew are left out. */
const KEPT = `
  SELECT 'month ' || row_to_json(b)::text AS kept FROM bucket b WHERE operator_id = 1 AND carrier_id = $1
  UNION ALL SELECT 'head ' || row(minutes, flights, landings, touch_and_goes, starts, aborted_take_offs, last_landing_at)::text
    FROM carrier WHERE operator_id = 1 AND id = $1
  UNION ALL SELECT 'exposure ' || row_to_json(e)::text FROM exposure e JOIN carrier c ON c.operator_id = 1 AND c.id = e.carrier_id
   WHERE e.operator_id = 1 AND c.airframe_id = $1
  UNION ALL SELECT 'due ' || (to_jsonb(d) - 'id')::text FROM due_point d JOIN carrier c ON c.operator_id = 1 AND c.id = d.carrier_id
   WHERE d.operator_id = 1 AND c.airframe_id = $1
  ORDER BY 1`;

// Everything that is kept of the airframe made again from its flights by somebody who knows that here all exposures are
// open, no position was ever off, and all limits are in cycles of one rule.
const AGAIN = [
  'DELETE FROM bucket WHERE operator_id = 1 AND carrier_id = $1',
  `INSERT INTO bucket (operator_id, carrier_id, month, minutes, flights, landings, touch_and_goes, starts, aborted_take_offs)
   SELECT 1, $1, month_of(landing_at), sum(minutes), count(*), sum(1 + touch_and_goes), sum(touch_and_goes), sum(starts), sum(aborted_take_offs)
     FROM flight WHERE operator_id = 1 AND airframe_id = $1 AND voided_seq IS NULL GROUP BY 3`,
  `UPDATE carrier SET (minutes, flights, landings, touch_and_goes, starts, aborted_take_offs, last_landing_at) =
     (SELECT sum(minutes), count(*), sum(1 + touch_and_goes), sum(touch_and_goes), sum(starts), sum(aborted_take_offs), max(landing_at)
        FROM flight WHERE operator_id = 1 AND airframe_id = $1 AND voided_seq IS NULL)
    WHERE operator_id = 1 AND id = $1`,
  `WITH base AS MATERIALIZED (
     SELECT b.from_at, n.* FROM (SELECT DISTINCT e.from_at FROM exposure e JOIN carrier c ON c.operator_id = 1 AND c.id = e.carrier_id
         WHERE e.operator_id = 1 AND c.airframe_id = $1) b
      CROSS JOIN LATERAL (SELECT coalesce(sum(minutes), 0) AS minutes, count(*) AS flights, coalesce(sum(1 + touch_and_goes), 0) AS landings,
          coalesce(sum(touch_and_goes), 0) AS touch_and_goes, coalesce(sum(starts), 0) AS starts, coalesce(sum(aborted_take_offs), 0) AS aborted
         FROM flight WHERE operator_id = 1 AND airframe_id = $1 AND voided_seq IS NULL AND landing_at <= b.from_at) n)
   UPDATE exposure e SET minutes = b.minutes, flights = b.flights, landings = b.landings, touch_and_goes = b.touch_and_goes,
          starts = b.starts, aborted_take_offs = b.aborted
     FROM base b, carrier c WHERE e.operator_id = 1 AND c.operator_id = 1 AND c.id = e.carrier_id AND c.airframe_id = $1 AND b.from_at = e.from_at`,
  `CREATE TEMP TABLE again ON COMMIT DROP AS
   SELECT e.component_id, st.in_engine, e.carrier_id, e.cycle_rule_id, l.id AS life_limit_id,
          reading.now + floor((l.cycles - o.cycles / o.cycle_denominator - (reading.now - base.then)::numeric / r.denominator) * r.denominator) AS due_at
     FROM exposure e JOIN carrier c ON c.operator_id = 1 AND c.id = e.carrier_id AND c.airframe_id = $1
     JOIN carrier h ON h.operator_id = 1 AND h.id = $1
     JOIN cycle_rule r ON r.operator_id = 1 AND r.id = e.cycle_rule_id
     JOIN component k ON k.operator_id = 1 AND k.id = e.component_id AND k.life_limited
     JOIN opening o ON o.operator_id = 1 AND o.component_id = k.id AND o.voided_seq IS NULL
     JOIN life_limit l ON l.operator_id = 1 AND l.part_number = k.part_number AND l.voided_seq IS NULL
     JOIN LATERAL (SELECT s.component_id AS in_engine FROM stay y JOIN slot s ON s.operator_id = 1 AND s.id = y.slot_id
        WHERE y.operator_id = 1 AND y.component_id = k.id AND y.to_at IS NULL AND y.voided_seq IS NULL) st ON true
     CROSS JOIN LATERAL (SELECT r.per_flight * (h.flights + c.flights) + r.per_touch_and_go * (h.touch_and_goes + c.touch_and_goes) AS now) reading
     CROSS JOIN LATERAL (SELECT r.per_flight * e.flights + r.per_touch_and_go * e.touch_and_goes AS then) base
    WHERE e.operator_id = 1`,
  `DELETE FROM due_point d USING again a WHERE d.operator_id = 1 AND d.component_id = a.component_id`,
  `INSERT INTO due_point (operator_id, id, component_id, engine_id, carrier_id, kind, verdict, dimension, cycle_rule_id, life_limit_id, due_at)
   SELECT 1, gen_random_uuid(), component_id, in_engine, carrier_id, 'life-limit', 'limited', 'cycles', cycle_rule_id, life_limit_id, due_at FROM again`,
];

async function made(client, airframeId) {
  // The statements have one parameter; CREATE TABLE AS takes none.
  for (const sql of AGAIN) await client.query(sql.replaceAll('$1', `'${airframeId}'`));
}

const keptOf = async (client, airframeId) =>
  (await client.query(KEPT, [airframeId])).rows.map((row) => row.kept);

/** Corrects the oldest flight of an airframe by the product's service, each time another minute longer or shorter. */
export async function correctOldest(client, app, number) {
  const service = await app.find(
    'features/flights/flight-corrections.service.js',
    'FlightCorrectionsService',
  );
  const airframeId = airframe(number);
  let turn = 0;
  return async () => {
    const { rows } = await client.query(
      `SELECT id, log_page, take_off_at FROM flight WHERE operator_id = 1 AND airframe_id = $1 AND voided_seq IS NULL ORDER BY landing_at LIMIT 1`,
      [airframeId],
    );
    const [{ id, log_page: logPage, take_off_at: takeOff }] = rows;
    turn += 1;
    const landing = takeOff.getTime() + (110 + (turn % 2)) * 60_000;
    const act = { key: crypto.randomUUID(), fingerprint: crypto.randomBytes(32), answered: () => {} };
    const flight = {
      logPage,
      fromStation: 'QXA',
      toStation: 'QXB',
      takeOffAt: at(takeOff.getTime()),
      landingAt: at(landing),
      touchAndGoes: 0,
    };
    await service.correct({ ...ACTOR, personId: PERSON }, act, id, { reason: 'bench', flight });
  };
}

/** A correction of the oldest flight, against everything of that airframe made again from its flights in SQL. */
export async function correctionWays(client, admin, app, number) {
  await client.query("SELECT set_config('app.operator_id', '1', false)");
  const product = await correctOldest(client, app, number);
  const airframeId = airframe(number);
  const twin = async () => {
    await admin.query('BEGIN');
    await made(admin, airframeId);
    await admin.query('COMMIT');
  };
  await product();
  const kept = await keptOf(client, airframeId);
  await twin();
  assert.deepEqual(await keptOf(client, airframeId), kept);
  return { product, twin };
}
