import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type pg from 'pg';
import { startDatabase, type TestDatabase, withClient } from '../../support/database.js';
import { fillEveryTable, OPERATOR } from '../../support/scenario/one-row-each.js';

const [FROZEN, OTHER_STEP, SAME_PERSON] = ['SB010', 'SB011', 'SB012'];

let database: TestDatabase;

beforeAll(async () => {
  database = await startDatabase();
  await fillEveryTable(database);
  await withClient(database.adminUrl, (client) =>
    client.query(`
      INSERT INTO person (operator_id, id, sign_in_name, full_name, roles, password_hash)
      VALUES (${OPERATOR}, gen_random_uuid(), 'two', 'Two', '{inspector}', 'none');
      INSERT INTO work_package (operator_id, id, number, kind, title, airframe_id, opened_at, recorded_seq)
      SELECT operator_id, gen_random_uuid(), 'EC-2', kind, title, airframe_id, opened_at, 1 FROM work_package;
      INSERT INTO work_step (operator_id, id, package_id, key, number, definition, content_hash, recorded_seq)
      SELECT operator_id, gen_random_uuid(), id, 's-2', 1, '{}', decode(repeat('00', 32), 'hex'), 1
        FROM work_package WHERE number = 'EC-2'`),
  );
}, 60_000);

afterAll(() => database?.drop(), 30_000);

/** How the last of these statements of the application ends: its SQLSTATE, or how many rows it wrote. Nothing stays. */
const ends = (...statements: readonly string[]): Promise<string> =>
  withClient(database.appUrl, async (client: pg.Client) => {
    await client.query('BEGIN');
    await client.query(`SELECT set_config('app.operator_id', '${OPERATOR}', true)`);
    for (const statement of statements.slice(0, -1)) await client.query(statement);
    try {
      return `${(await client.query(statements.at(-1) ?? '')).rowCount} rows`;
    } catch (error) {
      return (error as pg.DatabaseError).code ?? String(error);
    } finally {
      await client.query('ROLLBACK');
    }
  });

const become = (status: string) =>
  `UPDATE work_package SET status = '${status}', version = version + 1 WHERE number = 'EC-1'`;
const VOID_ENTRY = `UPDATE step_entry SET voided_seq = 9, void_reason = 'wrong'`;
const VOID_SIGNATURE = `UPDATE step_signature SET voided_seq = 9, void_reason = 'wrong'`;
const PICTURE = `INSERT INTO step_photo (operator_id, id, entry_id, media_type, sha256, content, recorded_seq)
  SELECT operator_id, gen_random_uuid(), id, 'image/png', sha256('\\x01'), '\\x01', 2 FROM step_entry`;
const entryOf = (number: string) =>
  `INSERT INTO step_entry (operator_id, id, package_id, step_id, capture, kind, typed, judged, verdict, person_id, person_name,
      entered_at, recorded_seq)
   SELECT e.operator_id, gen_random_uuid(), w.id, e.step_id, 'c', 'text', '{}', '{}', 'accepted', e.person_id, 'One', now(), 2
     FROM step_entry e, work_package w WHERE w.number = '${number}'`;

describe.each(['released', 'withdrawn'])('a package that is %s', (status) => {
  it.each([
    ['takes no entry', entryOf('EC-1')],
    ['has no entry struck out', VOID_ENTRY],
    ['has no signature undone', VOID_SIGNATURE],
    ['has the content of no step changed', `UPDATE work_step SET version = 2 WHERE key = 's-1'`],
    ['has its order as it was', `UPDATE ordered_change SET voided_seq = 9, void_reason = 'wrong'`],
    ['takes no picture', PICTURE],
    ['is not opened again', become('open')],
  ])('%s', async (_, statement) => {
    expect(await ends(become(status), statement)).toBe(FROZEN);
    if (!statement.includes("status = 'open'")) expect(await ends(statement)).toBe('1 rows');
  });
});

const signature = (by: string) =>
  `INSERT INTO signature (operator_id, id, person_id, person_name, meaning, statement, content_hash, method, signed_at, recorded_seq)
   SELECT operator_id, '00000000-0000-7000-8000-0000000000ff', id, full_name, 'inspection', 'S', decode(repeat('01', 32), 'hex'),
          'password', now(), 2 FROM person WHERE sign_in_name = '${by}'`;
const inspectionOf = ({ step = 's-1', hash = '00', reason = 'NULL' } = {}) =>
  `INSERT INTO step_signature (operator_id, id, package_id, step_id, signature_id, meaning, covers_id, content_hash, performed_at,
      reinspection_reason, recorded_seq)
   SELECT d.operator_id, gen_random_uuid(), w.package_id, w.id, '00000000-0000-7000-8000-0000000000ff', 'inspection', d.id,
          decode(repeat('${hash}', 32), 'hex'), d.performed_at, ${reason}, 2
     FROM step_signature d, work_step w WHERE w.key = '${step}'`;

describe('an inspection', () => {
  it('is by another person, or says why one looked twice', async () => {
    expect(await ends(signature('two'), inspectionOf())).toBe('1 rows');
    expect(await ends(signature('one'), inspectionOf())).toBe(SAME_PERSON);
    expect(await ends(signature('one'), inspectionOf({ reason: `'Alone at the station'` }))).toBe('1 rows');
  });

  it('covers a signature that stands, on its own step and content', async () => {
    expect(await ends(signature('two'), inspectionOf({ step: 's-2' }))).toBe(OTHER_STEP);
    expect(await ends(signature('two'), inspectionOf({ hash: '02' }))).toBe(OTHER_STEP);
    expect(await ends(signature('two'), VOID_SIGNATURE, inspectionOf())).toBe(OTHER_STEP);
  });
});

describe('what is entered in a step', () => {
  it('is entered in the package of the step', async () => {
    expect(await ends(entryOf('EC-2'))).toBe(OTHER_STEP);
  });
});
