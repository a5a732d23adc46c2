import type pg from 'pg';
import { type TestDatabase, withClient } from '../database.js';
import { shopRows } from '../shop/one-row-of-shops.js';

/** What happened. A row may be voided, once; a stay may be ended, once. */
export const FACTS = [
  'accomplishment',
  'assessment',
  'authorisation',
  'counter_reading',
  'cycle_rule',
  'flight',
  'flight_exception',
  'gap_acceptance',
  'gap_note',
  'ground_run',
  'life_limit',
  'occurrence',
  'opening',
  'ordered_change',
  'package_requirement',
  'preservation',
  'rating_change',
  'planned_flight',
  'planned_rate',
  'requirement',
  'reset',
  'serviceability_tag',
  'shop_change',
  'shop_return',
  'shop_visit',
  'stay',
  'step_entry',
  'step_signature',
  'tool_calibration',
  'trace_gap',
  'variation',
];
/** What was done and signed. An act is given its answer, once. */
export const RECORDS = [
  'about',
  'act',
  'document',
  'journal_entry',
  'package_change',
  'procedure',
  'release',
  'signature',
  'step_photo',
];

/** The operator whose rows they are. */
export const OPERATOR = 1;

const id = (n: number) => `'00000000-0000-7000-8000-${String(n).padStart(12, '0')}'`;
const [PERSON, TYPE, AIRFRAME, POSITION, SLOT, MODEL, RATING, COMPONENT, LOCATION, PACKAGE] = Array.from(
  { length: 10 },
  (_, index) => id(index + 1),
);
const AT = `'2025-01-01 00:00Z'`;
const HASH = `decode(repeat('00', 32), 'hex')`;

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
    'cycle_rule',
    'id, engine_model_id, per_flight, per_landing, per_touch_and_go, per_start, per_aborted_take_off, denominator, source, revision, recorded_seq',
    `${id(70)}, ${MODEL}, 1, 0, 0, 0, 0, 1, 'S', '1', 1`,
  ],
  [
    'ground_run',
    'id, carrier_id, airframe_id, started_at, ended_at, run_minutes, purpose, source, recorded_seq',
    `${id(71)}, ${POSITION}, ${AIRFRAME}, '2025-01-02 10:00Z', '2025-01-02 11:00Z', 60, 'P', 'S', 1`,
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
  [
    'procedure',
    'id, code, revision, title, kind, document, document_revision, content, content_hash, recorded_seq',
    `${id(40)}, 'P-1', '1', 'T', 'engine-change', 'D', '1', '{}', '\\x00', 1`,
  ],
  [
    'ordered_change',
    'id, package_id, slot_id, incoming_id, reason, recorded_seq',
    `${id(41)}, ${PACKAGE}, ${SLOT}, ${COMPONENT}, 'R', 1`,
  ],
  [
    'work_step',
    'id, package_id, key, number, definition, content_hash, recorded_seq',
    `${id(42)}, ${PACKAGE}, 's-1', 1, '{}', ${HASH}, 1`,
  ],
  ['tool', 'id, serial_number, description, kind', `${id(43)}, 'T-1', 'D', 'other'`],
  [
    'tool_calibration',
    'id, tool_id, calibrated_on, due_on, certificate, recorded_seq',
    `${id(44)}, ${id(43)}, '2025-01-01', '2026-01-01', 'C', 1`,
  ],
  [
    'authorisation',
    'id, person_id, scope, from_on, reference, recorded_seq',
    `${id(45)}, ${PERSON}, 'work', '2025-01-01', 'R', 1`,
  ],
  [
    'step_entry',
    'id, package_id, step_id, capture, kind, typed, judged, verdict, person_id, person_name, entered_at, recorded_seq',
    `${id(46)}, ${PACKAGE}, ${id(42)}, 'c', 'photo', '{}', '{}', 'accepted', ${PERSON}, 'One', ${AT}, 1`,
  ],
  [
    'step_photo',
    'id, entry_id, media_type, sha256, content, recorded_seq',
    `${id(47)}, ${id(46)}, 'image/png', sha256('\\x00'), '\\x00', 1`,
  ],
  [
    'step_signature',
    'id, package_id, step_id, signature_id, meaning, content_hash, performed_at, recorded_seq',
    `${id(48)}, ${PACKAGE}, ${id(42)}, ${id(31)}, 'done', ${HASH}, ${AT}, 1`,
  ],
  [
    'requirement',
    'id, code, title, kind, document, revision, anchor, engine_model_id, repeat_cycles, combine, month_rule, counted_from, effective_on, recorded_seq',
    `${id(49)}, 'R-1', 'T', 'inspection', 'D', '1', 'engine', ${MODEL}, 500, 'first', 'same-day', 'new', '2025-01-01', 1`,
  ],
  [
    'accomplishment',
    'id, requirement_id, component_id, at, done_on, minutes, cycles, evidence, recorded_seq',
    `${id(50)}, ${id(49)}, ${COMPONENT}, ${AT}, '2025-01-01', 1, 1, 'E', 1`,
  ],
  [
    'assessment',
    'id, requirement_id, component_id, applicable, assessed_by, reference, assessed_on, recorded_seq',
    `${id(53)}, ${id(49)}, ${COMPONENT}, true, 'B', 'R', '2025-01-01', 1`,
  ],
  [
    'variation',
    'id, requirement_id, component_id, accomplishment_id, cycles, approved_by, reference, reason, approved_on, recorded_seq',
    `${id(54)}, ${id(49)}, ${COMPONENT}, ${id(50)}, 10, 'B', 'R', 'X', '2025-01-01', 1`,
  ],
  [
    'occurrence',
    'id, airframe_id, kind, at, evidence, recorded_seq',
    `${id(55)}, ${AIRFRAME}, 'main-base-return', ${AT}, 'E', 1`,
  ],
  [
    'package_requirement',
    'id, package_id, requirement_id, component_id, recorded_seq',
    `${id(51)}, ${PACKAGE}, ${id(49)}, ${COMPONENT}, 1`,
  ],
  [
    'gap_note',
    'id, flight_id, kind, before, after, note, recorded_seq',
    `${id(52)}, ${id(28)}, 'pages', '1', '3', 'N', 1`,
  ],
  [
    'planned_rate',
    'id, airframe_id, from_on, days, minutes, flights, source, recorded_seq',
    `${id(53)}, ${AIRFRAME}, '2025-01-01', 7, 600, 7, 'S', 1`,
  ],
  [
    'planned_flight',
    'id, airframe_id, take_off_at, landing_at, recorded_seq',
    `${id(54)}, ${AIRFRAME}, '2025-02-01 10:00Z', '2025-02-01 11:00Z', 1`,
  ],
  ...shopRows({ component: COMPONENT, location: LOCATION, slot: SLOT, at: AT, id }),
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
