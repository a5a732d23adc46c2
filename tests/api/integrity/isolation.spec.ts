import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type pg from 'pg';
import { withClient } from '../../support/database.js';
import type { HttpClient } from '../../support/http-client.js';
import { lists, namingRequests } from '../../support/isolation/foreign-requests.js';
import { type FullRegister, fillRegister } from '../../support/isolation/full-register.js';
import { foundAnother, type Office, openOffice, signedIn } from '../../support/scenario/office.js';
import { inShort, problemOf } from '../../support/scenario/problem.js';
import { storedRows, tablesOf } from '../../support/scenario/stored-rows.js';

/** What of the contract names no record at all. */
const NAMES_NOTHING = [
  'DELETE /api/session',
  'GET /health/live',
  'GET /health/ready',
  'POST /api/airframe-types',
  'POST /api/imports',
  'POST /api/locations',
  'POST /api/people',
  'POST /api/procedures',
  'POST /api/session',
  'POST /api/session/password',
  'POST /api/session/pin',
  'POST /api/test-cells',
  'POST /api/tools',
];

let office: Office;
let ours: FullRegister;
let theirs: FullRegister;
/** Holds every role, so that nothing but the operator is between it and their records. */
let us: HttpClient;
let operators: { readonly ours: number; readonly theirs: number };

beforeAll(async () => {
  office = await openOffice();
  const other = await foundAnother(office, 'OTHER');
  const { api } = office;
  ours = await fillRegister(office, 'ZA');
  theirs = await fillRegister({ api, founded: other, administrator: await signedIn(api, other) }, 'ZB');
  const everyRole = [
    'technician',
    'inspector',
    'certifying-staff',
    'planner',
    'records',
    'auditor',
    'administrator',
  ];
  await withClient(office.database.adminUrl, async (client) => {
    await client.query(`UPDATE person SET roles = $1, licence = 'L' WHERE sign_in_name = $2`, [
      everyRole,
      office.founded.signInName,
    ]);
    const { rows } = await client.query<{ id: number }>('SELECT id FROM operator ORDER BY id');
    operators = { ours: rows[0]?.id ?? 0, theirs: rows[1]?.id ?? 0 };
  });
  us = await signedIn(api, office.founded);
}, 120_000);

afterAll(() => office?.close(), 30_000);

/** Every id, serial number and registration by which their records could be known. */
function theirMarks(): string[] {
  return [
    ...Object.values(theirs.ids),
    ...theirs.fleet.engines.flatMap(({ id, serialNumber }) => [id, serialNumber]),
    'ZB-',
    'OTHER',
  ];
}

describe('the requests tried here', () => {
  it('are all that the contract has, but for those that name no record', async () => {
    const { body } = await us.get<{ paths: Record<string, Record<string, object>> }>('/api/docs-json');
    const known = Object.entries(body.paths).flatMap(([path, item]) =>
      Object.keys(item).map((method) => `${method.toUpperCase()} ${path}`),
    );
    const tried = new Set([...namingRequests(theirs, ours), ...lists(theirs)].map(({ route }) => route));

    expect(known.filter((route) => !tried.has(route)).sort()).toEqual(NAMES_NOTHING);
  });

  it('find what is their own', async () => {
    for (const { route, path } of namingRequests(ours, ours).filter((request) => request.body === undefined))
      expect([route, (await us.get(path)).status]).toEqual([route, 200]);
  });
});

async function expectNothingOfTheirs(): Promise<void> {
  const before = await storedRows(office.database.adminUrl);
  const wrong: string[] = [];
  for (const { route, path, body, headers = {} } of namingRequests(theirs, ours)) {
    const method = route.slice(0, route.indexOf(' '));
    const answer = await us.send(method, path, body, { ifMatch: '"v1"', headers });
    if (answer.status !== 404 || problemOf(answer).code !== 'NOT_FOUND')
      wrong.push(`${route}: ${inShort(answer)}`);
  }
  for (const { path } of lists(theirs)) {
    const { status, bytes } = await us.get(path);
    const text = new TextDecoder().decode(bytes);
    const seen = theirMarks().filter((mark) => text.includes(mark));
    if (seen.length > 0 || (status !== 200 && status !== 404))
      wrong.push(`${path}: ${status} ${seen.join(' ')}`);
  }
  expect(wrong).toEqual([]);
  expect(await storedRows(office.database.adminUrl)).toEqual(before);
}

describe('another operator’s records', () => {
  it(
    'can be neither read, named nor changed, and are not even known to exist',
    expectNothingOfTheirs,
    60_000,
  );

  it('stay so with row-level security off: the application asks for its own alone', async () => {
    const onAll = (what: string) =>
      withClient(office.database.adminUrl, async (client) => {
        for (const table of await tablesOf(client))
          if (table !== '_prisma_migrations')
            await client.query(`ALTER TABLE "${table}" ${what} ROW LEVEL SECURITY`);
      });
    await onAll('DISABLE');
    try {
      await expectNothingOfTheirs();
    } finally {
      await onAll('ENABLE');
    }
  }, 60_000);
});

describe('the database, asked by the application’s role without any filter', () => {
  let tables: string[];

  const asUs = <T>(work: (client: pg.Client) => Promise<T>) =>
    withClient(office.database.appUrl, async (client) => {
      await client.query(`SELECT set_config('app.operator_id', $1, false)`, [String(operators.ours)]);
      return work(client);
    });

  const codeOf = async (query: Promise<pg.QueryResult>): Promise<string> => {
    try {
      return `${(await query).rowCount} rows`;
    } catch (error) {
      return (error as pg.DatabaseError).code ?? String(error);
    }
  };

  beforeAll(async () => {
    tables = await withClient(office.database.adminUrl, async (client) =>
      (await tablesOf(client)).filter((table) => !['_prisma_migrations', 'operator'].includes(table)),
    );
  });

  it('shows no row of the other operator, in any table that has some', async () => {
    const held = await withClient(office.database.adminUrl, async (client) => {
      const counts: string[] = [];
      for (const table of tables) {
        const { rowCount } = await client.query(`SELECT FROM "${table}" WHERE operator_id = $1`, [
          operators.theirs,
        ]);
        if (rowCount !== 0) counts.push(table);
      }
      return counts;
    });
    expect(held.length).toBeGreaterThan(25);
    await asUs(async (client) => {
      for (const table of held) {
        expect([
          table,
          (await client.query(`SELECT FROM "${table}" WHERE operator_id = $1`, [operators.theirs])).rowCount,
        ]).toEqual([table, 0]);
        expect([
          table,
          (await client.query(`SELECT FROM "${table}" WHERE operator_id = $1`, [operators.ours])).rowCount,
        ]).toBeTruthy();
      }
      expect((await client.query('SELECT code FROM operator')).rows).toEqual([
        { code: office.founded.operatorCode },
      ]);
      expect(
        (await client.query('SELECT FROM clock_now WHERE operator_id = $1', [operators.theirs])).rowCount,
      ).toBe(0);
    });
  });

  it('shows none by id either', async () => {
    const { flight, component, package: packageId, stay, release } = theirs.ids;
    const byId = { flight, component, work_package: packageId, stay, release };
    await asUs(async (client) => {
      for (const [table, id] of Object.entries(byId))
        expect([table, (await client.query(`SELECT FROM "${table}" WHERE id = $1`, [id])).rowCount]).toEqual([
          table,
          0,
        ]);
    });
  });

  it('takes no row for the other operator, and gives it none of its own', async () => {
    await asUs(async (client) => {
      for (const table of tables) {
        const foreign = `jsonb_build_object('operator_id', ${operators.theirs})`;
        const insert = `INSERT INTO "${table}" SELECT (jsonb_populate_record(NULL::"${table}", to_jsonb(t) || ${foreign})).* FROM "${table}" t LIMIT 1`;
        const isEmpty = (await client.query(`SELECT FROM "${table}" LIMIT 1`)).rowCount === 0;
        if (!isEmpty) expect([table, await codeOf(client.query(insert))]).toEqual([table, '42501']);
        const given = await codeOf(client.query(`UPDATE "${table}" SET operator_id = ${operators.theirs}`));
        expect([table, given]).toEqual([
          table,
          isEmpty ? expect.stringMatching(/^(0 rows|42501)$/) : '42501',
        ]);
        const taken = await codeOf(
          client.query(
            `UPDATE "${table}" SET operator_id = operator_id WHERE operator_id = ${operators.theirs}`,
          ),
        );
        expect([table, taken]).toEqual([table, expect.stringMatching(/^(0 rows|42501)$/)]);
      }
    });
  });

  it('answers nothing at all before an operator is named', async () => {
    await withClient(office.database.appUrl, async (client) => {
      for (const table of tables)
        expect([table, await codeOf(client.query(`SELECT FROM "${table}"`))]).toEqual([table, '42704']);
    });
  });
});
