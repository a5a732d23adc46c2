import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { employ } from '../support/scenario/office.js';
import type { Desk } from '../support/thread/desk.js';
import { type FullRecord, makeFullRecord } from '../support/thread/full-record.js';
import { deskIn, engage, type House, openHouse } from '../support/thread/house.js';
import { watched } from '../support/thread/watched.js';

let house: House;
let record: FullRecord;
let desk: Desk;

beforeAll(async () => {
  house = await openHouse();
  const certifier = await employ(house, {
    ...{ signInName: 'roe', fullName: 'Lee Roe', roles: ['certifying-staff'], licence: 'CS 4711' },
  });
  record = await makeFullRecord(house.administrator, certifier, {
    days: 10,
    password: house.founded.password,
  });
  const keeper = await engage(house, { signInName: 'kay', fullName: 'Kay Rec', roles: ['records'] });
  desk = await deskIn(house);
  await desk.signIn(keeper);
}, 180_000);

afterAll(() => house?.close(), 30_000);

/** A time as the screen writes it, in minutes. */
const minutesIn = (text: string): number => {
  const [, hours = '', minutes = ''] = /([\d,]+):(\d\d)/.exec(text) ?? [];
  return Number(hours.replaceAll(',', '')) * 60 + Number(minutes);
};

describe('the counters of an engine', () => {
  it(
    'lead to the sum they come from, line by line, now and after a log page',
    watched(async () => {
      const { page } = desk;
      await desk.go(`/components/${record.engineId}`);
      await page.getByRole('link', { name: /^How we got this.*since new/ }).click();
      await page.getByRole('heading', { name: 'Since new: how we got this' }).waitFor();

      const table = page.getByRole('table', { name: 'Since new, line by line' });
      const added = await table
        .locator('tbody tr')
        .evaluateAll((rows) =>
          rows.map((row) => (row.querySelectorAll('td, th')[1] as HTMLElement).innerText),
        );
      const total = await page.locator('.sum-total').innerText();
      expect(added.length).toBeGreaterThan(1);
      expect(added.reduce((sum, text) => sum + minutesIn(text), 0)).toBe(minutesIn(total));

      await table.getByText('Flights of this line').first().click();
      const first = await table.locator('.line-flights li').first().innerText();
      const [logPage = ''] = first.split(' ');
      await page.getByLabel('As of').selectOption('page');
      await page.getByLabel('Log page').fill(logPage);
      await page.getByLabel('Of airframe').selectOption({ label: record.airframe.registration });
      await page.getByRole('button', { name: 'Show', exact: true }).click();
      await page.getByText(`As of after log page ${logPage}`).waitFor();
      expect(minutesIn(await page.locator('.sum-total').innerText())).toBeLessThan(minutesIn(total));
    }),
    60_000,
  );
});
