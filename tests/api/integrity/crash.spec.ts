import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { type Founded, foundOperator, type RunningApi, startApi } from '../../support/api.js';
import { startDatabase, type TestDatabase, withClient } from '../../support/database.js';
import { atMinute, recordChange } from '../../support/scenario/acts.js';
import { checkedChains } from '../../support/scenario/chain.js';
import { makeFleet } from '../../support/scenario/fleet.js';
import { brokenInvariants } from '../../support/scenario/invariants.js';
import { signedIn } from '../../support/scenario/office.js';
import { done } from '../../support/scenario/problem.js';
import { Register } from '../../support/scenario/register.js';
import { Lane, send } from '../../support/scenario/workload.js';

/** How often the server is killed: CRASH_KILLS, or 15. */
const kills = Number(process.env['CRASH_KILLS'] ?? 15);
const LANES = 6;

let database: TestDatabase;
let founded: Founded;
let api: RunningApi;
let lanes: readonly Lane[];

/** Lanes of work, each with an airframe of its own and two engines, one of them installed. */
async function makeLanes(): Promise<readonly Lane[]> {
  const client = await signedIn(api, founded);
  const fleet = await makeFleet(new Register(client), { airframes: LANES, engines: LANES * 2 });
  return Promise.all(
    fleet.airframes.map(async ({ id }, index) => {
      const [there, spare] = fleet.engines
        .slice(index * 2, index * 2 + 2)
        .map(({ serialNumber }) => serialNumber);
      if (there === undefined || spare === undefined) throw new Error('too few engines');
      const position = { airframeId: id, positionNumber: 1, slot: 'engine' } as const;
      done(
        await recordChange(client, {
          ...position,
          outgoingSerial: null,
          incomingSerial: there,
          boundary: atMinute(9_000),
        }),
      );
      return new Lane(id, [there, spare]);
    }),
  );
}

const acknowledged = () => lanes.reduce((sum, lane) => sum + lane.acknowledged.size, 0);

/** All lanes work at once, and somewhere in the middle the server is killed and started again. */
async function workThroughAKill(): Promise<void> {
  const client = await signedIn(api, founded);
  const enough = acknowledged() + 2 + Math.floor(Math.random() * 10);
  const work = Promise.all(lanes.map((lane) => lane.run(client, () => false)));
  for (const deadline = Date.now() + 30_000; acknowledged() < enough && Date.now() < deadline; )
    await sleep(5);
  await sleep(Math.random() * 60);
  await api.kill('SIGKILL');
  await work;
  api = await startApi({ database });
}

/** What was open is sent again, until nothing is. */
async function finish(): Promise<void> {
  const client = await signedIn(api, founded);
  await Promise.all(lanes.map((lane) => lane.run(client, () => !lane.isOpen)));
}

const asked = (sql: string): Promise<Record<string, unknown>[]> =>
  withClient(database.adminUrl, async (client) => (await client.query<Record<string, unknown>>(sql)).rows);

const changesSent = () =>
  lanes.reduce((sum, lane) => sum + lane.sent.filter(({ kind }) => kind === 'change').length, 0);

beforeAll(async () => {
  database = await startDatabase();
  founded = await foundOperator(database);
  api = await startApi({ database });
  lanes = await makeLanes();
  for (let kill = 1; kill <= kills; kill += 1) await workThroughAKill();
  await finish();
}, 300_000);

afterAll(async () => {
  await api?.stop();
  await database?.drop();
}, 30_000);

describe(`a server killed ${kills} times in the middle of its work`, () => {
  it('had work in hand each time', () => {
    const total = (amount: (lane: Lane) => number) => lanes.reduce((sum, lane) => sum + amount(lane), 0);

    expect(acknowledged()).toBeGreaterThan(2 * kills);
    expect(total((lane) => lane.lost)).toBeGreaterThan(kills);
    expect(changesSent()).toBeGreaterThan(kills);
  });

  it('has every act that it acknowledged, once, and no other', async () => {
    const answered = lanes.flatMap((lane) => [...lane.acknowledged.keys()]);
    const sent = lanes.flatMap((lane) => lane.sent.map(({ key }) => key));
    const rows = await asked(
      `SELECT key FROM act WHERE resource LIKE '/api/flights/%' OR resource LIKE '/api/packages/%'`,
    );
    const kept = rows.map(({ key }) => String(key));

    expect(new Set(answered)).toEqual(new Set(sent));
    expect(kept.filter((key) => sent.includes(key)).sort()).toEqual([...sent].sort());
    expect(kept.length - sent.length).toBe(LANES); // the first installations
  });

  it('answers each of them as it did, when it is sent once more', async () => {
    const client = await signedIn(api, founded);
    for (const lane of lanes)
      for (const act of lane.sent.slice(-5)) {
        const ending = await send(client, act);
        if ('lost' in ending) throw ending.lost;
        const { status, etag, body } = ending.answer;
        expect(JSON.stringify([status, etag, body])).toBe(lane.acknowledged.get(act.key));
      }
  });

  it('holds no half of a change: what came off, what went on, the package and the entry', async () => {
    const rows = await asked(`
      SELECT p.number,
        (SELECT count(*) FROM stay s WHERE s.end_package_id = p.id AND s.slot_id IS NOT NULL)::int AS taken_off,
        (SELECT count(*) FROM stay s WHERE s.package_id = p.id AND s.slot_id IS NOT NULL)::int AS put_on,
        (SELECT count(*) FROM stay s WHERE s.package_id = p.id AND s.location_id IS NOT NULL)::int AS stored,
        (SELECT count(*) FROM stay s WHERE s.end_package_id = p.id AND s.location_id IS NOT NULL)::int AS fetched,
        (SELECT count(*) FROM package_change c WHERE c.package_id = p.id)::int AS changes,
        (SELECT count(*) FROM journal_entry j WHERE j.kind = 'engine-changed' AND j.number = p.recorded_seq)::int AS entries,
        (SELECT count(*) FROM act a WHERE a.resource = '/api/packages/' || p.id)::int AS acts
      FROM work_package p ORDER BY p.recorded_seq OFFSET ${LANES}`);
    const whole = { taken_off: 1, put_on: 1, stored: 1, fetched: 1, changes: 1, entries: 1, acts: 1 };

    expect(rows).toHaveLength(changesSent());
    for (const { number, ...parts } of rows) expect([number, parts]).toEqual([number, whole]);
  });

  it('has one flight, counted once, for each that was sent', async () => {
    const [row] = await asked(
      'SELECT (SELECT count(*) FROM flight)::int AS flights, (SELECT sum(minutes) FROM carrier)::int AS minutes',
    );
    const flights = lanes.reduce(
      (sum, lane) => sum + lane.sent.filter(({ kind }) => kind === 'flight').length,
      0,
    );

    expect(row).toEqual({ flights, minutes: flights * 60 });
  });

  it('keeps its projections and its chains whole', async () => {
    const { entries, broken } = await checkedChains(database.adminUrl);

    expect(await brokenInvariants(database.adminUrl)).toEqual({});
    expect(broken).toEqual([]);
    expect(entries).toBeGreaterThan(100);
  });
});
