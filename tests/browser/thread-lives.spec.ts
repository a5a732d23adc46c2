import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { type InService, putInService } from '../support/scenario/in-service.js';
import type { Desk } from '../support/thread/desk.js';
import { deskIn, engage, type House, openHouse } from '../support/thread/house.js';
import { watched } from '../support/thread/watched.js';

let house: House;
let fleet: InService;
let desk: Desk;

beforeAll(async () => {
  house = await openHouse();
  fleet = await putInService(house.administrator, { days: 3 });
  desk = await deskIn(house);
  await desk.enter(await engage(house, { signInName: 'rec', fullName: 'Reva Corder', roles: ['records'] }));
}, 180_000);

afterAll(() => house?.close(), 30_000);

const said = (words: string | RegExp) => desk.page.getByText(words).first().waitFor();
const field = (name: string) => desk.page.getByRole('textbox', { name });
const rowOf = (words: string) => desk.page.getByRole('row').filter({ hasText: words });

describe('the records office, given a directive that lowers a limit', () => {
  it(
    'is told by its line what of the pasted table cannot be read',
    watched(async () => {
      await desk.go('/register/life-limits/revision');
      await desk.page.getByLabel('Kind of document').selectOption('directive');
      await field('Document').fill('ZZ-AD 2026-40');
      await field('Revision').fill('1');
      await field('Effective on').fill('2026-01-01');
      const table = field('Rows, one a line, as pasted from a table');
      await table.fill('Part number\tModel\tRating\tCycles\nK-DISK\tNO-SUCH\t\t1002');
      await desk.button('Show what it changes').click();
      await desk.page.getByRole('region', { name: 'There is a problem' }).waitFor();
      expect(await desk.saidBeside(table)).toBe('Line 2: “NO-SUCH” is not an engine model on record.');
    }),
  );

  it(
    'sees what it puts over its limit, accepts it, and finds it on the engine and its status sheet',
    watched(async () => {
      await field('Rows, one a line, as pasted from a table').fill('K-DISK\tZZ-K1\t\t1002');
      await desk.button('Show what it changes').click();
      await said(/5 lives changed/);
      await rowOf('ZZ-E1-D').getByText('Puts it over its limit').waitFor();
      await rowOf('ZZ-E1-D').getByText('1 cycle past').waitFor();

      await desk.button('Accept the directive').click();
      await desk.page.waitForURL(/\/register\/life-limits\?find=/);
      await rowOf('ZZ-AD 2026-40').first().waitFor();

      await desk.go(`/components/${fleet.engines[0]?.id}`);
      await said('1 cycle past');
      await desk.page.getByRole('link', { name: 'Status of limited parts' }).click();
      await desk.page.getByRole('heading', { level: 1, name: 'Status of limited parts ZZ-E1' }).waitFor();
      await rowOf('ZZ-E1-D').getByText('Over limit').waitFor();
      await rowOf('ZZ-E1-D').getByText('Lowered by a directive').waitFor();
    }),
  );

  it(
    'has the sheet as a document and as text',
    watched(async () => {
      await desk.button('Prepare the sheet (PDF)').click();
      await desk.page.getByRole('link', { name: 'Open the sheet (PDF)' }).waitFor({ timeout: 60_000 });
      const csv = desk.page.getByRole('link', { name: 'Save for a spreadsheet (CSV)' });
      const [saved] = await Promise.all([desk.page.waitForEvent('download'), csv.click()]);
      expect(saved.suggestedFilename()).toMatch(/^life-status-ZZ-E1-.*\.csv$/);
    }),
  );
});
