import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { logFlights, onTheWire, recordChange } from '../support/scenario/acts.js';
import { DAY, daily, type InService, putInService } from '../support/scenario/in-service.js';
import { instantAt } from '../support/scenario/instants.js';
import { type Office, openOffice } from '../support/scenario/office.js';
import { done, problemOf } from '../support/scenario/problem.js';

interface Line {
  readonly at: string;
  readonly placed: string | null;
  readonly title: string;
  readonly detail: string;
  readonly struck: { readonly by: string; readonly reason: string } | null;
  readonly adds: {
    readonly minutes: number | null;
    readonly cycles: { readonly units: number; readonly denominator: number } | null;
  } | null;
  readonly totals: { readonly minutes: number | null; readonly cycles: number | null };
  readonly entry: { readonly number: number; readonly by: string; readonly hash: string };
}

interface History {
  readonly subject: { readonly label: string };
  readonly lines: readonly Line[];
  readonly totals: {
    readonly lines: number;
    readonly minutes: number | null;
    readonly cycles: number | null;
  };
}

let office: Office;
let fleet: InService;
let struckId: string;

beforeAll(async () => {
  office = await openOffice();
  const { administrator } = office;
  fleet = await putInService(administrator, { days: 3 });
  // Engine 1 comes off after the page of day 2; the last page was entered wrongly and is corrected; engine 2 is shut down once.
  done(
    await recordChange(administrator, {
      airframeId: fleet.airframe.id,
      positionNumber: 1,
      slot: 'engine',
      outgoingSerial: 'ZZ-E1',
      incomingSerial: 'ZZ-E3',
      boundary: { kind: 'after-page', page: 'P1002' },
    }),
  );
  const [wrong, shut] = daily(2, { from: 3 });
  if (wrong === undefined || shut === undefined) throw new Error('no flights');
  const logged = done(await logFlights(administrator, fleet.airframe.id, [wrong]));
  struckId = logged.flights[0]?.id ?? '';
  const flight = onTheWire({ ...wrong, landing: wrong.landing + 15 });
  done(
    await administrator.post(`/api/flights/${struckId}/correct`, { reason: 'Landing time misread', flight }),
  );
  done(
    await logFlights(administrator, fleet.airframe.id, [
      { ...shut, exceptions: [{ positionNumber: 2, kind: 'shut-down', minutes: 30 }] },
    ]),
  );
}, 120_000);

afterAll(() => office?.close(), 30_000);

const historyOf = async (kind: 'airframes' | 'components', id: string): Promise<History> =>
  done(await office.administrator.get<History>(`/api/${kind}/${id}/history`));

const engineHistory = (serial: string): Promise<History> => {
  const engine = fleet.engines.find((each) => each.serialNumber === serial);
  return historyOf('components', engine?.id ?? '');
};

const ofTitle = (history: History, title: string): Line[] =>
  history.lines.filter((line) => line.title === title);

describe('the history of an engine', () => {
  it('runs from its opening balance through every flight it was on, in order', async () => {
    const { lines } = await engineHistory('ZZ-E1');

    const times = lines.map((line) => line.at);
    expect(times).toEqual([...times].sort());
    expect(ofTitle({ lines } as History, 'Opening balance')[0]).toMatchObject({
      adds: { minutes: 60_000 },
      totals: { minutes: 60_000, cycles: 1000 },
    });
    expect(
      lines
        .filter((line) => line.title === 'Flight')
        .map((line) => [line.at, line.totals.minutes, line.totals.cycles]),
    ).toEqual([
      [instantAt(720), 60_120, 1001],
      [instantAt(DAY + 720), 60_240, 1002],
      [instantAt(2 * DAY + 720), 60_360, 1003],
    ]);
  });

  it('ends at the counters that the engine itself shows', async () => {
    for (const engine of fleet.engines) {
      const { totals } = await historyOf('components', engine.id);
      const shown = done(
        await office.administrator.get<{
          counters: { sinceNew: { minutes: number; cycles: { units: number; denominator: number } } };
        }>(`/api/components/${engine.id}`),
      ).counters.sinceNew;
      expect([engine.serialNumber, totals.minutes, totals.cycles]).toEqual([
        engine.serialNumber,
        shown.minutes,
        shown.cycles.units / shown.cycles.denominator,
      ]);
    }
  });

  it('tells where it went, by the log page where that is what is known', async () => {
    const { lines } = await engineHistory('ZZ-E1');

    expect(lines.find((line) => line.title === 'Removed' && line.detail.includes('ZZ-101'))).toMatchObject({
      at: instantAt(2 * DAY + 720),
      placed: 'after log page P1002',
      detail: 'From position 1 of ZZ-101; Test',
    });
    expect(lines.find((line) => line.title === 'Engine change')?.detail).toMatch(/ZZ-E1/);
    expect(lines.at(-1)?.detail ?? '').not.toBe('');
  });

  it('adds what the engine ran where it was shut down in flight', async () => {
    const shut = ofTitle(await engineHistory('ZZ-E2'), 'Flight').at(-1);

    expect(shut?.adds).toEqual({ minutes: 90, cycles: { units: 1, denominator: 1 } });
    expect(shut?.detail).toMatch(/shut down 30 min of 2:00 h/);
  });

  it('keeps a voided flight struck, with its reason, and counts the one that corrects it', async () => {
    const flights = ofTitle(await engineHistory('ZZ-E3'), 'Flight').filter((line) =>
      line.detail.includes('P1003'),
    );

    const struck = flights.find((line) => line.struck !== null);
    const corrected = flights.find((line) => line.struck === null);
    expect(struck).toMatchObject({
      struck: { reason: 'Landing time misread', by: office.founded.fullName },
      totals: { minutes: 60_000, cycles: 1000 },
    });
    expect(corrected).toMatchObject({ adds: { minutes: 135 }, totals: { minutes: 60_135, cycles: 1001 } });
    expect(corrected?.detail).toMatch(/corrects an entry struck before/);
  });

  it('names the entry of the journal behind each line, with its hash', async () => {
    const { lines } = await engineHistory('ZZ-E3');
    const entries = done(
      await office.administrator.get<{ rows: { number: number; hash: string; by: string }[] }>(
        `/api/journal?limit=500`,
      ),
    ).rows;
    const known = new Map(entries.map((entry) => [entry.number, entry]));

    expect(lines.length).toBeGreaterThan(5);
    for (const { entry } of lines) {
      const found = known.get(entry.number);
      expect(found?.hash.startsWith(entry.hash)).toBe(true);
      expect(found?.by).toBe(entry.by);
    }
  });

  it('knows no totals after a gap in the trace, and counts the worst case once that is accepted', async () => {
    const disk = fleet.engines[4]?.partIds[1] ?? '';
    const gap = done(
      await office.administrator.post<{ id: string }>('/api/trace-gaps', {
        componentId: disk,
        from: instantAt(5 * DAY),
        to: instantAt(6 * DAY),
        note: 'Page lost',
      }),
    );
    expect((await historyOf('components', disk)).totals).toMatchObject({ minutes: null, cycles: null });

    done(
      await office.administrator.post('/api/gap-acceptances', {
        componentId: disk,
        traceGapId: gap.id,
        acceptedBy: 'Authority',
        reference: 'Letter 7',
        cycles: 12,
        minutes: 600,
      }),
    );
    expect((await historyOf('components', disk)).totals).toMatchObject({ minutes: 60_600, cycles: 1012 });
  });
});

describe('the history of an airframe', () => {
  it('tells flights, what was put on and taken off, and one cycle a flight', async () => {
    const history = await historyOf('airframes', fleet.airframe.id);

    expect(history.subject.label).toBe('Airframe ZZ-101');
    expect(ofTitle(history, 'Removed')[0]?.detail).toBe('Engine ZZ-E1 from position 1; Test');
    expect(ofTitle(history, 'Flight').filter((line) => line.struck === null)).toHaveLength(5);
    expect(history.totals).toMatchObject({ minutes: 600_000 + 5 * 120 + 15, cycles: 5005 });
    expect(history.totals.lines).toBe(history.lines.length);
  });

  it('refuses a subject nobody has', async () => {
    for (const kind of ['airframes', 'components']) {
      const answer = await office.administrator.get(
        `/api/${kind}/01900000-0000-7000-8000-000000000000/history`,
      );
      expect([answer.status, problemOf(answer).code]).toEqual([404, 'NOT_FOUND']);
    }
  });
});

describe('the journal about a subject', () => {
  it('is read by pages, in the order of its entries', async () => {
    const path = `/api/journal?subject=${fleet.airframe.id}`;
    const whole = done(
      await office.administrator.get<{ rows: { number: number; kind: string }[] }>(path),
    ).rows;
    const paged: number[] = [];
    for (let next: string | null = '0'; next !== null; ) {
      const page: { rows: { number: number }[]; next: string | null } = done(
        await office.administrator.get<{ rows: { number: number }[]; next: string | null }>(
          `${path}&limit=2&after=${next}`,
        ),
      );
      paged.push(...page.rows.map((row) => row.number));
      next = page.next;
    }

    expect(paged).toEqual(whole.map((entry) => entry.number));
    expect(whole.map((entry) => entry.kind)).toEqual(
      expect.arrayContaining(['airframe-added', 'flight-logged', 'engine-changed']),
    );
    expect(paged).toEqual([...paged].sort((a, b) => a - b));
  });
});
