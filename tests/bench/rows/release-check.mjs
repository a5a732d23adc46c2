import assert from 'node:assert/strict';
import { idOf } from '../ids.mjs';
import { ACTOR } from '../open-app.mjs';

// What somebody who knows the tables would write by hand: everything held against the package in one SELECT.
const byHand = `
WITH RECURSIVE work AS (
  SELECT w.*, p.content::json -> 'items' AS items, a.airframe_type_id FROM work_package w
    JOIN airframe a ON a.operator_id = 1 AND a.id = w.airframe_id
    LEFT JOIN procedure p ON p.operator_id = 1 AND p.id = w.procedure_id
   WHERE w.operator_id = 1 AND w.id = $1
), step AS (
  SELECT s.id, s.number, s.content_hash, s.definition::json AS d FROM work_step s WHERE s.operator_id = 1 AND s.package_id = $1
), last AS (
  SELECT DISTINCT ON (step_id, capture, point) * FROM step_entry
   WHERE operator_id = 1 AND package_id = $1 AND voided_seq IS NULL ORDER BY step_id, capture, point, recorded_seq DESC, id DESC
), signed AS (
  SELECT ss.*, g.person_id, g.signed_at FROM step_signature ss JOIN signature g ON g.operator_id = 1 AND g.id = ss.signature_id
    JOIN step s ON s.id = ss.step_id AND s.content_hash = ss.content_hash
   WHERE ss.operator_id = 1 AND ss.package_id = $1 AND ss.voided_seq IS NULL
), done AS (SELECT * FROM signed WHERE meaning = 'done'
), seen AS (SELECT i.* FROM signed i JOIN done d ON d.id = i.covers_id AND d.person_id <> i.person_id WHERE i.meaning = 'inspection'
), counts AS (
  SELECT c ->> 'what' AS what, c ->> 'direction' AS direction, sum((l.typed::json ->> 'number')::int) AS number
    FROM step s CROSS JOIN LATERAL json_array_elements(s.d -> 'captures') c
    LEFT JOIN last l ON l.step_id = s.id AND l.capture = c ->> 'key' AND l.verdict = 'accepted'
   WHERE c ->> 'kind' = 'count' GROUP BY 1, 2
), legs AS (
  SELECT f.id, f.log_page, f.from_station, lag(f.to_station) OVER w AS came_from, lag(f.log_page) OVER w AS page_before
    FROM (SELECT * FROM flight WHERE operator_id = 1 AND airframe_id = (SELECT airframe_id FROM work) AND voided_seq IS NULL
           ORDER BY landing_at DESC LIMIT 100) f WINDOW w AS (ORDER BY f.take_off_at)
), installed AS (
  SELECT p.id AS position_id, p.number, st.component_id AS engine_id FROM position p
    JOIN slot s ON s.operator_id = 1 AND s.position_id = p.id AND s.kind = 'engine'
    LEFT JOIN stay st ON st.operator_id = 1 AND st.slot_id = s.id AND st.to_at IS NULL AND st.voided_seq IS NULL
   WHERE p.operator_id = 1 AND p.airframe_id = (SELECT airframe_id FROM work)
), clock AS MATERIALIZED (
  SELECT n.* FROM clock_now n WHERE n.operator_id = 1 AND n.carrier_id IN (SELECT position_id FROM installed)
), tree AS (
  SELECT i.engine_id, s.id AS slot_id, s.life_limited, st.component_id FROM installed i
    JOIN slot s ON s.operator_id = 1 AND s.component_id = i.engine_id
    LEFT JOIN LATERAL (SELECT component_id FROM stay WHERE operator_id = 1 AND slot_id = s.id AND to_at IS NULL AND voided_seq IS NULL
        ORDER BY from_at DESC LIMIT 1) st ON true
  UNION ALL
  SELECT t.engine_id, s.id, s.life_limited, st.component_id FROM tree t
    CROSS JOIN LATERAL (SELECT * FROM slot WHERE operator_id = 1 AND component_id = t.component_id OFFSET 0) s
    LEFT JOIN LATERAL (SELECT component_id FROM stay WHERE operator_id = 1 AND slot_id = s.id AND to_at IS NULL AND voided_seq IS NULL
        ORDER BY from_at DESC LIMIT 1) st ON true
), life AS (
  SELECT t.slot_id, t.component_id, t.engine_id, l.authorisation, u.cycles, l.cycles - u.cycles AS remaining, u.gap
    FROM tree t
    LEFT JOIN LATERAL (SELECT part_number FROM component WHERE operator_id = 1 AND id = t.component_id LIMIT 1) c ON true
    LEFT JOIN LATERAL (SELECT engine_model_id FROM component WHERE operator_id = 1 AND id = t.engine_id LIMIT 1) e ON true
    LEFT JOIN LATERAL (
      SELECT (SELECT sum(o.cycles / o.cycle_denominator) FROM opening o
               WHERE o.operator_id = 1 AND o.component_id = t.component_id AND o.basis = 'new' AND o.voided_seq IS NULL)
             + (SELECT sum((r.per_flight * (CASE WHEN e.to_at IS NULL THEN n.flights - e.flights ELSE e.flights END)
                          + r.per_touch_and_go * (CASE WHEN e.to_at IS NULL THEN n.touch_and_goes - e.touch_and_goes ELSE e.touch_and_goes END))::numeric
                         / r.denominator)
                  FROM exposure e JOIN cycle_rule r ON r.operator_id = 1 AND r.id = e.cycle_rule_id
                  LEFT JOIN clock n ON n.carrier_id = e.carrier_id
                 WHERE e.operator_id = 1 AND e.component_id = t.component_id) AS cycles,
             EXISTS (SELECT FROM trace_gap g WHERE g.operator_id = 1 AND g.component_id = t.component_id AND g.voided_seq IS NULL) AS gap) u ON true
    LEFT JOIN LATERAL (SELECT * FROM life_limit k WHERE k.operator_id = 1 AND k.part_number = c.part_number
        AND k.engine_model_id = e.engine_model_id AND k.voided_seq IS NULL AND k.effective_on <= now()
        ORDER BY k.effective_on DESC LIMIT 1) l ON true
   WHERE t.life_limited
)
SELECT 'STEP_UNSIGNED' AS code, 'step' AS kind, s.id FROM step s WHERE NOT EXISTS (SELECT FROM done WHERE done.step_id = s.id)
UNION ALL SELECT 'INSPECTION_MISSING', 'step', s.id FROM step s JOIN done ON done.step_id = s.id
   WHERE s.d ->> 'inspection' = 'independent' AND NOT EXISTS (SELECT FROM seen WHERE seen.step_id = s.id)
UNION ALL SELECT CASE kind WHEN 'torque' THEN 'TORQUE_OUT_OF_RANGE' ELSE 'ENTRY_REJECTED' END, 'step', step_id FROM last WHERE verdict = 'rejected'
UNION ALL SELECT 'TOOL_NOT_USABLE', 'tool', tool_id FROM last l WHERE kind = 'torque' AND tool_id IS NOT NULL AND NOT EXISTS (
     SELECT FROM tool_calibration k WHERE k.operator_id = 1 AND k.tool_id = l.tool_id AND k.voided_seq IS NULL
        AND (l.entered_at AT TIME ZONE 'UTC')::date BETWEEN k.calibrated_on AND k.due_on)
UNION ALL SELECT 'ITEM_OPEN', 'step', o.id FROM work w CROSS JOIN LATERAL json_array_elements(w.items) i
   CROSS JOIN LATERAL (SELECT s.id FROM step s WHERE (s.d -> 'opens')::jsonb ? (i ->> 'key')
      AND EXISTS (SELECT FROM step_signature x WHERE x.operator_id = 1 AND x.step_id = s.id AND x.meaning = 'done' AND x.voided_seq IS NULL)
      ORDER BY s.number DESC LIMIT 1) o
   WHERE NOT EXISTS (SELECT FROM step s JOIN done ON done.step_id = s.id WHERE (s.d -> 'closes')::jsonb ? (i ->> 'key'))
UNION ALL SELECT 'COUNTS_DIFFER', 'package', $1 FROM counts o FULL JOIN counts i ON i.what = o.what AND i.direction = 'in'
   WHERE o.direction = 'out' AND o.number IS DISTINCT FROM i.number
UNION ALL SELECT 'ORDER_DIFFERS', 'package', $1 FROM ordered_change oc
   LEFT JOIN stay st ON st.operator_id = 1 AND st.slot_id = oc.slot_id AND st.to_at IS NULL AND st.voided_seq IS NULL
   WHERE oc.operator_id = 1 AND oc.package_id = $1 AND oc.voided_seq IS NULL AND oc.incoming_id IS DISTINCT FROM st.component_id
UNION ALL SELECT DISTINCT 'SIGNER_NOT_AUTHORISED', 'person', x.person_id FROM (SELECT * FROM done UNION ALL SELECT * FROM seen) x, work w
   WHERE NOT EXISTS (SELECT FROM authorisation g WHERE g.operator_id = 1 AND g.person_id = x.person_id AND g.voided_seq IS NULL
      AND g.scope = CASE x.meaning WHEN 'done' THEN 'work' ELSE 'inspection' END
      AND (g.airframe_type_id IS NULL OR g.airframe_type_id = w.airframe_type_id)
      AND (x.signed_at AT TIME ZONE 'UTC')::date BETWEEN g.from_on AND coalesce(g.to_on, 'infinity'))
UNION ALL SELECT CASE WHEN n.id IS NULL THEN 'LOG_GAP' ELSE 'LOG_GAP_EXPLAINED' END, 'flight', l.id FROM legs l
   LEFT JOIN gap_note n ON n.operator_id = 1 AND n.flight_id = l.id AND n.kind = 'stations' AND n.voided_seq IS NULL
    AND (n.before, n.after) = (l.came_from, l.from_station)
   WHERE l.came_from <> l.from_station
UNION ALL SELECT CASE WHEN n.id IS NULL THEN 'LOG_GAP' ELSE 'LOG_GAP_EXPLAINED' END, 'flight', l.id FROM legs l
   LEFT JOIN gap_note n ON n.operator_id = 1 AND n.flight_id = l.id AND n.kind = 'pages' AND n.voided_seq IS NULL
    AND (n.before, n.after) = (l.page_before, l.log_page)
   WHERE l.log_page::bigint - l.page_before::bigint NOT IN (0, 1)
UNION ALL SELECT 'ENGINE_MISSING', 'position', position_id FROM installed WHERE engine_id IS NULL
UNION ALL SELECT CASE WHEN component_id IS NULL THEN 'LIMITED_PART_MISSING' WHEN authorisation IS NULL THEN 'NO_LIMIT_RECORDED'
      WHEN authorisation = 'not-authorised' THEN 'NOT_AUTHORISED' WHEN gap OR cycles IS NULL THEN 'LIMITED_PART_UNTRACED'
      WHEN remaining < 0 THEN 'OVER_LIMIT' ELSE 'AT_LIMIT' END,
      CASE WHEN component_id IS NULL THEN 'slot' ELSE 'component' END, coalesce(component_id, slot_id) FROM life
   WHERE component_id IS NULL OR authorisation IS NULL OR authorisation = 'not-authorised' OR gap OR cycles IS NULL OR remaining <= 0`;

const packageId = idOf('package');

const listed = (rows) => rows.map((row) => row.join(' ')).sort();

const NOBODY = { ...ACTOR, personId: '00000000-0000-0000-0000-000000000000', fullName: '', roles: [] };

/** The release check by the product's service, made on the first airframe's package. */
export async function makeCheck(app) {
  const database = await app.find('platform/database/database.js', 'Database');
  const check = await app.find('features/release/release-check.js', 'ReleaseCheck');
  return () => database.inOperator(NOBODY, (tx) => check.make(tx, NOBODY, packageId));
}

/** The release check by the product's service, against the same by hand; both must find the same. */
export async function releaseCheckWays(client, app) {
  await client.query("SELECT set_config('app.operator_id', '1', false)");
  const product = await makeCheck(app);
  const twin = () => client.query({ name: 'release check by hand', text: byHand, values: [packageId] });
  const [found, byHandFound] = [await product(), (await twin()).rows];
  const answer = listed(found.objections.map(({ code, record }) => [code, record.kind, record.id]));
  assert.deepEqual(answer, listed(byHandFound.map(({ code, kind, id }) => [code, kind, id])));
  assert.ok(
    new Set(found.objections.map(({ code }) => code)).size >= 7,
    'the package has something of most kinds',
  );
  return { product, twin };
}
