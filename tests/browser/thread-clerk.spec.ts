import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { makeFleet } from '../support/scenario/fleet.js';
import { done } from '../support/scenario/problem.js';
import { Register } from '../support/scenario/register.js';
import type { Desk } from '../support/thread/desk.js';
import { deskIn, engage, type House, openHouse } from '../support/thread/house.js';
import { watched } from '../support/thread/watched.js';

interface AirframeAnswer {
  readonly id: string;
  readonly registration: string;
  readonly minutes: number | null;
  readonly flights: number | null;
}

const HEADINGS =
  'registration,log_page,from,to,take_off_utc,landing_utc,touch_and_goes,starts,aborted_take_offs';
const GOOD_ROWS = [
  'ZZ-301,T2001,VDL,KRN,2025-02-01 08:00,2025-02-01 09:30,0,1,0',
  'ZZ-301,T2002,KRN,VDL,2025-02-01 10:30,2025-02-01 11:45,0,1,0',
  'ZZ-101,T0900,VDL,KRN,2025-02-01 12:00,2025-02-01 13:15,2,1,0',
];
const BAD_ROWS = [
  GOOD_ROWS[0],
  'ZZ-301,T2002,KRN,VDL,2025-02-01 11:45,2025-02-01 10:30,0,1,0',
  'ZZ-999,T0900,VDL,KRN,2025-02-01 12:00,2025-02-01 13:15,2,1,0',
];

const csv = (rows: readonly (string | undefined)[]) => Buffer.from(`${[HEADINGS, ...rows].join('\n')}\n`);

let house: House;
let desk: Desk;

beforeAll(async () => {
  house = await openHouse();
  await makeFleet(new Register(house.administrator), { engines: 1 });
  const clerk = await engage(house, { signInName: 'clerk', fullName: 'Cleo Kerk', roles: ['records'] });
  desk = await deskIn(house);
  await desk.signIn(clerk);
}, 120_000);

afterAll(() => house?.close(), 30_000);

async function airframe(registration: string): Promise<AirframeAnswer> {
  const all = done(await house.administrator.get<AirframeAnswer[]>('/api/airframes'));
  const found = all.find((each) => each.registration === registration);
  if (found === undefined) throw new Error(`no airframe ${registration}`);
  return found;
}

/** Has a file checked and waits for the report. */
async function bring(name: string, rows: readonly (string | undefined)[]): Promise<void> {
  await desk.goToPlace('Imports');
  await desk.field('File').setInputFiles({ name, mimeType: 'text/csv', buffer: csv(rows) });
  await desk.button('Check the file').click();
  await desk.page.getByRole('heading', { level: 1, name: `Import ${name}` }).waitFor();
  await desk.page.getByText(/^(Rows with errors|Ready to apply)$/).waitFor();
}

describe('a records clerk', () => {
  it(
    'registers an airframe, told what is missing beside the field and on top',
    watched(async () => {
      const { page } = desk;
      await desk.goToPlace('Register');
      await page
        .getByRole('navigation', { name: 'Register' })
        .getByRole('link', { name: 'Airframes', exact: true })
        .click();
      await desk.button('Add an airframe').click();
      await desk.field('Manufacturer’s serial number').fill('MSN 301');
      await desk.field('Type').selectOption({ label: 'Veldt Aircraft ZZ-T2' });
      await desk.field('Rule set').selectOption({ index: 1 });
      await desk.field('Owner').fill('Test operator');
      await desk.button('Add the airframe').click();

      expect(await desk.saidBeside(desk.field('Registration'))).toBe('Enter the registration');
      await page
        .getByRole('region', { name: 'There is a problem' })
        .getByRole('link', { name: 'Enter the registration' })
        .click();
      expect(await desk.field('Registration').evaluate((field) => field === document.activeElement)).toBe(
        true,
      );

      await page.keyboard.type('ZZ-301');
      await desk.button('Add the airframe').click();
      await page.getByRole('heading', { level: 1, name: 'Airframe ZZ-301' }).waitFor();

      await desk.button('Record an opening balance').click();
      await desk.field('Holds at').fill('2025-01-01 00:00');
      await desk.field('Hours').fill('100:00');
      await desk.field('Flights').fill('80');
      await desk.field('Source').fill('Log book 1');
      await desk.button('Record the opening balance').click();
      await page.getByText('100:00').first().waitFor();
      expect(await airframe('ZZ-301')).toMatchObject({ minutes: 6_000, flights: 80 });
    }),
  );

  it(
    'registers an engine with its opening balance at a rating',
    watched(async () => {
      const { page } = desk;
      await page
        .getByRole('navigation', { name: 'Register' })
        .getByRole('link', { name: 'Components', exact: true })
        .click();
      await desk.button('Add a component').click();
      await desk.field('Serial number').fill('ZZ-E30');
      await desk.field('Part number').fill('PN-engine');
      await desk.field('Description').fill('Test engine');
      await desk.field('Maker').fill('Karneth Turbines');
      await desk.field('Model').selectOption({ label: 'Karneth Turbines ZZ-K1' });
      await desk.field('Owner').fill('Test operator');
      await desk.button('Add the component').click();
      await page.getByRole('heading', { level: 1, name: 'Engine ZZ-E30' }).waitFor();

      await desk.button('Record an opening balance').click();
      await desk.field('Holds at').fill('2025-01-01 00:00');
      await desk.field('At rating').selectOption('A');
      await desk.field('Hours').fill('2,000:30');
      await desk.field('Cycles').fill('1500');
      await desk.field('Source').fill('Engine log book');
      await desk.button('Record the opening balance').click();
      await page.getByText('2,000:30').first().waitFor();

      const { rows } = done(
        await house.administrator.get<{ rows: { id: string }[] }>('/api/components?search=ZZ-E30'),
      );
      const engine = done(await house.administrator.get(`/api/components/${rows[0]?.id}`));
      expect(engine).toMatchObject({
        kind: 'engine',
        counters: { sinceNew: { minutes: 120_030, cycles: { units: 1500, denominator: 1 } } },
      });
    }),
  );

  it(
    'brings a file with bad rows: each is told by its line, and nothing can be applied',
    watched(async () => {
      await bring('february.csv', BAD_ROWS);

      const errors = desk.page.getByRole('table', { name: /with errors/ }).locator('tbody tr');
      const told = await errors.evaluateAll((rows) =>
        rows.map((row) =>
          Array.from((row as HTMLTableRowElement).cells, (cell) => (cell as HTMLElement).innerText),
        ),
      );
      expect(told.map(([line, column]) => [line, column])).toEqual([
        ['3', 'landing_utc'],
        ['4', 'registration'],
      ]);
      expect(told[1]).toContain('ZZ-999');
      for (const row of told) expect(row.every((text) => text.trim() !== '')).toBe(true);

      const apply = desk.button(/^Apply /);
      expect(await apply.getAttribute('aria-disabled')).toBe('true');
      expect(await desk.page.getByText('Off: 2 rows with errors.').count()).toBe(1);
      await apply.click({ force: true });
      await desk.settled();
      expect(await airframe('ZZ-301')).toMatchObject({ minutes: 6_000, flights: 80 });
    }),
  );

  it(
    'brings the mended file, sees what it adds, and applies it',
    watched(async () => {
      await bring('february-mended.csv', GOOD_ROWS);

      const effect = desk.page.getByRole('table', { name: 'What applying adds to each airframe' });
      expect(await effect.getByRole('row', { name: /ZZ-301/ }).innerText()).toMatch(/2\s+2:45$/);
      expect(await effect.getByRole('row', { name: /ZZ-101/ }).innerText()).toMatch(/1\s+1:15$/);
      expect(await airframe('ZZ-301')).toMatchObject({ minutes: 6_000 });

      await desk.button('Apply 3 flights').click();
      await desk.page.getByRole('table', { name: 'Added to each airframe' }).waitFor();
      expect(await airframe('ZZ-301')).toMatchObject({ minutes: 6_165, flights: 82 });
    }),
  );

  it(
    'logs a flight in the grid; what is wrong is said beside the cell',
    watched(async () => {
      const { page } = desk;
      await desk.goToPlace('Flights');
      const choice = desk.field('Airframe');
      await choice.selectOption({ label: 'ZZ-301, Veldt Aircraft ZZ-T2' });
      await desk.settled();
      await desk.link('Enter flights').click();
      await page.getByRole('heading', { level: 1, name: /^Enter flights/ }).waitFor();
      for (const [label, typed] of [
        ['Log page', 'T2003'],
        ['Date', '2025-02-02'],
        ['From', 'VDL'],
        ['To', 'KRN'],
        ['Take-off', '14:20'],
        ['Landing', '14:0'],
      ] as const)
        await desk.field(`${label}, row 1`).fill(typed);
      await desk.button('Save 1 flight').click();

      const landing = desk.field('Landing, row 1');
      expect(await desk.saidBeside(landing)).toMatch(/^Enter the landing in UTC/);
      expect(await landing.inputValue()).toBe('14:0');

      await landing.fill('18:02');
      await desk.button('Save 1 flight').click();
      await page.getByRole('heading', { name: '1 flight saved, 3:42 h' }).waitFor();
      expect(await airframe('ZZ-301')).toMatchObject({ minutes: 6_387, flights: 83 });
    }),
  );

  it(
    'corrects the flight: both entries stay, the old one struck with the reason',
    watched(async () => {
      const { page } = desk;
      await desk.go(`/flights?airframe=${(await airframe('ZZ-301')).id}`);
      await desk.button('Correct log page T2003').click();
      const dialog = page.getByRole('dialog');
      await dialog.getByLabel('Landing', { exact: true }).fill('18:32');
      await desk.button('Record the correction').click();
      expect(await desk.saidBeside(dialog.getByLabel('Reason', { exact: true }))).toBe(
        'Enter why the flight is corrected',
      );

      await dialog.getByLabel('Reason', { exact: true }).fill('The landing was misread');
      await desk.button('Record the correction').click();
      await dialog.waitFor({ state: 'detached' });
      await desk.settled();

      const rows = page.getByRole('row', { name: /T2003/ });
      await page.getByText('Corrected: “The landing was misread”').waitFor();
      const times = await rows.evaluateAll((all) =>
        all.map((row) => ({
          struck: row.hasAttribute('data-struck'),
          text: (row as HTMLElement).innerText.replace(/\s+/g, ' '),
        })),
      );
      expect(times).toEqual([
        { struck: false, text: expect.stringMatching(/14:20Z? 18:32Z? 4:12/) },
        { struck: true, text: expect.stringMatching(/14:20Z? 18:02Z? 3:42/) },
      ]);
      expect(await page.getByText('106:57 hours, 83 flights').count()).toBe(1);
      expect(await airframe('ZZ-301')).toMatchObject({ minutes: 6_417, flights: 83 });
    }),
  );
});
