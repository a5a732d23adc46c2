import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { atMinute, recordChange } from '../support/scenario/acts.js';
import { type Fleet, makeFleet } from '../support/scenario/fleet.js';
import { done } from '../support/scenario/problem.js';
import { Register } from '../support/scenario/register.js';
import type { Desk } from '../support/thread/desk.js';
import { deskIn, engage, type House, openHouse } from '../support/thread/house.js';
import { watched } from '../support/thread/watched.js';

let house: House;
let fleet: Fleet;
let desk: Desk;

beforeAll(async () => {
  house = await openHouse();
  const register = new Register(house.administrator);
  fleet = await makeFleet(register, { airframes: 1, engines: 2 });
  await register.location('Engine shop', 'shop');
  const disk = await register.component({
    ...{ kind: 'part', partNumber: 'K-DISK', serialNumber: 'NEW-D1', lifeLimited: true },
    engineModelId: fleet.modelId,
  });
  await register.opening({ componentId: disk.id }, [{ ratingCode: 'A', minutes: 0, cycles: 0 }]);
  await register.place(disk.id, { locationName: 'Store' });
  desk = await deskIn(house);
  await desk.enter(await engage(house, { signInName: 'rec', fullName: 'Reva Corder', roles: ['records'] }));
}, 180_000);

afterAll(() => house?.close(), 30_000);

const said = (words: string | RegExp) => desk.page.getByText(words).first().waitFor();
const field = (name: string) => desk.page.getByRole('textbox', { name });
const rowOf = (words: string) => desk.page.getByRole('row').filter({ hasText: words });
const pick = async (name: string, serial: string) => {
  await desk.page.getByRole('combobox', { name }).fill(serial);
  await desk.page.getByRole('option').filter({ hasText: serial }).first().click();
};

describe('the records office, sending an engine to a shop', () => {
  it(
    'sends it with its workscope, and the spares say that it is in the shop',
    watched(async () => {
      await desk.go('/shop-visits');
      await said('No shop visit is recorded.');
      await desk.button('Send to a shop').click();
      await desk.button('Send it to the shop').click();
      await said('Enter what the shop is asked to do');
      await pick('Serial number', 'ZZ-E1');
      await desk.page.getByLabel('Shop', { exact: true }).selectOption('Engine shop');
      await field('Order').fill('RO-7');
      await field('Workscope').fill('Restore the core');
      await field('Sent').fill('2025-01-02 08:00');
      await desk.button('Send it to the shop').click();
      await desk.page.waitForURL(/\/shop-visits\/[0-9a-f-]{36}$/);
      await said('In the shop');

      await desk.go('/spares?kind=engine');
      await rowOf('ZZ-E1').getByText('It was sent to a shop (RO-7), and no return is recorded.').waitFor();
    }),
  );

  it(
    'records the return in one act, what was typed being kept, and reads what changed',
    watched(async () => {
      await desk.go('/shop-visits');
      await desk.page.getByRole('link', { name: 'ZZ-E1' }).click();
      await desk.page.getByRole('link', { name: 'Record the return' }).click();
      await field('Returned').fill('2025-01-20 12:00');
      await field('Shop report').fill('SR-7');
      await desk.page.reload();
      expect(await field('Shop report').inputValue()).toBe('SR-7');
      await desk.page.getByLabel('It came back to').selectOption('Store');
      await field('Release certificate').fill('C-7');
      await field('Work done').fill('Core restored');
      await desk.button('Add a module or part').click();
      await desk.page.getByLabel('Place', { exact: true }).selectOption({ label: 'Disk in ZZ-E1: ZZ-E1-D' });
      await desk.page.getByLabel('It went to').selectOption('Store');
      await desk.page.getByLabel('Controlled', { exact: true }).selectOption('tag');
      await field('Tag, mark or place').fill('Tag 44');
      await pick('What went on', 'NEW-D1');
      await field('Reason').fill('Cycles low');
      await desk.page
        .getByRole('group', { name: /ZZ-E1$/ })
        .getByLabel('Since shop visit')
        .check();
      await desk.page.getByLabel('Tag', { exact: true }).selectOption('serviceable');
      await field('Tag number').fill('C-7');
      await field('Why').fill('Released by the shop');
      await desk.button('Record the return').click();
      await desk.page.waitForURL(/\/shop-visits\/[0-9a-f-]{36}$/);

      const changed = desk.page.getByRole('region', { name: 'What changed' });
      await changed.getByText('ZZ-E1-D').waitFor();
      await changed.getByText('NEW-D1').waitFor();
      await changed.getByText('Since shop visit').waitFor();
      await said('By tag: Tag 44; to Store');
    }),
  );

  it(
    'finds it among the spares as fit, until it is fitted',
    watched(async () => {
      await desk.go('/spares?kind=engine&fit=yes');
      await rowOf('ZZ-E1').getByText('Fit to install').waitFor();
      const at = { airframeId: fleet.airframes[0]?.id ?? '', positionNumber: 1, slot: 'engine' } as const;
      const change = { ...at, outgoingSerial: null, incomingSerial: 'ZZ-E1', boundary: atMinute(40_000) };
      done(await recordChange(house.administrator, change));
      await desk.go('/spares?kind=engine');
      await rowOf('ZZ-E2').waitFor();
      expect(await rowOf('ZZ-E1').count()).toBe(0);
    }),
  );

  it(
    'tags what is found unserviceable on its page',
    watched(async () => {
      await desk.go(`/components/${fleet.engines[1]?.id}`);
      await desk.button('Record a tag').click();
      await desk.page.getByLabel('The tag says').selectOption('unserviceable');
      await field('Tag number').fill('UT-1');
      await field('Reason').fill('Oil leak');
      await field('Tagged').fill('2025-01-02 08:00');
      await desk.button('Record the tag').click();
      await said('May not be fitted');
      await said('Tag UT-1 says it is unserviceable: Oil leak');
    }),
  );
});
