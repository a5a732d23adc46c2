import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { logFlights } from '../support/scenario/acts.js';
import { type InService, putInService } from '../support/scenario/in-service.js';
import { minutesOf } from '../support/scenario/instants.js';
import { type Office, openOffice } from '../support/scenario/office.js';
import { done, problemOf } from '../support/scenario/problem.js';

interface Row {
  readonly id: string;
  readonly serialNumber: string;
  readonly engineSerial: string | null;
  readonly airframe: string | null;
  readonly positionNumber: number | null;
  readonly status: string;
  readonly remainingCycles: number | null;
  readonly limit: number | null;
  readonly document: string | null;
  readonly projectedOn: string | null;
  readonly basis: string;
  readonly reason: string | null;
}

interface Page {
  readonly rows: readonly Row[];
  readonly next: string | null;
}

const HOUR = 60;
/** Flights of one hour, every two hours, within the last 90 days. */
const RECENT = 90;

/** The whole minute so many minutes ago, counted as the scenarios do. */
const minuteAgo = (minutes: number): number => Math.floor(minutesOf(new Date(Date.now() - minutes * 60_000)));

let office: Office;
let fleet: InService;

/** Sets what a part has used since new, by a limit of its own part number: so each can be put where it is wanted. */
async function withLimit(partNumber: string, cycles: number): Promise<void> {
  for (const ratingCode of ['A', 'B'])
    await fleet.register.lifeLimit({ partNumber, engineModelId: fleet.modelId, ratingCode, cycles });
}

/** An engine in the register whose disk has this part number, put on the second airframe. */
async function engineWith(
  serial: string,
  partNumber: string,
  opened: number | null,
  position: number | null,
): Promise<void> {
  const { register, modelId } = fleet;
  const engine = await register.component({
    kind: 'engine',
    serialNumber: serial,
    engineModelId: modelId,
    slots: [{ kind: 'part', name: 'Disk', lifeLimited: true }],
  });
  await register.opening({ componentId: engine.id }, [{ ratingCode: 'A', minutes: 0, cycles: 0 }]);
  await register.rating(engine.id, 'A');
  const part = await register.component({
    kind: 'part',
    partNumber,
    serialNumber: `${serial}-D`,
    engineModelId: modelId,
    lifeLimited: true,
  });
  await register.opening({ componentId: part.id }, [{ ratingCode: 'A', minutes: 0, cycles: opened }]);
  await register.place(part.id, { slotId: engine.slots[0]?.id ?? '' });
  const target = fleet.airframes[1]?.positions
    .find((each) => each.number === position)
    ?.slots.find((slot) => slot.kind === 'engine');
  await register.place(engine.id, target === undefined ? { locationName: 'Store' } : { slotId: target.id });
}

beforeAll(async () => {
  office = await openOffice();
  fleet = await putInService(office.administrator, { days: 0 });
  await withLimit('K-NEAR', 1200);
  await withLimit('K-OVER', 1000);
  await engineWith('ZZ-NEAR', 'K-NEAR', 1000, 1);
  await engineWith('ZZ-OVER', 'K-OVER', 995, 2);
  await engineWith('ZZ-UNKNOWN', 'K-NEAR', null, null);
  const second = fleet.airframes[1];
  if (second === undefined) throw new Error('no second airframe');
  // Ten flights on the second airframe and thirty on the first, all within the last ninety days.
  const start = minuteAgo(20 * 1440);
  const hourly = (count: number, mark: string) =>
    Array.from({ length: count }, (_, index) => ({
      page: `${mark}${1000 + index}`,
      takeOff: start + index * 2 * HOUR,
      landing: start + index * 2 * HOUR + HOUR,
    }));
  done(await logFlights(office.administrator, second.id, hourly(10, 'S')));
  done(await logFlights(office.administrator, fleet.airframe.id, hourly(30, 'F')));
}, 120_000);

afterAll(() => office?.close(), 30_000);

const page = async (query = ''): Promise<Page> =>
  done(await office.administrator.get<Page>(`/api/due-points${query}`));

describe('the due list', () => {
  it('puts what is over on top, then what is not verified, then what is nearest in time', async () => {
    const { rows } = await page();

    expect(rows[0]).toMatchObject({
      serialNumber: 'ZZ-OVER-D',
      status: 'over',
      remainingCycles: -5,
      limit: 1000,
      basis: 'Past its limit',
      projectedOn: null,
    });
    expect(rows[1]).toMatchObject({
      serialNumber: 'ZZ-UNKNOWN-D',
      status: 'not-verified',
      remainingCycles: null,
      airframe: null,
    });
    expect(rows[1]?.reason).toBe('Its cycles are not known');
    expect(rows[2]).toMatchObject({
      serialNumber: 'ZZ-NEAR-D',
      engineSerial: 'ZZ-NEAR',
      airframe: 'ZZ-102',
      positionNumber: 1,
      status: 'soon',
      remainingCycles: 190,
    });
  });

  it('projects a date from the average use of the last 90 days and says so', async () => {
    const { rows } = await page();
    const near = rows.find((row) => row.serialNumber === 'ZZ-NEAR-D');

    // 190 cycles at 10 in 90 days are 1710 days.
    const expected = new Date(Date.now() + Math.floor((190 * RECENT) / 10) * 86_400_000)
      .toISOString()
      .slice(0, 10);
    expect(near).toMatchObject({
      projectedOn: expected,
      basis: 'Average use of the last 90 days',
      document: 'Manual, chapter 05',
    });
  });

  it('ranks more cycles left on an airframe that flies more before fewer on one that flies less', async () => {
    const order = (await page()).rows.map((row) => row.serialNumber);

    // First airframe: 18,970 left at 30 in 90 days, 56,910 days. Nothing else flies on it.
    expect(order.indexOf('ZZ-NEAR-D')).toBeLessThan(order.indexOf('ZZ-E1-D'));
    expect(order.indexOf('ZZ-E1-D')).toBeLessThan(order.indexOf('ZZ-E3-D'));
  });

  it('says that the clock of a part off the wing stands still', async () => {
    const spare = (await page()).rows.find((row) => row.serialNumber === 'ZZ-E3-D');

    expect(spare).toMatchObject({
      airframe: null,
      remainingCycles: 19_000,
      projectedOn: null,
      basis: 'On no airframe: its clock stands still',
    });
  });

  it.each([1, 2, 3, 5])('gives the same rows in the same order by pages of %i', async (limit) => {
    const whole = await page('?limit=200');
    const paged: Row[] = [];
    let next: string | null = '';
    while (next !== null) {
      const answer: Page = await page(`?limit=${limit}${next === '' ? '' : `&after=${next}`}`);
      expect(answer.rows.length).toBeLessThanOrEqual(limit);
      paged.push(...answer.rows);
      next = answer.next;
    }

    expect(whole.next).toBeNull();
    expect(paged.map((row) => row.id)).toEqual(whole.rows.map((row) => row.id));
    expect(new Set(paged.map((row) => row.id)).size).toBe(paged.length);
  });

  it('tells of one airframe alone when asked', async () => {
    const { rows } = await page(`?airframeId=${fleet.airframe.id}`);

    expect(rows.map((row) => row.serialNumber).sort()).toEqual(['ZZ-E1-D', 'ZZ-E1-H', 'ZZ-E2-D', 'ZZ-E2-H']);
  });

  it('refuses a place in the list that is none, and more rows than 200', async () => {
    const nowhere = await office.administrator.get('/api/due-points?after=bm93aGVyZQ');
    const tooMany = await office.administrator.get('/api/due-points?limit=201');

    expect([nowhere.status, problemOf(nowhere).fields?.[0]?.field]).toEqual([400, 'after']);
    expect([tooMany.status, problemOf(tooMany).fields?.[0]?.field]).toEqual([400, 'limit']);
  });

  it('follows the flights: one more and one fewer is left', async () => {
    const second = fleet.airframes[1];
    const at = minuteAgo(6 * HOUR);
    done(
      await logFlights(office.administrator, second?.id ?? '', [
        { page: 'S2000', takeOff: at, landing: at + HOUR },
      ]),
    );

    expect((await page()).rows.find((row) => row.serialNumber === 'ZZ-NEAR-D')?.remainingCycles).toBe(189);
  });
});
