import assert from 'node:assert/strict';
import crypto from 'node:crypto';
import { IN_ORDER_SQL, inOrderValues } from '../../../apps/api/dist/features/flights/flight-in-order.js';
import { newId } from '../../../apps/api/dist/platform/database/uuid.js';
import { airframe, PERSON } from '../ids.mjs';

const BARE = `INSERT INTO bare_flight (operator_id, id, airframe_id, log_page, from_station, to_station, take_off_at,
  landing_at, minutes, touch_and_goes, starts, aborted_take_offs, typed, source, recorded_seq)
  VALUES (1, $1, $2, $3, 'QXA', 'QXB', $4, $5, 5, 0, 1, 0, '{}', 'entered', 0)`;

/**
 * The bare twin: a table with the columns, the indexes and the constraints of the product's own, foreign keys among
 * them, and as many rows; without row-level security and triggers.
 */
export async function makeBareFlight(admin) {
  await admin.query('CREATE TABLE bare_flight (LIKE flight INCLUDING ALL)');
  await admin.query('INSERT INTO bare_flight SELECT * FROM flight WHERE airframe_id = ANY ($1)', [
    [1, 2, 3, 4, 5, 6, 7, 8, 9, 10].map(airframe),
  ]);
  const { rows } = await admin.query(
    `SELECT pg_get_constraintdef(oid) AS made FROM pg_constraint WHERE conrelid = 'flight'::regclass AND contype IN ('x', 'f')`,
  );
  // The constraint against overlap is first filled unchecked: the flights came from a table that has it.
  for (const { made } of rows.filter((row) => row.made.startsWith('FOREIGN')))
    await admin.query(`ALTER TABLE bare_flight ADD ${made}`);
  await admin.query('CREATE TABLE bare_rows AS SELECT * FROM bare_flight');
  await admin.query('TRUNCATE bare_flight');
  for (const { made } of rows.filter((row) => row.made.startsWith('EXCLUDE')))
    await admin.query(`ALTER TABLE bare_flight ADD ${made}`);
  await admin.query("UPDATE pg_index SET indisready = false WHERE indrelid = 'bare_flight'::regclass");
  await admin.query('INSERT INTO bare_flight SELECT * FROM bare_rows');
  await admin.query("UPDATE pg_index SET indisready = true WHERE indrelid = 'bare_flight'::regclass");
  await admin.query('VACUUM FULL bare_flight');
  await admin.query('DROP TABLE bare_rows');
  await admin.query('GRANT SELECT, INSERT ON bare_flight TO app');
  await admin.query('ANALYZE bare_flight');
}

/** Flights of five minutes, ten minutes apart, after all the filling made. */
export function nextFlights(begins = Date.UTC(2022, 10, 9)) {
  let at = begins;
  return () => {
    at += 600_000;
    return {
      id: newId(),
      logPage: crypto.randomUUID().slice(0, 18),
      fromStation: 'QXA',
      toStation: 'QXB',
      takeOffAt: at / 60_000 - 5,
      landingAt: at / 60_000,
      touchAndGoes: 0,
      starts: 1,
      abortedTakeOffs: 0,
      typed: '{}',
      exceptions: [],
    };
  };
}

/** One flight by the function the API calls, on an airframe. */
export async function logOne(client, flight, airframeId) {
  const body = JSON.stringify(flight);
  const act = { key: flight.id, fingerprint: crypto.createHash('sha256').update(body).digest() };
  const actor = { operatorId: 1, personId: PERSON };
  const values = inOrderValues(actor, act, { airframeId, flight, body });
  const { rows } = await client.query({ name: 'log', text: IN_ORDER_SQL, values });
  if (rows[0]?.answer?.flight === undefined)
    throw new Error(`the flight was not logged: ${JSON.stringify(rows[0])}`);
  return rows[0].answer.flight;
}

/** The bare insert of the same flight. */
export function insertBare(client, { id, logPage, takeOffAt, landingAt }, airframeId) {
  const at = (minutes) => new Date(minutes * 60_000).toISOString();
  const values = [id, airframeId, logPage, at(takeOffAt), at(landingAt)];
  return client.query({ name: 'bare', text: BARE, values });
}

/** Both wrote the same row, but for its id, its log page of chance, what was typed and the number of its entry. */
export async function assertSameRow(client, own, bare) {
  const columns = `airframe_id, from_station, to_station, take_off_at, landing_at, minutes, touch_and_goes, starts,
    aborted_take_offs, source, entry_row, replaces_id, voided_seq`;
  const read = async (table, id) =>
    (await client.query(`SELECT ${columns} FROM ${table} WHERE operator_id = 1 AND id = $1`, [id])).rows;
  const rows = await read('flight', own);
  assert.equal(rows.length, 1);
  assert.deepEqual(rows, await read('bare_flight', bare));
}

/** Logging one flight by the product's one statement, against a bare insert of the same row. */
export async function flightWays(client, number) {
  const airframeId = airframe(number);
  const [own, bare] = [nextFlights(), nextFlights()];
  const [first, second] = [own(), bare()];
  await logOne(client, first, airframeId);
  await insertBare(client, second, airframeId);
  await assertSameRow(client, first.id, second.id);
  return {
    product: () => logOne(client, own(), airframeId),
    twin: () => insertBare(client, bare(), airframeId),
  };
}
