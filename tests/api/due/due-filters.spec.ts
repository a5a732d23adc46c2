import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { logFlights } from '../../support/scenario/acts.js';
import { type InService, putInService } from '../../support/scenario/in-service.js';
import { minutesOf } from '../../support/scenario/instants.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { recordRequirement } from '../../support/scenario/requirements.js';

interface Row {
  readonly id: string;
  readonly kind: string;
  readonly requirement: { readonly code: string; readonly kind: string } | null;
  readonly componentId: string | null;
  readonly serialNumber: string | null;
  readonly partNumber: string | null;
  readonly airframeId: string | null;
  readonly positionNumber: number | null;
  readonly status: string;
  readonly dimension: string;
  readonly dues: readonly { readonly dimension: string; readonly remaining: number }[];
}

interface Page {
  readonly rows: readonly Row[];
  readonly next: string | null;
}

type Counts = Readonly<
  Record<'over' | 'inTolerance' | 'soon' | 'planned' | 'later' | 'notVerified' | 'total', number>
>;
type Totals = Readonly<Record<'whole' | 'scope' | 'shown', Counts>>;

const SORTS = ['urgency', 'projected', 'subject', 'code', 'remaining'];
const HOUR = 60;

let office: Office;
let fleet: InService;

const page = async (query = ''): Promise<Page> =>
  done(await office.administrator.get<Page>(`/api/due-points${query}`));
const totals = async (query = ''): Promise<Totals> =>
  done(await office.administrator.get<Totals>(`/api/due-points/totals${query}`));
const idsOf = ({ rows }: Page) => rows.map(({ id }) => id);

beforeAll(async () => {
  office = await openOffice();
  fleet = await putInService(office.administrator, { days: 0 });
  const { administrator } = office;
  const start = Math.floor(minutesOf(new Date(Date.now() - 20 * 86_400_000)));
  done(
    await logFlights(
      administrator,
      fleet.airframe.id,
      Array.from({ length: 30 }, (_, index) => ({
        page: `F${1000 + index}`,
        takeOff: start + index * 2 * HOUR,
        landing: start + index * 2 * HOUR + HOUR,
      })),
    ),
  );
  // Engines have 1,000 cycles and 1000:00 hours, the first two 30 of each more: over by 10, soon, planned, not verified.
  const record = (code: string, more: object) => recordRequirement(administrator, code, more);
  done(await record('R-1 OVER', { repeat: { cycles: 1020 }, kind: 'check' }));
  done(await record('R-2 SOON', { repeat: { cycles: 1100, minutes: 90_000 } }));
  done(await record('R-3 PLAN', { repeat: { cycles: 1300 }, kind: 'bulletin' }));
  done(await record('R-4 UNKNOWN', { repeat: { cycles: 500 }, countedFrom: 'overhaul' }));
  done(await record('R-5 LAST', { repeat: { cycles: 1010, minutes: 120_000 }, combine: 'last' }));
  // A life in hours and in cycles: one duty.
  for (const ratingCode of ['A', 'B'])
    done(
      await administrator.post('/api/life-limits', {
        ...{ partNumber: 'K-HUB', engineModelId: fleet.modelId, ratingCode, cycles: 20_000, minutes: 61_900 },
        ...{
          authorisation: 'limited',
          document: 'Manual, chapter 05',
          revision: '9',
          effectiveOn: '2024-01-01',
        },
      }),
    );
}, 120_000);

afterAll(() => office?.close(), 30_000);

describe('a row of the due list', () => {
  it('is one life or requirement of one thing, with all its dimensions inside', async () => {
    const { rows } = await page('?limit=200');
    const keys = rows.map(({ kind, requirement, componentId, airframeId, positionNumber }) =>
      [kind, requirement?.code, componentId ?? `${airframeId} ${positionNumber}`].join(' '),
    );

    expect(new Set(keys).size).toBe(keys.length);
    const hub = rows.find(({ serialNumber }) => serialNumber === 'ZZ-E1-H');
    expect(hub?.dues.map(({ dimension, remaining }) => [dimension, remaining])).toEqual([
      ['minutes', 61_900 - 60_000 - 30 * HOUR],
      ['cycles', 20_000 - 1030],
    ]);
    expect(hub).toMatchObject({ dimension: 'minutes', status: 'soon' });
  });

  it('is the same, whether found as the most urgent or among all', async () => {
    const most = await page('?limit=200');
    const all = await page('?limit=200&withinCycles=10000000&withinHours=1000000&withinDays=100000');
    const told = most.rows.filter(
      ({ status, dimension }) => status !== 'not-verified' && dimension !== 'none',
    );

    expect(all.rows).toEqual(told);
    const lists = await Promise.all(
      SORTS.map(async (sort) => (await page(`?limit=200&sort=${sort}&direction=desc`)).rows),
    );
    const byId = (rows: readonly Row[]) => [...rows].sort((a, b) => (a.id < b.id ? -1 : 1));
    for (const rows of lists) expect(byId(rows)).toEqual(byId(most.rows));
  });
});

describe('sorting and paging of the due list', () => {
  it.each(SORTS.flatMap((sort) => ['asc', 'desc'].map((direction) => [sort, direction])))(
    'by %s, %s, gives the same rows in the same order by pages of 4',
    async (sort, direction) => {
      const whole = await page(`?limit=200&sort=${sort}&direction=${direction}`);
      const paged: string[] = [];
      let next: string | null = '';
      while (next !== null) {
        const after: string = next === '' ? '' : `&after=${next}`;
        const answer: Page = await page(`?limit=4&sort=${sort}&direction=${direction}${after}`);
        paged.push(...idsOf(answer));
        next = answer.next;
      }

      expect(paged).toEqual(idsOf(whole));
    },
  );

  it('descending is ascending turned round', async () => {
    for (const sort of SORTS) {
      const [up, down] = [
        await page(`?limit=200&sort=${sort}`),
        await page(`?limit=200&sort=${sort}&direction=desc`),
      ];
      expect(idsOf(down)).toEqual(idsOf(up).reverse());
    }
  });

  it('refuses the place of another order', async () => {
    const { next } = await page('?limit=2&sort=code');
    const answer = await office.administrator.get(`/api/due-points?limit=2&sort=subject&after=${next}`);

    expect([answer.status, problemOf(answer).fields?.[0]?.field]).toEqual([400, 'after']);
  });
});

describe('filters of the due list', () => {
  it.each(['over', 'soon', 'planned', 'later', 'not-verified'])(
    'by status %s agree with the rows',
    async (status) => {
      const { rows } = await page('?limit=200');
      const filtered = await page(`?limit=200&status=${status}`);

      expect(filtered.rows.length).toBeGreaterThan(0);
      expect(idsOf(filtered).sort()).toEqual(
        rows
          .filter((row) => row.status === status)
          .map(({ id }) => id)
          .sort(),
      );
    },
  );

  it('by kind, part number, text, airframe, position and engine', async () => {
    const { rows } = await page('?limit=200');
    const expected = async (query: string, keep: (row: Row) => boolean) => {
      const kept = rows.filter(keep);
      expect(kept.length).toBeGreaterThan(0);
      expect([query, idsOf(await page(`?limit=200&${query}`)).sort()]).toEqual([
        query,
        kept.map(({ id }) => id).sort(),
      ]);
    };
    const position = fleet.airframe.positions.find(({ number }) => number === 1);
    const [engine] = fleet.engines;
    const beneath = [engine?.id, engine?.moduleId, ...(engine?.partIds ?? [])];
    await expected('kind=check,bulletin', ({ requirement }) =>
      ['check', 'bulletin'].includes(requirement?.kind ?? ''),
    );
    await expected('partNumber=k-hub', ({ partNumber }) => partNumber === 'K-HUB');
    await expected('search=r-2', ({ requirement }) => requirement?.code === 'R-2 SOON');
    await expected(`positionId=${position?.id}`, ({ positionNumber }) => positionNumber === 1);
    await expected(`componentId=${engine?.id}`, ({ componentId }) => beneath.includes(componentId ?? ''));
    await expected(
      `airframeId=${fleet.airframe.id}&sort=code`,
      ({ airframeId }) => airframeId === fleet.airframe.id,
    );
  });

  it('takes signs of a pattern as they are', async () => {
    expect((await page('?search=%25')).rows).toEqual([]);
    expect((await page('?search=_')).rows).toEqual([]);
  });

  it('by what is left in cycles, hours or days', async () => {
    const cycles = await page('?limit=200&withinCycles=70');
    expect(new Set(cycles.rows.map(({ requirement }) => requirement?.code))).toEqual(
      new Set(['R-1 OVER', 'R-2 SOON', 'R-5 LAST']),
    );
    const hours = await page('?limit=200&withinHours=2');
    expect(hours.rows.map(({ serialNumber }) => serialNumber).sort()).toEqual(['ZZ-E1-H', 'ZZ-E2-H']);
  });

  it('refuses two scopes at once, words that are none, and what is not there', async () => {
    const refused = async (query: string) => {
      const answer = await office.administrator.get(`/api/due-points?${query}`);
      return [answer.status, problemOf(answer).fields?.[0]?.field];
    };
    const [engine] = fleet.engines;
    expect(await refused(`airframeId=${fleet.airframe.id}&componentId=${engine?.id}`)).toEqual([
      400,
      'componentId',
    ]);
    expect(await refused('status=late')).toEqual([400, 'status']);
    expect(await refused('sort=colour')).toEqual([400, 'sort']);
    expect(await refused('withinCycles=-1')).toEqual([400, 'withinCycles']);
    expect((await refused(`componentId=${fleet.airframe.id}`))[0]).toBe(404);
  });
});

describe('the totals of the due list', () => {
  it('are of each status, and tell what filters leave out', async () => {
    const { rows } = await page('?limit=200');
    const { whole, scope, shown } = await totals('?kind=bulletin');
    const count = (status: string) => rows.filter((row) => row.status === status).length;

    expect(whole).toEqual({
      ...{ over: count('over'), inTolerance: 0, soon: count('soon'), planned: count('planned') },
      ...{ later: count('later'), notVerified: count('not-verified'), total: rows.length },
    });
    expect(scope).toEqual(whole);
    expect(whole.over).toBeGreaterThan(0);
    expect(shown).toMatchObject({ over: 0, notVerified: 0 });
    expect(shown.total).toBeGreaterThan(0);
  });

  it('are of the airframe where one is asked for', async () => {
    const { whole, scope, shown } = await totals(`?airframeId=${fleet.airframe.id}&status=over`);

    expect(scope.total).toBeLessThan(whole.total);
    expect(shown.total).toBe(scope.over);
  });
});
