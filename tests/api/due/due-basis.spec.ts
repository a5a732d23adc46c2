import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { logFlights } from '../../support/scenario/acts.js';
import { type InService, putInService } from '../../support/scenario/in-service.js';
import { minutesOf } from '../../support/scenario/instants.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { done } from '../../support/scenario/problem.js';
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
  readonly projectedOn: string | null;
  readonly basis: string;
}

interface Page {
  readonly rows: readonly Row[];
  readonly next: string | null;
  readonly basis: {
    readonly kind: string;
    readonly statement: string;
    readonly uses: readonly {
      readonly registration: string;
      readonly minutes: number;
      readonly flights: number;
      readonly days: number;
    }[];
  };
}

const HOUR = 60;

let office: Office;
let fleet: InService;

const page = async (query = ''): Promise<Page> =>
  done(await office.administrator.get<Page>(`/api/due-points${query}`));
const idsOf = ({ rows }: Page) => rows.map(({ id }) => id);
const inDays = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);

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
  done(await recordRequirement(administrator, 'R-2 SOON', { repeat: { cycles: 1100, minutes: 90_000 } }));
}, 120_000);

afterAll(() => office?.close(), 30_000);

describe('the basis of projection', () => {
  const of = () => `/api/airframes/${fleet.airframe.id}`;
  const soon = async (query: string) => {
    const answer = await page(`?limit=200&search=R-2&${query}`);
    return { row: answer.rows.find(({ serialNumber }) => serialNumber === 'ZZ-E1'), basis: answer.basis };
  };

  it('is the average of so many days, 90 unless told, with its numbers', async () => {
    // 70 cycles at 30 in 90 days are 210 days; at 30 in 30 days 70.
    expect((await soon('')).row).toMatchObject({
      projectedOn: inDays(210),
      basis: 'Average use of the last 90 days',
    });
    const { row, basis } = await soon('basis=average&days=30');
    expect(row?.projectedOn).toBe(inDays(70));
    expect(basis.statement).toContain('last 30 days');
    expect(basis.uses).toEqual([
      { airframeId: fleet.airframe.id, registration: 'ZZ-101', minutes: 1800, flights: 30, days: 30 },
    ]);
  });

  it('is the planned rate in force', async () => {
    expect((await soon('basis=rate')).row).toMatchObject({
      ...{ projectedOn: null, basis: 'No rate is planned that runs its clock' },
    });
    const rate = { fromOn: '2025-01-01', days: 7, minutes: 420, flights: 14, source: 'Summer plan' };
    done(await office.administrator.post(`${of()}/planned-rates`, rate));
    const { row, basis } = await soon('basis=rate');

    // 70 cycles at 14 in 7 days are 35 days.
    expect(row).toMatchObject({ projectedOn: inDays(35), basis: 'Planned rate' });
    expect(basis.uses).toMatchObject([{ minutes: 420, flights: 14, days: 7 }]);
  });

  it('is the average of the flights planned', async () => {
    expect((await soon('basis=flights')).row?.projectedOn).toBeNull();
    const flights = [1, 2].map((day) => ({
      takeOffAt: `${inDays(day)}T00:00Z`,
      landingAt: `${inDays(day)}T01:00Z`,
    }));
    done(await office.administrator.post(`${of()}/planned-flights`, { flights, replace: true }));
    const { row, basis } = await soon('basis=flights');

    expect(basis.uses).toMatchObject([{ minutes: 120, flights: 2, days: 2 }]);
    expect(row).toMatchObject({ projectedOn: inDays(70), basis: 'Average of the flights planned' });
  });

  it('pages by it as well', async () => {
    const whole = await page('?limit=200&basis=rate');
    const first = await page('?limit=5&basis=rate');
    const second = await page(`?limit=200&basis=rate&after=${first.next}`);
    expect([...idsOf(first), ...idsOf(second)]).toEqual(idsOf(whole));
  });
});

describe('the exports of the due list', () => {
  it('as JSON lines are the rows of the list', async () => {
    const { rows } = await page('?limit=200');
    const text = done(await office.administrator.get<string>('/api/due-points.ndjson'));
    const lines = text.trim().split('\n');

    expect(lines.map((line) => JSON.parse(line) as Row)).toEqual(rows);
  });

  it.each(['projected', 'subject', 'code', 'remaining'])(
    'stand in the order of the list, by %s',
    async (sort) => {
      for (const direction of ['asc', 'desc']) {
        const asked = `?sort=${sort}&direction=${direction}&kind=life-limit,inspection,check`;
        const text = done(await office.administrator.get<string>(`/api/due-points.ndjson${asked}`));
        const lines = text.trim().split('\n');

        expect(lines.length).toBeGreaterThan(1);
        expect(lines.map((line) => JSON.parse(line) as Row)).toEqual((await page(`${asked}&limit=200`)).rows);
      }
    },
  );

  it('as comma-separated text have a line for each row, safe to open', async () => {
    done(await recordRequirement(office.administrator, 'R-6', { title: '=1+1', repeat: { cycles: 9000 } }));
    const text = done(await office.administrator.get<string>('/api/due-points.csv?search=R-6'));
    const [head, ...lines] = text.replace('\uFEFF', '').trim().split('\r\n');

    expect(head?.startsWith('Status,Kind,Code,Title')).toBe(true);
    expect(lines.length).toBe((await page('?search=R-6')).rows.length);
    expect(lines[0]).toContain("R-6,'=1+1");
  });
});
