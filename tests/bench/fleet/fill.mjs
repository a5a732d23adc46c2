import { TOKEN } from '../ids.mjs';
import { unindexed } from './unindexed.mjs';

const END = "timestamptz '2022-11-07 22:00Z'";
const BEGIN = "timestamptz '2002-01-01Z'";

/** Operator, types, rules and limits: the same at every scale. */
const ground = [
  `INSERT INTO operator (id, code, name) VALUES (1, 'BENCH', 'Bench operator')`,
  `INSERT INTO person (operator_id, id, sign_in_name, full_name, roles, password_hash)
   VALUES (1, md5('person')::uuid, 'bench', 'Bench Person', ARRAY['records'], 'no sign-in')`,
  `INSERT INTO session (operator_id, id, token_hash, csrf_token, person_id, created_at, last_seen_at, expires_at)
   VALUES (1, md5('session')::uuid, sha256('${TOKEN}'), 'bench-token', md5('person')::uuid, now(), now(), now() + interval '1 day')`,
  `INSERT INTO location (operator_id, id, name, kind) SELECT 1, md5('store' || n)::uuid, 'Store ' || n, 'store' FROM generate_series(1, 5) n`,
  `INSERT INTO airframe_type (operator_id, id, maker, designation) VALUES (1, md5('type')::uuid, 'Invented', 'Four')`,
  `INSERT INTO engine_model (operator_id, id, kind, maker, designation, life_method, life_source)
   VALUES (1, md5('model')::uuid, 'engine', 'Invented', 'E1', 'pro-rata', 'bench')`,
  `INSERT INTO rating (operator_id, id, engine_model_id, code) VALUES (1, md5('rating')::uuid, md5('model')::uuid, 'A')`,
  `INSERT INTO cycle_rule (operator_id, id, engine_model_id, per_flight, per_landing, per_touch_and_go, per_start,
     per_aborted_take_off, denominator, source, revision)
   VALUES (1, md5('rule')::uuid, md5('model')::uuid, 2, 0, 1, 0, 0, 2, 'bench', '1')`,
];

const fleet = ({ airframes, engines }) => [
  `INSERT INTO airframe (operator_id, id, registration, serial_number, airframe_type_id, rule_set, owner)
   SELECT 1, md5('a' || a)::uuid, 'ZB-' || a, 'S' || a, md5('type')::uuid, 'us-121', 'bench' FROM generate_series(1, ${airframes}) a`,
  `CREATE TEMP TABLE made AS SELECT a, md5('a' || a)::uuid AS airframe,
     journal_append(1, next_journal_number(), md5('a' || a)::uuid, 'flights-imported', md5('person')::uuid, NULL, '{}', '{}') AS number
     FROM generate_series(1, ${airframes}) a`,
  `CREATE TEMP TABLE held AS SELECT m.a, m.airframe, p, md5('p' || a || '.' || p)::uuid AS position, m.number
     FROM made m, LATERAL generate_series(1, ${engines}) p`,
  `INSERT INTO position (operator_id, id, airframe_id, number, kind, mount, label)
   SELECT 1, position, airframe, p, 'engine', 'left-wing', p::text FROM held`,
  `INSERT INTO carrier (operator_id, id, kind, airframe_id, last_boundary_at)
   SELECT 1, airframe, 'airframe', airframe, ${BEGIN} FROM made`,
  `INSERT INTO carrier (operator_id, id, kind, airframe_id, position_id) SELECT 1, position, 'position', airframe, position FROM held`,
  `INSERT INTO slot (operator_id, id, position_id, kind, name) SELECT 1, md5('s' || position)::uuid, position, 'engine', 'Engine' FROM held`,
  `INSERT INTO component (operator_id, id, kind, maker, part_number, serial_number, description, engine_model_id, owner)
   SELECT 1, md5('e' || position)::uuid, 'engine', 'Invented', 'E1', 'E' || a || '.' || p, 'Engine', md5('model')::uuid, 'bench' FROM held`,
  `INSERT INTO stay (operator_id, id, component_id, slot_id, from_at, from_kind, recorded_seq)
   SELECT 1, md5('y' || position)::uuid, md5('e' || position)::uuid, md5('s' || position)::uuid, ${BEGIN}, 'instant', number FROM held`,
  `INSERT INTO rating_change (operator_id, id, component_id, rating_id, at, source, recorded_seq)
   SELECT 1, md5('r' || position)::uuid, md5('e' || position)::uuid, md5('rating')::uuid, ${BEGIN}, 'bench', number FROM held`,
  `INSERT INTO opening (operator_id, id, component_id, basis, at, rating_id, minutes, cycles, cycle_denominator, source, recorded_seq)
   SELECT 1, md5('oe' || position)::uuid, md5('e' || position)::uuid, 'new', ${BEGIN} - interval '1 day', md5('rating')::uuid,
          600, 100, 1, 'bench', number FROM held`,
  `INSERT INTO exposure (operator_id, id, component_id, carrier_id, rating_id, cycle_rule_id, from_at)
   SELECT 1, md5('xe' || position)::uuid, md5('e' || position)::uuid, position, md5('rating')::uuid, md5('rule')::uuid, ${BEGIN} FROM held`,
];

/** Cycles of a part when it came. */
const cameWith = (most) => `((n * 7919 + h.a * 104729 + h.p * 1299709) % ${most})`;

const parts = ({ parts: count, came }) => [
  `CREATE TEMP TABLE part AS SELECT h.*, n, md5('l' || position || '.' || n)::uuid AS id, md5('ls' || position || '.' || n)::uuid AS slot,
     md5('e' || position)::uuid AS engine, ${cameWith(came)} AS came_with FROM held h, generate_series(1, ${count}) n`,
  `INSERT INTO life_limit (operator_id, id, part_number, engine_model_id, authorisation, cycles, document, revision, effective_on, recorded_seq)
   SELECT 1, md5('li' || n)::uuid, 'PN' || n, md5('model')::uuid, 'limited', 60000, 'bench', '1', '2001-01-01', 0 FROM generate_series(1, ${count}) n`,
  `INSERT INTO slot (operator_id, id, component_id, kind, name, life_limited) SELECT 1, slot, engine, 'part', 'Disk ' || n, true FROM part`,
  `INSERT INTO component (operator_id, id, kind, maker, part_number, serial_number, description, life_limited, owner)
   SELECT 1, id, 'part', 'Invented', 'PN' || n, 'D' || a || '.' || p || '.' || n, 'Disk ' || n, true, 'bench' FROM part`,
  `INSERT INTO stay (operator_id, id, component_id, slot_id, from_at, from_kind, recorded_seq)
   SELECT 1, md5('y' || id)::uuid, id, slot, ${BEGIN}, 'instant', number FROM part`,
  `INSERT INTO opening (operator_id, id, component_id, basis, at, rating_id, minutes, cycles, cycle_denominator, source, recorded_seq)
   SELECT 1, md5('o' || id)::uuid, id, 'new', ${BEGIN} - interval '1 day', md5('rating')::uuid, 600, came_with, 1, 'bench', number FROM part`,
  `INSERT INTO exposure (operator_id, id, component_id, carrier_id, rating_id, cycle_rule_id, from_at)
   SELECT 1, md5('x' || id)::uuid, id, position, md5('rating')::uuid, md5('rule')::uuid, ${BEGIN} FROM part`,
  // Its clock, which began at none when it was installed, is then at what remained, in halves of a cycle.
  `INSERT INTO due_point (operator_id, id, component_id, engine_id, carrier_id, kind, verdict, dimension, cycle_rule_id, life_limit_id, due_at)
   SELECT 1, md5('d' || id)::uuid, id, engine, position, 'life-limit', 'limited', 'cycles', md5('rule')::uuid, md5('li' || n)::uuid,
          2 * (60000 - came_with) FROM part`,
];

const flights = ({ flights: count, every }) => [
  // One flight in the last hundred of each airframe begins where the one before did not end: a gap of the log.
  `INSERT INTO flight (operator_id, id, airframe_id, log_page, from_station, to_station, take_off_at, landing_at, minutes,
     touch_and_goes, starts, aborted_take_offs, typed, source, recorded_seq)
   SELECT 1, md5('f' || a || '.' || f)::uuid, airframe, f::text, CASE WHEN f = count - 10 THEN 'QXC' WHEN f % 2 = 0 THEN 'QXA' ELSE 'QXB' END,
          CASE f % 2 WHEN 0 THEN 'QXB' ELSE 'QXA' END, at, at + interval '2 hours', 120, 0, 1, 0, '{}', 'import', number
     FROM (SELECT *, ${count} AS count FROM made) m,
          LATERAL generate_series(1, count) f, LATERAL (SELECT ${END} - (count - f + 1) * interval '${every} minutes' AS at) of`,
];

const clocks = [
  `INSERT INTO bucket (operator_id, carrier_id, month, minutes, flights, landings, touch_and_goes, starts, aborted_take_offs)
   SELECT 1, airframe_id, month_of(landing_at), sum(minutes), count(*), count(*), 0, count(*), 0 FROM flight GROUP BY 2, 3`,
  `UPDATE carrier c SET minutes = t.minutes, flights = t.flights, landings = t.flights, starts = t.flights, last_landing_at = t.last
     FROM (SELECT airframe_id, sum(minutes) AS minutes, count(*) AS flights, max(landing_at) AS last FROM flight GROUP BY 1) t
    WHERE c.id = t.airframe_id AND c.kind = 'airframe'`,
  'DROP TABLE made, held, part',
];

const OF_PARTS = ['slot', 'component', 'stay', 'opening', 'exposure', 'due_point'];

/** Fills a migrated, empty database at a scale, as its superuser, and tells what took how long. */
export async function fill(client, scale, told = () => {}) {
  const all = async (statements) => {
    for (const statement of statements) await client.query(statement);
  };
  const timed = async (what, work) => {
    const begun = Date.now();
    await work();
    told(`${what} ${((Date.now() - begun) / 1000).toFixed(1)} s`);
  };
  await client.query("SET maintenance_work_mem = '512MB'; SET work_mem = '256MB'; SET jit = off");
  await all(ground);
  await timed('airframes and engines', () => all(fleet(scale)));
  await timed('parts and due points', () => unindexed(client, OF_PARTS, () => all(parts(scale))));
  await timed('flights', () => unindexed(client, ['flight'], () => all(flights(scale))));
  await timed('months and heads', () => all(clocks));
  await timed('statistics', () => client.query('VACUUM ANALYZE'));
}
