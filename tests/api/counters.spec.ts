import { beforeAll, describe, expect, it } from '@jest/globals';
import { fleetDesk } from '../support/logbook/fleet-desk.js';
import { logFlights, recordChange } from '../support/scenario/acts.js';
import { dateAt, instantAt } from '../support/scenario/instants.js';
import { done } from '../support/scenario/problem.js';
import type { RegisteredAirframe, RegisteredComponent } from '../support/scenario/register.js';

const desk = fleetDesk({ engines: 0, airframes: 0 });

interface Cycles {
  readonly units: number;
  readonly denominator: number;
}

interface Line {
  readonly kind: string;
  readonly minutes: number | null;
  readonly cycles: Cycles | null;
  readonly running: { readonly minutes: number | null; readonly cycles: Cycles | null };
  readonly carriedBy: { readonly serialNumber: string } | null;
  readonly carrier: { readonly label: string; readonly id: string } | null;
  readonly rule: {
    readonly perTouchAndGo: number;
    readonly denominator: number;
    readonly source: string;
  } | null;
  readonly exceptions: readonly { readonly logPage: string }[];
  readonly from: string | null;
  readonly to: string | null;
  readonly note: string | null;
  readonly source: string | null;
}

interface Counter {
  readonly basis: string;
  readonly total: { readonly minutes: number | null; readonly cycles: Cycles | null };
  readonly reset: {
    readonly kind: string;
    readonly evidence: string;
    readonly moment: { text: string | null };
  } | null;
  readonly addends: readonly Line[];
}

interface Answer {
  readonly moment: { readonly at: string; readonly precision: string; readonly text: string | null } | null;
  readonly counters: readonly Counter[];
}

let airframe: RegisteredAirframe;
let module: RegisteredComponent;
const engines: RegisteredComponent[] = [];

const client = () => desk.office.administrator;
const countersOf = async (id: string, query = '') =>
  done(await client().get<Answer>(`/api/components/${id}/counters${query}`));
const counterOf = async (id: string, basis: string, query = '') => {
  const found = (await countersOf(id, query)).counters.find((each) => each.basis === basis);
  if (found === undefined) throw new Error(`no counter since ${basis}`);
  return found;
};

/** The lines added up exactly, over the product of denominators. */
function sumOf(lines: readonly Line[]): { minutes: number | null; cycles: number | null } {
  const whole = lines.map((line) =>
    line.cycles === null ? null : line.cycles.units / line.cycles.denominator,
  );
  return {
    minutes: lines.some((line) => line.minutes === null)
      ? null
      : lines.reduce((sum, line) => sum + (line.minutes ?? 0), 0),
    // Halves are exact in binary.
    cycles: whole.includes(null) ? null : whole.reduce<number>((sum, each) => sum + (each ?? 0), 0),
  };
}

beforeAll(async () => {
  const { register } = desk;
  const typeId = await register.airframeType('CT-2', 2);
  const modelId = await register.engineModel('CM-1', {
    ratings: ['A', 'B'],
    rules: [{ perFlight: 2, perTouchAndGo: 1, denominator: 2 }],
  });
  airframe = await register.airframe('ZZ-C01', typeId);
  await register.opening({ airframeId: airframe.id }, [{ ratingCode: null, minutes: 6_000, cycles: 50 }]);
  module = await register.component({ kind: 'module', serialNumber: 'CM-M', engineModelId: modelId });
  await register.post('/api/openings', {
    ...{ componentId: module.id, at: instantAt(0), basis: 'new', source: 'Log card M' },
    ...{ trace: 'stated', traceNote: 'Statement of the seller' },
    rows: [
      { ratingCode: 'A', minutes: 600, cycles: 21, cycleDenominator: 2 },
      { ratingCode: 'B', minutes: 60, cycles: 3 },
    ],
  });
  for (const serialNumber of ['CM-E1', 'CM-E2']) {
    const engine = await register.component({
      ...{ kind: 'engine', serialNumber, engineModelId: modelId },
      slots: [{ kind: 'module', name: 'Fan', lifeLimited: false }],
    });
    await register.opening({ componentId: engine.id }, [{ ratingCode: 'A', minutes: 600, cycles: 10 }]);
    await register.rating(engine.id, 'A');
    await register.place(engine.id, { locationName: 'Store' });
    engines.push(engine);
  }
  const [first, second] = engines;
  await register.place(module.id, { slotId: first?.slots[0]?.id ?? '' });
  const change = async (minute: number, off: string | null, on: string | null) =>
    done(
      await recordChange(client(), {
        ...{ airframeId: airframe.id, positionNumber: 1, slot: 'engine' },
        ...{ outgoingSerial: off, incomingSerial: on, boundary: { kind: 'instant', at: instantAt(minute) } },
      }),
    );
  await change(10, null, 'CM-E1');
  const fly = async (page: string, takeOff: number, more = {}) =>
    done(await logFlights(client(), airframe.id, [{ page, takeOff, landing: takeOff + 60, ...more }]));
  await fly('C1', 100, { touchAndGoes: 1 });
  await fly('C2', 200, { exceptions: [{ positionNumber: 1, kind: 'shut-down', minutes: 25 }] });
  await register.rating(first?.id ?? '', 'B', 300);
  await fly('C3', 400);
  await change(500, 'CM-E1', null);
  await register.place(module.id, { locationName: 'Store' }, 600);
  await register.place(module.id, { slotId: second?.slots[0]?.id ?? '' }, 700);
  await register.post('/api/resets', {
    ...{ componentId: module.id, kind: 'repair', evidence: 'Repair card 9' },
    boundary: { kind: 'after-page', page: 'C3', airframeId: airframe.id },
  });
  await change(800, null, 'CM-E2');
  await fly('C4', 1_500, { touchAndGoes: 2 });
  await fly('C5', 3_000);
}, 60_000);

describe('the counters of a module that two engines carried', () => {
  it('are explained line by line: each balance, and each span with what carried it', async () => {
    const { total, addends } = await counterOf(module.id, 'new');

    // 660 min and 13.5 cycles told; C1 1.5, C2 1 less 25 min, C3 1; then C4 2 and C5 1.
    expect(total).toEqual({ minutes: 660 + 60 + 35 + 60 + 120, cycles: { units: 20, denominator: 1 } });
    expect(addends.map(({ kind, carriedBy, minutes }) => [kind, carriedBy?.serialNumber, minutes])).toEqual([
      ['opening', undefined, 600],
      ['opening', undefined, 60],
      ['exposure', 'CM-E1', 95],
      ['exposure', 'CM-E1', 60],
      ['exposure', 'CM-E2', 120],
    ]);
    expect(addends[0]).toMatchObject({
      source: 'Log card M',
      note: 'Statement of the seller',
      trace: 'stated',
    });
    expect(addends[2]).toMatchObject({
      carrier: { label: 'ZZ-C01 position 1' },
      rule: { perTouchAndGo: 1, denominator: 2, source: 'CM-1 manual' },
      exceptions: [{ logPage: 'C2' }],
      ratingCode: 'A',
      cycles: { units: 5, denominator: 2 },
    });
  });

  it('add up exactly, whatever they are counted from and whenever', async () => {
    for (const minute of [0, 10, 160, 170, 260, 350, 460, 500, 650, 800, 1_560, 2_000, 3_060])
      for (const id of [module.id, ...engines.map((engine) => engine.id)])
        for (const { total, addends } of (await countersOf(id, `?at=${instantAt(minute)}`)).counters) {
          const exact = total.cycles === null ? null : total.cycles.units / total.cycles.denominator;
          expect(sumOf(addends)).toEqual({ minutes: total.minutes, cycles: exact });
          expect(addends.at(-1)?.running ?? total).toEqual(total);
        }
  });

  it('since repair begin at the page that tells it, and say which', async () => {
    const { reset, total } = await counterOf(module.id, 'repair');

    expect(reset).toMatchObject({
      ...{ kind: 'repair', evidence: 'Repair card 9' },
      moment: { kind: 'after-page', precision: 'page', text: 'C3' },
    });
    expect(total).toEqual({ minutes: 120, cycles: { units: 3, denominator: 1 } });
  });

  it('move with that page when its flight is corrected', async () => {
    const { rows } = done(
      await client().get<{ rows: { id: string; logPage: string }[] }>(
        `/api/airframes/${airframe.id}/flights`,
      ),
    );
    const third = rows.find(({ logPage }) => logPage === 'C3');
    const flight = (landing: number) => ({
      ...{ logPage: 'C3', fromStation: 'VDL', toStation: 'KRN', touchAndGoes: 0 },
      ...{ takeOffAt: instantAt(400), landingAt: instantAt(landing) },
    });
    const corrected = done(
      await client().post<{ flights: { id: string }[] }>(`/api/flights/${third?.id}/correct`, {
        ...{ reason: 'Read wrongly', flight: flight(470) },
      }),
    );

    expect((await counterOf(module.id, 'repair')).reset).toMatchObject({
      moment: { at: instantAt(470), text: 'C3' },
    });
    done(
      await client().post(`/api/flights/${corrected.flights[0]?.id}/correct`, {
        ...{ reason: 'It was right', flight: flight(460) },
      }),
    );
  });

  it('are those of any moment: after a log page, before the first or after the last flight of a day', async () => {
    const whose = `airframeId=${airframe.id}`;
    const at = async (query: string) => (await counterOf(module.id, 'new', query)).total.minutes;

    expect(await at(`?page=C1&${whose}`)).toBe(720);
    expect(await at(`?beforeFirst=${dateAt(1)}&${whose}`)).toBe(815);
    expect(await at(`?afterLast=${dateAt(1)}&${whose}`)).toBe(875);
    expect((await countersOf(module.id, `?afterLast=${dateAt(1)}`)).moment).toMatchObject({
      ...{ precision: 'day', text: dateAt(1), kind: 'after-last' },
    });
  });

  it('are refused at two moments, on a page nobody logged, and at one that has not come', async () => {
    const refused = async (query: string) => {
      const answer = await client().get<{ code: string }>(`/api/components/${module.id}/counters${query}`);
      return [answer.status, answer.body.code];
    };

    expect(await refused(`?at=${instantAt(0)}&page=C1`)).toEqual([400, 'INVALID_FIELDS']);
    expect(await refused(`?page=C9&airframeId=${airframe.id}`)).toEqual([422, 'NO_SUCH_LOG_PAGE']);
    expect(await refused('?at=2200-01-01T00:00Z')).toEqual([422, 'IN_THE_FUTURE']);
    expect(await refused('?at=yesterday')).toEqual([400, 'INVALID_FIELDS']);
  });

  it('lead to the flights of a line, each with what was counted of it', async () => {
    const line = (await counterOf(module.id, 'new')).addends[2];
    const { rows, next } = done(
      await client().get<{ rows: { logPage: string; counts: { minutes: number } }[]; next: string | null }>(
        `/api/counter-flights?carrierId=${line?.carrier?.id}&from=${line?.from}&to=${line?.to}&limit=1`,
      ),
    );
    const more = done(
      await client().get<{ rows: { logPage: string; counts: { minutes: number } }[]; next: string | null }>(
        `/api/counter-flights?carrierId=${line?.carrier?.id}&from=${line?.from}&to=${line?.to}&limit=1&after=${next}`,
      ),
    );

    expect(rows).toMatchObject([{ logPage: 'C1', counts: { minutes: 60 } }]);
    expect(more).toMatchObject({ rows: [{ logPage: 'C2', counts: { minutes: 35 } }], next: null });
  });
});

describe('the counters of an airframe', () => {
  it('are its balance and a line a year, and each position engine by engine', async () => {
    const found = done(
      await client().get<{
        total: Counter['total'];
        addends: Line[];
        positions: {
          number: number;
          total: Counter['total'];
          addends: (Line & { engine: { serialNumber: string } | null })[];
        }[];
      }>(`/api/airframes/${airframe.id}/counters`),
    );

    expect(found.total).toEqual({ minutes: 6_300, cycles: { units: 55, denominator: 1 } });
    expect(sumOf(found.addends)).toEqual({ minutes: 6_300, cycles: 55 });
    const [one, two] = found.positions;
    expect(one?.total).toEqual({ minutes: 6_275, cycles: { units: 55, denominator: 1 } });
    expect(one?.addends.flatMap(({ engine }) => engine?.serialNumber ?? [])).toEqual(['CM-E1', 'CM-E2']);
    expect(sumOf(one?.addends ?? [])).toEqual({ minutes: 6_275, cycles: 55 });
    expect(two?.total.minutes).toBe(6_300);
  });
});
