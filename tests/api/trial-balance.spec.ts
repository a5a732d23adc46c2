import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { withClient } from '../support/database.js';
import { atMinute, logFlights, recordChange } from '../support/scenario/acts.js';
import { DAY, daily, type InService, putInService } from '../support/scenario/in-service.js';
import { instantAt } from '../support/scenario/instants.js';
import { employ, type Office, openOffice } from '../support/scenario/office.js';
import { done, problemOf } from '../support/scenario/problem.js';

interface Counts {
  readonly minutes: number;
  readonly flights: number;
}

interface Balance {
  readonly balanced: boolean;
  readonly rows: readonly {
    readonly registration: string;
    readonly positionNumber: number;
    readonly flown: Counts;
    readonly onEngines: Counts;
    readonly empty: Counts;
    readonly notRunning: Counts;
    readonly difference: Counts;
  }[];
}

let office: Office;
let fleet: InService;

beforeAll(async () => {
  office = await openOffice();
  fleet = await putInService(office.administrator, { days: 4 });
  const at = { airframeId: fleet.airframe.id, positionNumber: 1, slot: 'engine' as const };
  // Position 1 is empty for two days of flying; on the last flight engine 2 is shut down for half an hour.
  done(
    await recordChange(office.administrator, {
      ...at,
      outgoingSerial: 'ZZ-E1',
      incomingSerial: null,
      boundary: atMinute(4 * DAY),
    }),
  );
  done(await logFlights(office.administrator, fleet.airframe.id, daily(2, { from: 4 })));
  done(
    await recordChange(office.administrator, {
      ...at,
      outgoingSerial: null,
      incomingSerial: 'ZZ-E3',
      boundary: atMinute(6 * DAY),
    }),
  );
  const [last] = daily(1, { from: 6 });
  if (last === undefined) throw new Error('no flight');
  done(
    await logFlights(office.administrator, fleet.airframe.id, [
      { ...last, exceptions: [{ positionNumber: 2, kind: 'shut-down', minutes: 30 }] },
    ]),
  );
}, 120_000);

afterAll(() => office?.close(), 30_000);

const balance = async () => done(await office.administrator.get<Balance>('/api/trial-balance'));

/** Runs a command of the API on the office's database. */
async function command(file: string): Promise<{ readonly code: number; readonly out: string }> {
  const run = promisify(execFile)(process.execPath, [`apps/api/dist/${file}`], {
    env: { ...process.env, DATABASE_URL: office.database.appUrl },
  });
  return run.then(
    ({ stdout }) => ({ code: 0, out: stdout }),
    (error: { code: number; stdout: string; stderr: string }) => ({
      code: error.code,
      out: error.stdout + error.stderr,
    }),
  );
}

/** Changes rows as no one may, by switching the triggers off, and puts them back. */
async function tamperedWith<T>(change: string, restore: string, work: () => Promise<T>): Promise<T> {
  const run = (sql: string) => withClient(office.database.adminUrl, (client) => client.query(sql));
  await run(change);
  try {
    return await work();
  } finally {
    await run(restore);
  }
}

describe('the trial balance', () => {
  it('accounts for every minute: on engines, past an empty position, not running', async () => {
    const { balanced, rows } = await balance();

    expect(balanced).toBe(true);
    const [first, second] = rows.filter((row) => row.registration === 'ZZ-101');
    expect(first).toMatchObject({
      flown: { minutes: 840, flights: 7 },
      onEngines: { minutes: 600, flights: 5 },
      empty: { minutes: 240, flights: 2 },
    });
    expect(second).toMatchObject({
      flown: { minutes: 840 },
      onEngines: { minutes: 810 },
      notRunning: { minutes: 30 },
      difference: { minutes: 0 },
    });
  });

  it('is printed by a command that ends well while every difference is zero', async () => {
    const { code, out } = await command('trial-balance.js');

    expect(out).toMatch(/ZZ-101 position 1[\s\S]*on engines\s+10:00\s+5/);
    expect([code, /every difference is zero/.test(out)]).toEqual([0, true]);
  });

  it('tells of a minute that was made up, and the command ends badly', async () => {
    const forge = (minutes: string) =>
      `UPDATE exposure SET minutes = minutes ${minutes} WHERE to_at IS NOT NULL AND component_id = '${fleet.engines[0]?.id}'`;

    const [told, run] = await tamperedWith(
      forge('+ 1'),
      forge('- 1'),
      async () => [await balance(), await command('trial-balance.js')] as const,
    );

    expect(told.balanced).toBe(false);
    expect(told.rows.find((row) => row.positionNumber === 1)?.difference.minutes).toBe(-1);
    expect([run.code, /NOT ZERO/.test(run.out)]).toEqual([1, true]);
  });

  describe('of one airframe', () => {
    interface Span {
      readonly from: string | null;
      readonly to: string | null;
      readonly serialNumber: string | null;
      readonly flown: Counts;
      readonly taken: Counts;
      readonly difference: Counts;
    }
    interface OfAirframe {
      readonly balanced: boolean;
      readonly positions: readonly {
        readonly positionNumber: number;
        readonly flown: Counts;
        readonly onEngines: Counts;
        readonly empty: Counts;
        readonly spans: readonly Span[];
      }[];
    }
    const ofAirframe = async (query = '') =>
      done(
        await office.administrator.get<OfAirframe>(
          `/api/trial-balance/airframes/${fleet.airframe.id}${query}`,
        ),
      );
    const first = ({ positions }: OfAirframe) => positions.find(({ positionNumber }) => positionNumber === 1);

    it('names each engine with what it took, and what passed the empty position', async () => {
      const told = await ofAirframe();

      expect(told.balanced).toBe(true);
      expect(
        first(told)?.spans.map(({ serialNumber, flown, taken }) => [
          serialNumber,
          flown.minutes,
          taken.minutes,
        ]),
      ).toEqual([
        [null, 0, 0],
        ['ZZ-E1', 480, 480],
        [null, 240, 240],
        ['ZZ-E3', 120, 120],
      ]);
    });

    it('adds up to an instant alone, in the middle of a stay too', async () => {
      const told = await ofAirframe(`?upTo=${instantAt(5 * DAY)}`);

      expect(told.balanced).toBe(true);
      expect(first(told)).toMatchObject({ flown: { minutes: 600 }, empty: { minutes: 120 } });
    });

    it('shows the span in which a minute was made up', async () => {
      const forge = (minutes: string) =>
        `UPDATE exposure SET minutes = minutes ${minutes} WHERE to_at IS NOT NULL AND component_id = '${fleet.engines[0]?.id}'`;

      const told = await tamperedWith(forge('+ 1'), forge('- 1'), () => ofAirframe());

      expect(told.balanced).toBe(false);
      expect(
        told.positions.flatMap(({ spans }) => spans).filter(({ difference }) => difference.minutes !== 0),
      ).toMatchObject([{ serialNumber: 'ZZ-E1', difference: { minutes: -1 } }]);
    });

    it('refuses an instant that is none, by its field', async () => {
      const refused = await office.administrator.get(
        `/api/trial-balance/airframes/${fleet.airframe.id}?upTo=yesterday`,
      );

      expect([refused.status, problemOf(refused).fields?.[0]?.field]).toEqual([400, 'upTo']);
    });
  });

  it('is shown to auditors and records, not to technicians', async () => {
    const auditor = await employ(office, {
      signInName: 'auditor',
      fullName: 'Audra Tor',
      roles: ['auditor'],
    });
    const technician = await employ(office, {
      signInName: 'tech',
      fullName: 'Theo Wrench',
      roles: ['technician'],
    });

    expect((await auditor.get('/api/trial-balance')).status).toBe(200);
    const refused = await technician.get('/api/trial-balance');
    expect([refused.status, problemOf(refused).code]).toEqual([403, 'NOT_ALLOWED']);
  });
});

describe('the check of the projections', () => {
  it('finds months, heads, exposures, due points and chains as the facts say', async () => {
    const { code, out } = await command('rebuild.js');

    expect(out).not.toMatch(/differ/);
    expect(code).toBe(0);
  });

  it.each([
    [
      'a month',
      `UPDATE bucket SET flights = flights + 1`,
      `UPDATE bucket SET flights = flights - 1`,
      /month/,
    ],
    [
      'a head',
      `UPDATE carrier SET minutes = minutes + 1 WHERE kind = 'airframe'`,
      `UPDATE carrier SET minutes = minutes - 1 WHERE kind = 'airframe'`,
      /head of/,
    ],
    [
      'a due point',
      `UPDATE due_point SET due_at = due_at + 1`,
      `UPDATE due_point SET due_at = due_at - 1`,
      /due point of/,
    ],
    [
      'an entry of the journal',
      `ALTER TABLE journal_entry DISABLE TRIGGER ALL; UPDATE journal_entry SET body = replace(body, 'Test', 'Tost') WHERE kind = 'engine-changed'; ALTER TABLE journal_entry ENABLE ALWAYS TRIGGER record_guard`,
      `ALTER TABLE journal_entry DISABLE TRIGGER ALL; UPDATE journal_entry SET body = replace(body, 'Tost', 'Test') WHERE kind = 'engine-changed'; ALTER TABLE journal_entry ENABLE ALWAYS TRIGGER record_guard`,
      /journal entry of/,
    ],
  ])('finds %s that was changed behind its back', async (_, change, restore, told) => {
    const { code, out } = await tamperedWith(change, restore, () => command('rebuild.js'));

    expect(out).toMatch(told);
    expect(code).toBe(1);
  });
});
