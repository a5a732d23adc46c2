/** Scale S: ten airframes of four engines, 10,000 flights each, 230 limited parts in each engine. */
export const scale = { airframes: 10, engines: 4, flights: 10_000, parts: 230 };

const statements = [
  `INSERT INTO operator (id, code, name) VALUES (1, 'BENCH', 'Bench operator')`,
  `INSERT INTO person (operator_id, id, sign_in_name, full_name, roles, password_hash)
   VALUES (1, md5('person')::uuid, 'bench', 'Bench Person', ARRAY['records'], 'no sign-in')`,
  `INSERT INTO airframe_type (operator_id, id, maker, designation) VALUES (1, md5('type')::uuid, 'Invented', 'Four')`,
  `INSERT INTO engine_model (operator_id, id, kind, maker, designation, life_method, life_source)
   VALUES (1, md5('model')::uuid, 'engine', 'Invented', 'E1', 'pro-rata', 'bench')`,
  `INSERT INTO rating (operator_id, id, engine_model_id, code) VALUES (1, md5('rating')::uuid, md5('model')::uuid, 'A')`,
  `INSERT INTO cycle_rule (operator_id, id, engine_model_id, per_flight, per_landing, per_touch_and_go, per_start,
     per_aborted_take_off, denominator, source, revision)
   VALUES (1, md5('rule')::uuid, md5('model')::uuid, 2, 0, 1, 0, 0, 2, 'bench', '1')`,
  `INSERT INTO airframe (operator_id, id, registration, serial_number, airframe_type_id, rule_set, owner)
   SELECT 1, md5('a' || a)::uuid, 'ZB-' || a, 'S' || a, md5('type')::uuid, 'US-121', 'bench' FROM generate_series(1, 10) a`,
  `INSERT INTO position (operator_id, id, airframe_id, number, kind, mount, label)
   SELECT 1, md5('p' || a || '.' || p)::uuid, md5('a' || a)::uuid, p, 'engine', 'left-wing', p::text
     FROM generate_series(1, 10) a, generate_series(1, 4) p`,
  `INSERT INTO carrier (operator_id, id, kind, airframe_id)
   SELECT 1, md5('a' || a)::uuid, 'airframe', md5('a' || a)::uuid FROM generate_series(1, 10) a`,
  `INSERT INTO carrier (operator_id, id, kind, airframe_id, position_id)
   SELECT 1, id, 'position', airframe_id, id FROM position`,
  `INSERT INTO slot (operator_id, id, position_id, kind, name)
   SELECT 1, md5('s' || id)::uuid, id, 'engine', 'Engine' FROM position`,
  `INSERT INTO component (operator_id, id, kind, maker, part_number, serial_number, description, engine_model_id, owner)
   SELECT 1, md5('e' || id)::uuid, 'engine', 'Invented', 'E1', 'E' || row_number() OVER (), 'Engine', md5('model')::uuid, 'bench'
     FROM position`,
  `INSERT INTO stay (operator_id, id, component_id, slot_id, from_at, from_kind, recorded_seq)
   SELECT 1, md5('y' || id)::uuid, md5('e' || id)::uuid, md5('s' || id)::uuid, '2016-01-01Z', 'instant', 0 FROM position`,
  `INSERT INTO rating_change (operator_id, id, component_id, rating_id, at, source, recorded_seq)
   SELECT 1, md5('r' || id)::uuid, md5('e' || id)::uuid, md5('rating')::uuid, '2016-01-01Z', 'bench', 0 FROM position`,
  `INSERT INTO slot (operator_id, id, component_id, kind, name, life_limited)
   SELECT 1, md5('ls' || p.id || n)::uuid, md5('e' || p.id)::uuid, 'part', 'Disk ' || n, true
     FROM position p, generate_series(1, 230) n`,
  `INSERT INTO component (operator_id, id, kind, maker, part_number, serial_number, description, life_limited, owner)
   SELECT 1, md5('l' || p.id || n)::uuid, 'part', 'Invented', 'PN' || n, p.id || '/' || n, 'Disk ' || n, true, 'bench'
     FROM position p, generate_series(1, 230) n`,
  `INSERT INTO stay (operator_id, id, component_id, slot_id, from_at, from_kind, recorded_seq)
   SELECT 1, md5('ly' || p.id || n)::uuid, md5('l' || p.id || n)::uuid, md5('ls' || p.id || n)::uuid, '2016-01-01Z', 'instant', 0
     FROM position p, generate_series(1, 230) n`,
  `INSERT INTO life_limit (operator_id, id, part_number, engine_model_id, authorisation, cycles, document, revision, effective_on, recorded_seq)
   SELECT 1, md5('li' || n)::uuid, 'PN' || n, md5('model')::uuid, 'limited', 20000, 'bench', '1', '2015-01-01', 0 FROM generate_series(1, 230) n`,
  'ANALYZE',
  `INSERT INTO flight (operator_id, id, airframe_id, log_page, from_station, to_station, take_off_at, landing_at, minutes,
     touch_and_goes, starts, aborted_take_offs, typed, source, recorded_seq)
   SELECT 1, md5('f' || a || '.' || f)::uuid, md5('a' || a)::uuid, f::text, 'QXA', 'QXB',
          timestamptz '2016-01-02Z' + f * interval '6 hours', timestamptz '2016-01-02Z' + f * interval '6 hours' + interval '2 hours',
          120, 0, 1, 0, '{}', 'import', 0
     FROM generate_series(1, 10) a, generate_series(1, 10000) f`,
  `INSERT INTO bucket (operator_id, carrier_id, month, minutes, flights, landings, touch_and_goes, starts, aborted_take_offs)
   SELECT 1, airframe_id, month_of(landing_at), sum(minutes), count(*), count(*), 0, count(*), 0 FROM flight GROUP BY 2, 3`,
  `UPDATE carrier c SET (minutes, flights, landings, starts, last_landing_at) =
     (SELECT sum(minutes), count(*), count(*), count(*), max(landing_at) FROM flight WHERE airframe_id = c.id) WHERE kind = 'airframe'`,
  `INSERT INTO exposure (operator_id, id, component_id, carrier_id, rating_id, cycle_rule_id, from_at)
   SELECT 1, md5('x' || c.id)::uuid, c.id, p.id, md5('rating')::uuid, md5('rule')::uuid, '2016-01-01Z'
     FROM position p JOIN component c ON c.id = md5('e' || p.id)::uuid
       OR (c.kind = 'part' AND left(c.serial_number, 36) = p.id::text)`,
  `INSERT INTO due_point (operator_id, id, component_id, engine_id, carrier_id, kind, verdict, dimension, cycle_rule_id, life_limit_id, due_at)
   SELECT 1, md5('d' || p.id || n)::uuid, md5('l' || p.id || n)::uuid, md5('e' || p.id)::uuid, p.id, 'life-limit', 'limited', 'cycles',
          md5('rule')::uuid, md5('li' || n)::uuid, 20000 + 100 + (n * 7919) % 20000
     FROM position p, generate_series(1, 230) n`,
  'ANALYZE',
];

/** Fills a migrated, empty database at scale S, as its superuser. */
export async function fillScaleS(client) {
  for (const statement of statements) await client.query(statement);
}
