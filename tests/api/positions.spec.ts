import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { atMinute, logFlights, recordChange } from '../support/scenario/acts.js';
import { DAY, daily, type InService, putInService } from '../support/scenario/in-service.js';
import { instantAt } from '../support/scenario/instants.js';
import { type Office, openOffice } from '../support/scenario/office.js';
import { done, problemOf } from '../support/scenario/problem.js';

interface Counters {
  readonly minutes: number | null;
  readonly cycles: { readonly units: number; readonly denominator: number } | null;
}

interface Card {
  readonly number: number;
  readonly emptySince: string | null;
  readonly pod: { readonly serialNumber: string } | null;
  readonly engine: {
    readonly id: string;
    readonly serialNumber: string;
    readonly ratingCode: string | null;
    readonly installedAt: string;
    readonly precision: string;
    readonly sinceNew: Counters;
    readonly sinceInstalled: Counters;
    readonly status: string;
    readonly tightest: {
      readonly serialNumber: string;
      readonly remainingCycles: number | null;
      readonly reason: string | null;
    } | null;
  } | null;
}

interface Positions {
  readonly at: string | null;
  readonly airframe: {
    readonly registration: string;
    readonly lastLogPage: string | null;
    readonly counters: Counters;
  };
  readonly positions: readonly Card[];
}

let office: Office;
let fleet: InService;

beforeAll(async () => {
  office = await openOffice();
  fleet = await putInService(office.administrator, { days: 3 });
  // On day 3 engine 1 comes off, engine 3 goes on after that day's flights, and two more days are flown.
  done(
    await recordChange(office.administrator, {
      airframeId: fleet.airframe.id,
      positionNumber: 1,
      slot: 'engine',
      outgoingSerial: 'ZZ-E1',
      incomingSerial: 'ZZ-E3',
      boundary: { kind: 'after-page', page: 'P1002' },
    }),
  );
  done(await logFlights(office.administrator, fleet.airframe.id, daily(2, { from: 3 })));
}, 120_000);

afterAll(() => office?.close(), 30_000);

const positions = async (query = '') =>
  done(await office.administrator.get<Positions>(`/api/airframes/${fleet.airframe.id}/positions${query}`));

const card = (answer: { readonly positions: readonly Card[] }, number: number): Card => {
  const found = answer.positions.find((each) => each.number === number);
  if (found === undefined) throw new Error(`no position ${number}`);
  return found;
};

describe('the positions of an airframe', () => {
  it('shows what is installed now, since when, and its counters since new and since then', async () => {
    const engine = card(await positions(), 1).engine;

    expect(engine).toMatchObject({
      serialNumber: 'ZZ-E3',
      ratingCode: 'A',
      installedAt: instantAt(2 * DAY + 720),
      precision: 'page',
      sinceNew: { minutes: 60_000 + 240, cycles: { units: 1002, denominator: 1 } },
      sinceInstalled: { minutes: 240, cycles: { units: 2, denominator: 1 } },
    });
  });

  it('names the tightest part, with what it has left', async () => {
    const engine = card(await positions(), 2).engine;

    expect(engine?.status).toBe('later');
    expect(engine?.tightest).toMatchObject({ remainingCycles: 20_000 - 1005, reason: null });
    expect(['ZZ-E2-H', 'ZZ-E2-D']).toContain(engine?.tightest?.serialNumber);
  });

  it('shows what was installed at an instant in the past, with the counters then', async () => {
    const then = await positions(`?at=${instantAt(DAY + 800)}`);

    expect(then.at).toBe(instantAt(DAY + 800));
    expect(then.airframe.lastLogPage).toBe('P1001');
    expect(card(then, 1).engine).toMatchObject({
      serialNumber: 'ZZ-E1',
      sinceNew: { minutes: 60_240, cycles: { units: 1002, denominator: 1 } },
      tightest: { remainingCycles: 20_000 - 1002 },
    });
  });

  it('says since when a position is empty', async () => {
    const other = fleet.airframes[1];
    if (other === undefined) throw new Error('no second airframe');
    const install = { airframeId: other.id, positionNumber: 2, slot: 'engine' as const };
    done(
      await recordChange(office.administrator, {
        ...install,
        outgoingSerial: null,
        incomingSerial: 'ZZ-E5',
        boundary: atMinute(10 * DAY),
      }),
    );
    done(
      await recordChange(office.administrator, {
        ...install,
        outgoingSerial: 'ZZ-E5',
        incomingSerial: null,
        boundary: atMinute(12 * DAY),
      }),
    );

    const answer = done(await office.administrator.get<Positions>(`/api/airframes/${other.id}/positions`));

    expect(card(answer, 2)).toMatchObject({ engine: null, emptySince: instantAt(12 * DAY) });
    expect(card(answer, 1)).toMatchObject({ engine: null, emptySince: null });
  });

  it('does not call an engine in limits while a place for a limited part is empty', async () => {
    const [engine] = fleet.engines.filter((each) => each.serialNumber === 'ZZ-E2');
    const disk = engine?.partIds[1];
    if (disk === undefined) throw new Error('no disk');
    const places = done(await office.administrator.get<{ id: string }[]>(`/api/components/${disk}/places`));
    done(
      await office.administrator.post(`/api/placements/${places[0]?.id}/void`, {
        reason: 'It is another part',
      }),
    );

    expect(card(await positions(), 2).engine).toMatchObject({
      status: 'not-verified',
      tightest: { description: 'Disk', reason: 'No part is recorded there' },
    });
  });

  it('refuses an airframe nobody has, and a moment that is none', async () => {
    const nobody = '01900000-0000-7000-8000-000000000000';
    const missing = await office.administrator.get(`/api/airframes/${nobody}/positions`);
    const malformed = await office.administrator.get(
      `/api/airframes/${fleet.airframe.id}/positions?at=yesterday`,
    );

    expect([missing.status, problemOf(missing).code]).toEqual([404, 'NOT_FOUND']);
    expect([malformed.status, problemOf(malformed).fields?.[0]?.field]).toEqual([400, 'at']);
  });
});

describe('the board', () => {
  it('shows every airframe with the same positions, and what it has flown', async () => {
    const board = done(
      await office.administrator.get<
        {
          airframe: { registration: string; minutes: number; flights: number; lastFlightAt: string | null };
          positions: Card[];
        }[]
      >('/api/board'),
    );

    expect(board.map((row) => row.airframe.registration)).toEqual(['ZZ-101', 'ZZ-102']);
    expect(board[0]?.airframe).toMatchObject({
      minutes: 600_000 + 600,
      flights: 5005,
      lastFlightAt: instantAt(4 * DAY + 720),
    });
    expect(board[0]?.positions).toEqual((await positions()).positions);
  });
});
