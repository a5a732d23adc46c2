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

beforeAll(async () => {
  house = await openHouse();
  fleet = await putInService(house.administrator, { days: 4 });
  keeper = await deskIn(house);
  await keeper.enter(house.founded);
}, 180_000);

afterAll(() => house?.close(), 30_000);

const dialog = () => keeper.page.getByRole('dialog');
const row = (words: string) => keeper.page.getByRole('row').filter({ hasText: words });
const yesterday = () => new Date(Date.now() - 86_400_000).toISOString().slice(0, 10);

async function add(code: string, kind: string, more: () => Promise<void>): Promise<void> {
  await keeper.go('/requirements');
  await keeper.button('Add a requirement').click();
  await dialog().getByLabel('Code', { exact: true }).fill(code);
  await dialog().getByLabel('Kind').selectOption({ label: kind });
  await dialog().getByLabel('Title').fill(`What ${code} asks`);
  await dialog().getByLabel('Document', { exact: true }).fill(`Paper ${code}`);
  await dialog().getByLabel('Revision').fill('1');
  await dialog().getByLabel('Effective on').fill('2020-01-01');
  await more();
  await dialog().getByRole('button', { name: 'Add the requirement' }).click();
}

describe('the keeper of requirements', () => {
  it(
    'reads in plain words what the rule means while it is typed, and then has it',
    watched(async () => {
      await add('ZZ-CHK-1', 'Check', async () => {
        const again = dialog().getByRole('group', { name: 'Due again' });
        await again.getByLabel('Hours').fill('500:00');
        await again.getByLabel('Cycles').fill('300');
        await again.getByLabel('With an outer bound that is never to be exceeded').check();
        await again.getByRole('group', { name: 'Not beyond' }).getByLabel('Months').fill('24');
        const late = dialog().getByRole('group', { name: 'Window after it is due' });
        await late.getByRole('button').click();
        await late.getByLabel('Share, %').fill('10');
        await late.getByLabel('At most').fill('50:00');
        const varied = dialog().getByRole('group', { name: 'Variation that may be approved, one time' });
        await varied.getByRole('button').click();
        await varied.getByLabel('Share, %').fill('20');
        const preview = dialog().getByRole('region', { name: 'What this means' });
        expect(await preview.innerText()).toMatch(
          /Every 500:00 h or 300 cycles, whichever comes first, and never beyond 24 months/,
        );
        expect(await preview.innerText()).toMatch(/up to 10 % of its hours, at most 50:00 h late/);
        expect(await findingsInBothThemes(keeper.page)).toEqual([]);
        expect(await tooWide(keeper)).toEqual([]);
      });
      await row('ZZ-CHK-1').waitFor();
    }),
  );

  it(
    'is told at the field that a directive has only what its own text grants',
    watched(async () => {
      await add('ZZ-AD-9', 'Directive', async () => {
        await dialog().getByRole('group', { name: 'Due again' }).getByLabel('Months').fill('12');
        const varied = dialog().getByRole('group', { name: 'Variation that may be approved, one time' });
        await varied.getByRole('button').click();
        await varied.getByLabel('Share, %').fill('20');
      });
      await dialog().getByRole('region', { name: 'There is a problem' }).waitFor();
      expect(await keeper.saidBeside(dialog().getByLabel('Where its own text grants this'))).toMatch(
        /only the tolerance its own text grants/,
      );
      await dialog().getByLabel('Where its own text grants this').fill('Paragraph (g)');
      await dialog().getByRole('button', { name: 'Add the requirement' }).click();
      await row('ZZ-AD-9').waitFor();
    }),
  );

  it(
    'sees what was never assessed first, and assesses it',
    watched(async () => {
      await row('ZZ-AD-9').getByRole('link').first().click();
      await keeper.page.getByRole('heading', { level: 1, name: 'Requirement ZZ-AD-9' }).waitFor();
      await keeper.settled();
      await keeper
        .button(/^Assess: ZZ-AD-9/)
        .first()
        .click();
      await dialog().getByRole('button', { name: 'Record the assessment' }).click();
      expect(await dialog().getByRole('region', { name: 'There is a problem' }).innerText()).toMatch(
        /Choose whether it applies/,
      );
      await dialog().getByText('It does not apply', { exact: true }).click();
      await dialog().getByLabel('Why it does not apply').fill('Another fuel pump is fitted');
      await dialog().getByLabel('Assessed by').fill('Quinn Ardel');
      await dialog().getByLabel('Reference').fill('Note 4');
      await dialog().getByLabel('Assessed on').fill(yesterday());
      expect(await findingsInBothThemes(keeper.page)).toEqual([]);
      await dialog().getByRole('button', { name: 'Record the assessment' }).click();
      await keeper.page
        .getByRole('cell', { name: /Another fuel pump is fitted/ })
        .first()
        .waitFor();
      expect(await findingsInBothThemes(keeper.page)).toEqual([]);
      expect(await tooWide(keeper)).toEqual([]);
    }),
  );

  it(
    'records that a check was met, corrects it, and both stay in sight',
    watched(async () => {
      await keeper.go('/requirements');
      await row('ZZ-CHK-1').getByRole('link').first().click();
      await keeper.settled();
      await keeper
        .button(/^It was met: ZZ-CHK-1/)
        .first()
        .click();
      await dialog().getByLabel('Met on').fill('2025-01-03');
      await dialog().getByLabel('Evidence').fill('Card 12');
      await dialog().getByRole('button', { name: 'Record it' }).click();
      await row('Card 12').first().waitFor();
      await keeper
        .button(/^Correct what was met/)
        .first()
        .click();
      await dialog().getByLabel('Evidence').fill('Card 21');
      await dialog().getByLabel('Why it is corrected').fill('Digits were swapped');
      await dialog().getByRole('button', { name: 'Record the correction' }).click();
      await row('Card 21').first().waitFor();
      await keeper.page.getByText('Digits were swapped').first().waitFor();
    }),
  );

  it(
    'is told at the field that a variation goes beyond what is permitted, and records one that does not',
    watched(async () => {
      await keeper
        .button(/^Vary: ZZ-CHK-1/)
        .first()
        .click();
      await dialog().getByLabel('Hours past its due').fill('900:00');
      await dialog().getByLabel('Approved by').fill('Quinn Ardel');
      await dialog().getByLabel('Reference').fill('Variation 1');
      await dialog().getByLabel('What could not be foreseen').fill('The hangar is flooded');
      await dialog().getByLabel('Approved on').fill(yesterday());
      await dialog().getByRole('button', { name: 'Record the variation' }).click();
      await dialog().getByRole('region', { name: 'There is a problem' }).waitFor();
      expect(await keeper.saidBeside(dialog().getByLabel('Hours past its due'))).not.toBeNull();
      await dialog().getByLabel('Hours past its due').fill('20:00');
      await dialog().getByRole('button', { name: 'Record the variation' }).click();
      await row('Variation 1').first().waitFor();
    }),
  );

  it(
    'prints the sheet of directives and bulletins of an airframe, with what does not apply and why',
    watched(async () => {
      await keeper.go(`/directives?airframe=${fleet.airframe.id}`);
      await row('ZZ-AD-9').first().waitFor();
      expect(await row('Another fuel pump is fitted').first().innerText()).toMatch(/Not applicable/);
      expect(await findingsInBothThemes(keeper.page)).toEqual([]);
      expect(await tooWide(keeper)).toEqual([]);
    }),
  );
});
