import assert from 'node:assert/strict';
import crypto from 'node:crypto';
import { idOf, PERSON } from '../ids.mjs';

const CHAINED = `SELECT journal_append(1, next_journal_number(), $1, 'bench', $2, $3, $4, ARRAY[$5]::uuid[])`;
const PLAIN = `SELECT plain_append(1, next_journal_number(), $1, 'bench', $2, $3, $4, ARRAY[$5]::uuid[])`;

/** The twin: the same rows of the same columns with the same indexes, in no chain: no head to lock, no hash. */
export async function makePlain(admin) {
  await admin.query('CREATE TABLE plain_entry (LIKE journal_entry INCLUDING ALL)');
  await admin.query('CREATE TABLE plain_about (LIKE about INCLUDING ALL)');
  for (const [table, of] of [
    ['plain_entry', 'journal_entry'],
    ['plain_about', 'about'],
  ]) {
    const { rows } = await admin.query(
      `SELECT pg_get_constraintdef(oid) AS made FROM pg_constraint WHERE conrelid = $1::regclass AND contype = 'f'`,
      [of],
    );
    for (const { made } of rows) await admin.query(`ALTER TABLE ${table} ADD ${made}`);
  }
  await admin.query('GRANT SELECT, INSERT ON plain_entry, plain_about TO app');
  await admin.query('CREATE SEQUENCE plain_seq; GRANT USAGE ON SEQUENCE plain_seq TO app');
  await admin.query(`CREATE FUNCTION plain_append(p_operator int, p_number bigint, p_stream uuid, p_kind text, p_person uuid, p_key text,
      p_body text, p_about uuid[]) RETURNS bigint LANGUAGE plpgsql AS $$
    BEGIN
      INSERT INTO plain_entry (operator_id, number, stream, seq, kind, recorded_at, person_id, act_key, body, prev, hash)
      VALUES (p_operator, p_number, p_stream, nextval('plain_seq'), p_kind, clock_timestamp(), p_person, p_key, p_body,
        '\\x0000000000000000000000000000000000000000000000000000000000000000', '\\x0000000000000000000000000000000000000000000000000000000000000000');
      INSERT INTO plain_about (operator_id, subject, number)
      SELECT DISTINCT p_operator, subject, p_number FROM unnest(p_about || p_stream) AS subject;
      RETURN p_number;
    END $$`);
}

/** One entry in the chain of its stream, against the same entry in no chain. */
export async function chainWays(client) {
  await client.query("SELECT set_config('app.operator_id', '1', false)");
  const stream = idOf('a1');
  const body = JSON.stringify({ what: 'x'.repeat(400) });
  const append = (name, text) => async () => {
    const id = crypto.randomUUID();
    return (await client.query({ name, text, values: [stream, PERSON, id, body, id] })).rows[0];
  };
  const ways = { product: append('chained', CHAINED), twin: append('plain', PLAIN) };
  const [chained, plain] = [await ways.product(), await ways.twin()];
  const read = (entry, about, number) =>
    client.query(
      `SELECT stream, kind, person_id, body, (SELECT count(*) FROM ${about} a WHERE a.operator_id = 1 AND a.number = e.number) AS about
         FROM ${entry} e WHERE operator_id = 1 AND number = $1`,
      [number],
    );
  assert.deepEqual(
    (await read('journal_entry', 'about', chained.journal_append)).rows,
    (await read('plain_entry', 'plain_about', plain.plain_append)).rows,
  );
  return ways;
}
