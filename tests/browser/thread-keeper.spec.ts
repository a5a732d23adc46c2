import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { hire } from '../support/scenario/office.js';
import type { Credentials, Desk } from '../support/thread/desk.js';
import { deskIn, type House, openHouse } from '../support/thread/house.js';
import { watched } from '../support/thread/watched.js';
import { smallProcedure } from '../support/work/small-procedure.js';

let house: House;
/** The administrator's. */
let keeper: Desk;
let technician: Desk;
let tess: Credentials;

beforeAll(async () => {
  house = await openHouse();
  const person = { signInName: 'tess', fullName: 'Tess Nichols', roles: ['technician'] };
  tess = await hire(house, person, { authorised: false });
  keeper = await deskIn(house);
  await keeper.enter(house.founded);
  technician = await deskIn(house, { width: 834, height: 1194 });
  await technician.enter(tess);
}, 180_000);

afterAll(() => house?.close(), 30_000);

/** The day so many days from today, in UTC. */
const day = (fromToday: number): string =>
  new Date(Date.now() + fromToday * 86_400_000).toISOString().slice(0, 10);

const rowOf = (desk: Desk, words: string) => desk.page.getByRole('row').filter({ hasText: words });

const said = (desk: Desk, words: string | RegExp) => desk.page.getByText(words).first().waitFor();

async function calibrate(certificate: string, on: string, due: string): Promise<void> {
  await keeper.button('Record a calibration').click();
  const dialog = keeper.page.getByRole('dialog');
  await dialog.getByLabel('Certificate').fill(certificate);
  await dialog.getByLabel('Calibrated on').fill(on);
  await dialog.getByLabel('Due on').fill(due);
  await dialog.getByRole('button', { name: 'Record the calibration' }).click();
}

describe('the keeper of tools', () => {
  it(
    'is told beside the field what is wrong with a range, and then has the tool',
    watched(async () => {
      await keeper.go('/tools');
      await keeper.button('Add a tool').click();
      const dialog = keeper.page.getByRole('dialog');
      await dialog.getByLabel('Serial number').fill('TW-014');
      await dialog.getByLabel('What it is').fill('Torque wrench, 1/2 inch drive');
      await dialog.getByLabel('Lowest').fill('200');
      await dialog.getByLabel('Highest').fill('20');
      await dialog.getByRole('button', { name: 'Add the tool' }).click();
      await keeper.page.getByRole('region', { name: 'There is a problem' }).waitFor();
      expect(await keeper.saidBeside(dialog.getByLabel('Highest'))).toBe(
        'The highest value, 20, lies below the lowest, 200. Enter 200 or more, or correct the lowest.',
      );

      await dialog.getByLabel('Lowest').fill('20');
      await dialog.getByLabel('Highest').fill('200');
      await dialog.getByRole('button', { name: 'Add the tool' }).click();
      await keeper.page.getByRole('heading', { level: 1, name: 'Tool TW-014' }).waitFor();
      await said(keeper, 'No reading taken with it is accepted today.');
    }),
  );

  it(
    'records its calibration, and the list shows how it stands',
    watched(async () => {
      await calibrate('C-1', day(-400), day(-35));
      await said(keeper, /^Out of date, was good through/);
      await calibrate('C-2', day(-10), day(20));
      await said(keeper, /^Due soon, good through/);

      await keeper.go('/tools');
      expect(await rowOf(keeper, 'TW-014').textContent()).toMatch(/Due soon.*20 to 200 N·m/s);
    }),
  );
});

describe('the keeper of procedures', () => {
  const file = (content: object) => ({
    name: 'ec.json',
    mimeType: 'application/json',
    buffer: Buffer.from(
      JSON.stringify({
        ...{ code: 'K1-71-EC', revision: '1', title: 'Engine change', kind: 'engine-change' },
        ...{ document: 'K1 maintenance manual', documentRevision: '7', content },
      }),
    ),
  });

  it(
    'is told the step of each fault in a file, mends it, and reads what was recorded',
    watched(async () => {
      const good = smallProcedure();
      const [first, ...others] = good.steps;
      await keeper.go('/procedures');
      await keeper.button('Record a revision').click();
      const dialog = keeper.page.getByRole('dialog');
      await dialog
        .getByLabel('File')
        .setInputFiles(file({ ...good, steps: [{ ...first, group: 'nowhere' }, ...others] }));
      await dialog.getByRole('button', { name: 'Check and record' }).click();
      await said(keeper, 'Step 1, group: There is no group nowhere.');

      await dialog.getByLabel('File').setInputFiles(file(good));
      await dialog.getByRole('button', { name: 'Check and record' }).click();
      await keeper.page.getByRole('heading', { level: 1, name: 'Procedure K1-71-EC' }).waitFor();
      await said(keeper, '105.0 to 115.0 N·m at the fastener, thread lubricated');
    }),
  );
});

describe('who may sign', () => {
  it(
    'is told why not, is authorised, and then sees until when',
    watched(async () => {
      await technician.go('/my-authority');
      await said(technician, 'No authorisation is in force today.');

      await keeper.go('/people');
      await keeper.button('Add an authorisation').click();
      const dialog = keeper.page.getByRole('dialog');
      await dialog.getByLabel('Person').selectOption({ label: 'Tess Nichols (Technician)' });
      await dialog.getByLabel('May sign').selectOption('inspection');
      await said(keeper, /Until the role is held, the authorisation alone lets nothing be signed\.$/);
      await dialog.getByLabel('May sign').selectOption('work');
      await dialog.getByLabel('First day').fill(day(-1));
      await dialog.getByLabel('Last day').fill(day(10));
      await dialog.getByLabel('Rests on').fill('List 7');
      await dialog.getByRole('button', { name: 'Add the authorisation' }).click();
      await rowOf(keeper, 'List 7').getByText('Ends soon').waitFor();

      await technician.go('/my-authority');
      await said(technician, /^All types, through /);
    }),
  );

  it(
    'loses it at once when it ends with yesterday',
    watched(async () => {
      await keeper.go('/people');
      await keeper.button('End work of Tess Nichols').click();
      const dialog = keeper.page.getByRole('dialog');
      await dialog.getByLabel('Last day').fill(day(-1));
      await dialog.getByLabel('Reason').fill('Course lapsed');
      await dialog.getByRole('button', { name: 'End it with that day' }).click();
      await said(keeper, 'No authorisation matches what is asked for above.');

      await technician.go('/my-authority');
      await said(technician, 'No authorisation is in force today.');
    }),
  );

  it(
    'chooses a PIN that nobody would try first',
    watched(async () => {
      await technician.button('Tess Nichols').click();
      await technician.link('Number for signing (PIN)').click();
      await technician.page.getByRole('heading', { level: 1, name: 'Choose a PIN' }).waitFor();
      const choose = async (pin: string) => {
        await technician.field('Your password').fill(tess.password);
        await technician.page.getByLabel(/^PIN$/).fill(pin);
        await technician.field('PIN again').fill(pin);
        await technician.button('Choose this PIN').click();
      };
      await choose('123456');
      await said(technician, /^Its digits are in a row\./);
      await choose('417823');
      await said(technician, /^A PIN is chosen:/);
    }),
  );
});
