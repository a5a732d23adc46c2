import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { tooWide } from '../support/fits.js';
import { type InService, putInService } from '../support/scenario/in-service.js';
import { findingsInBothThemes } from '../support/thread/axe.js';
import type { Desk } from '../support/thread/desk.js';
import { deskIn, type House, openHouse } from '../support/thread/house.js';
import { watched } from '../support/thread/watched.js';

let house: House;
let fleet: InService;
let keeper: Desk;
let partId: string;

beforeAll(async () => {
  house = await openHouse();
  fleet = await putInService(house.administrator, { days: 4 });
  partId = fleet.engines[0]?.partIds[0] ?? '';
  keeper = await deskIn(house);
  await keeper.enter(house.founded);
}, 180_000);

afterAll(() => house?.close(), 30_000);

const dialog = () => keeper.page.getByRole('dialog');
const said = (words: string | RegExp) => keeper.page.getByText(words).first().waitFor();
const row = (words: string) => keeper.page.getByRole('row').filter({ hasText: words });

describe('the keeper of a component’s records', () => {
  it(
    'records a gap, is told beside the field what is wrong first, and reads what it newly leaves unknown',
    watched(async () => {
      await keeper.go(`/register/components/${partId}`);
      await keeper.button('Record a gap in its records').click();
      const [begins, ends] = [
        dialog().getByRole('group', { name: 'It begins' }),
        dialog().getByRole('group', { name: 'It ends' }),
      ];
      await begins.getByLabel('Date and time').fill('2024-06-01 00:00');
      await ends.getByLabel('Date and time').fill('2024-03-01 00:00');
      await dialog().getByLabel('What is missing').fill('No log pages between two operators');
      await dialog().getByRole('button', { name: 'Record the gap' }).click();
      await dialog().getByRole('region', { name: 'There is a problem' }).waitFor();
      expect(await findingsInBothThemes(keeper.page)).toEqual([]);

      await ends.getByLabel('Date and time').fill('2024-09-01 00:00');
      await dialog().getByRole('button', { name: 'Record the gap' }).click();
      await keeper.page.getByRole('region', { name: 'The gap was recorded.' }).waitFor();
      await said('Newly not verified or not authorised');
      expect(await row('Gap in the trace').textContent()).toMatch(/No log pages between two operators/);
      expect(await findingsInBothThemes(keeper.page)).toEqual([]);
      expect(await tooWide(keeper)).toEqual([]);
    }),
  );

  it(
    'is led from ‘not verified’ to the acceptance that mends it',
    watched(async () => {
      await keeper.go(`/components/${partId}`);
      await keeper.link('Accept the worst case').first().click();
      await dialog().getByLabel('Accepted for').selectOption({ index: 1 });
      await dialog().getByLabel('Hours at most').fill('100:00');
      await dialog().getByLabel('Cycles at most').fill('40');
      await dialog().getByLabel('Accepted by').fill('Quinn Ardel, continuing airworthiness');
      await dialog().getByLabel('Reference').fill('Letter 17');
      await dialog().getByRole('button', { name: 'Record the acceptance' }).click();
      await keeper.page.getByRole('region', { name: 'The acceptance was recorded.' }).waitFor();
      expect(await row('Worst case accepted').textContent()).toMatch(/100:00 h and 40 cycles at most/);
    }),
  );

  it(
    'voids the acceptance with a reason, and it stays in sight, struck through',
    watched(async () => {
      await row('Worst case accepted').getByRole('button', { name: /^Void/ }).click();
      await dialog().getByRole('button', { name: 'Void', exact: true }).click();
      expect(await keeper.saidBeside(dialog().getByLabel('Reason'))).toBe('Enter why it is voided');
      await dialog().getByLabel('Reason').fill('The letter was withdrawn');
      await dialog().getByRole('button', { name: 'Void', exact: true }).click();
      await keeper.page.getByRole('region', { name: 'Worst case accepted voided' }).waitFor();
      expect(await row('Worst case accepted').textContent()).toMatch(/The letter was withdrawn/);
    }),
  );
});
