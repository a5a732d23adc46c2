import type pg from 'pg';
import { type TestDatabase, withClient } from '../database.js';

/** What happened. A row may be voided, once; a stay may be ended, once. */
export const FACTS = [
  'counter_reading',
  'flight',
  'flight_exception',
  'gap_acceptance',
  'life_limit',
  'opening',
  'rating_change',
  'reset',
  'stay',
  'trace_gap',
];
/** What was done and signed. An act is given its answer, once. */
export const RECORDS = [
  'about',
  'act',
  'document',
  'journal_entry',
  'package_change',
  'release',
  'signature',
];

/** The operator whose rows they are. */
export const OPERATOR = 1;

const id = (n: number) => `'00000000-0000-7000-8000-${String(n).padStart(12, '0')}'`;
const [PERSON, TYPE, AIRFRAME, POSITION, SLOT, MODEL, RATING, COMPONENT, LOCATION, PACKAGE] = Array.from(
  { length: 10 },
  (_, index) => id(index + 1),
);
const AT = `'2025-01-01 00:00Z'`;

/** Table, columns after the operator, values. In the order their keys need. */
const ROWS: readonly (readonly [string, string, string])[] = [
  [
    'person',
    'id, sign_in_name, full_name, roles, password_hash',
    `${PERSON}, 'one', 'One', '{records}', 'none'`,
  ],
  ['airframe_type', 'id, maker, designation', `${TYPE}, 'M', 'T'`],
  [
    'airframe',
    'id, registration, serial_number, airframe_type_id, rule_set, owner',
    `${AIRFRAME}, 'ZZ-1', '1', ${TYPE}, 'eu-145', 'O'`,
  ],
  [
    'position',
    'id, airframe_id, number, kind, mount, label',
    `${POSITION}, ${AIRFRAME}, 1, 'engine', 'left-wing', 'P'`,
  ],
  ['carrier', 'id, kind, airframe_id', `${AIRFRAME}, 'airframe', ${AIRFRAME}`],
  ['carrier', 'id, kind, airframe_id, position_id', `${POSITION}, 'position', ${AIRFRAME}, ${POSITION}`],
  [
    'engine_model',
    'id, kind, maker, designation, life_method, life_source',
    `${MODEL}, 'engine', 'M', 'X', 'pro-rata', 'S'`,
  ],
  ['rating', 'id, engine_model_id, code', `${RATING}, ${MODEL}, 'A'`],
  [
    'component',
    'id, kind, maker, part_number, serial_number, description, engine_model_id, owner',
    `${COMPONENT}, 'engine', 'M', 'P', 'S', 'D', ${MODEL}, 'O'`,
  ],
  ['slot', 'id, position_id, kind, name', `${SLOT}, ${POSITION}, 'engine', 'Engine'`],
  ['location', 'id, name, kind', `${LOCATION}, 'Store', 'store'`],
  [
    'stay',
    'id, component_id, slot_id, from_at, from_kind, recorded_seq',
    `${id(20)}, ${COMPONENT}, ${SLOT}, ${AT}, 'instant', 1`,
  ],
  [
    'rating_change',
    'id, component_id, rating_id, at, source, recorded_seq',
    `${id(21)}, ${COMPONENT}, ${RATING}, ${AT}, 'S', 1`,
  ],
  [
    'opening',
    'id, component_id, at, basis, minutes, cycles, source, recorded_seq',
    `${id(22)}, ${COMPONENT}, ${AT}, 'new', 1, 1, 'S', 1`,
  ],
  [
    'reset',
    'id, component_id, kind, at, evidence, recorded_seq',
    `${id(23)}, ${COMPONENT}, 'overhaul', ${AT}, 'E', 1`,
  ],
  [
    'trace_gap',
    'id, component_id, from_at, to_at, note, recorded_seq',
    `${id(24)}, ${COMPONENT}, ${AT}, '2025-01-02 00:00Z', 'N', 1`,
  ],
  [
    'gap_acceptance',
    'id, component_id, accepted_by, reference, recorded_seq',
    `${id(25)}, ${COMPONENT}, 'B', 'R', 1`,
  ],
  [
    'life_limit',
    'id, part_number, engine_model_id, authorisation, cycles, document, revision, effective_on, recorded_seq',
    `${id(26)}, 'P', ${MODEL}, 'limited', 1, 'D', '1', '2020-01-01', 1`,
  ],
  [
    'counter_reading',
    'id, component_id, at, kind, minutes, starts, recorded_seq',
    `${id(27)}, ${COMPONENT}, ${AT}, 'installed', 1, 1, 1`,
  ],
  [
    'flight',
    'id, airframe_id, log_page, from_station, to_station, take_off_at, landing_at, minutes, touch_and_goes, starts, aborted_take_offs, typed, source, recorded_seq',
    `${id(28)}, ${AIRFRAME}, '1', 'AAA', 'BBB', '2025-01-03 10:00Z', '2025-01-03 11:00Z', 60, 0, 1, 0, '{}', 'entered', 1`,
  ],
  [
    'flight_exception',
    'id, flight_id, position_id, airframe_id, landing_at, kind, minutes, flights, landings, touch_and_goes, starts, aborted_take_offs, recorded_seq',
    `${id(29)}, ${id(28)}, ${POSITION}, ${AIRFRAME}, '2025-01-03 11:00Z', 'shut-down', 5, 0, 0, 0, 0, 0, 1`,
  ],
  [
    'work_package',
    'id, number, kind, title, airframe_id, opened_at, recorded_seq',
    `${PACKAGE}, 'EC-1', 'engine-change', 'T', ${AIRFRAME}, ${AT}, 1`,
  ],
  [
    'package_change',
    'id, package_id, slot_id, position_id, incoming_id, at, boundary_kind, boundary_text, reason, counters, recorded_seq',
    `${id(30)}, ${PACKAGE}, ${SLOT}, ${POSITION}, ${COMPONENT}, ${AT}, 'instant', '', 'R', '{}', 1`,
  ],
  [
    'signature',
    'id, person_id, person_name, meaning, statement, content_hash, method, signed_at, recorded_seq',
    `${id(31)}, ${PERSON}, 'One', 'M', 'S', '\\x00', 'password', ${AT}, 1`,
  ],
  [
    'release',
    'id, package_id, number, signature_id, rule_set, snapshot, snapshot_hash, recorded_seq',
    `${id(32)}, ${PACKAGE}, 'R-1', ${id(31)}, 'eu-145', '{}', '\\x00', 1`,
  ],
  [
    'document',
    'id, kind, subject_id, file_name, bytes, sha256, pages, created_by_id',
    `${id(33)}, 'history', ${COMPONENT}, 'f', '\\x00', '\\x00', 1, ${PERSON}`,
  ],
  ['act', 'person_id, key, fingerprint, status, body', `${PERSON}, 'a-key-used', '\\x00', 201, '{}'`],
];

/** Puts one row of one operator, straight by SQL, into every table that keeps facts or records. */
export function fillEveryTable(database: Pick<TestDatabase, 'adminUrl'>): Promise<void> {
  return withClient(database.adminUrl, async (client: pg.Client) => {
    await client.query(`INSERT INTO operator (id, code, name) VALUES (${OPERATOR}, 'ONE', 'One')`);
    for (const [table, columns, values] of ROWS)
      await client.query(`INSERT INTO "${table}" (operator_id, ${columns}) VALUES (${OPERATOR}, ${values})`);
    await client.query(
      `SELECT journal_append(${OPERATOR}, next_journal_number(), ${AIRFRAME}, 'test', ${PERSON}, NULL, '{}', ARRAY[${AIRFRAME}::uuid])`,
    );
  });
}
