import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { Locator } from 'playwright-core';
import { daily, type InService, putInService } from '../support/scenario/in-service.js';
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
  await desk.enter(
    await engage(house, { signInName: 'clerk', fullName: 'Cleo Kerk', roles: ['records', 'technician'] }),
  );
}, 120_000);

afterAll(() => house?.close(), 30_000);

type Typed = readonly (readonly [control: Locator, typed: string])[];

/** Types like a person, key by key, and leaves the field. */
async function type(fields: Typed): Promise<void> {
  for (const [control, typed] of fields) {
    await control.fill('');
    await control.pressSequentially(typed);
    await control.blur();
  }
}

const shown = async (fields: Typed): Promise<string[]> =>
  Promise.all(fields.map(([control]) => control.inputValue()));

const asTyped = (fields: Typed): string[] => fields.map(([, typed]) => typed);

/** That each of the fields has a message beside it, and still holds what was typed. */
async function expectRefusedAsTyped(fields: Typed): Promise<void> {
  expect(await shown(fields)).toEqual(asTyped(fields));
  const unsaid: string[] = [];
  for (const [control, typed] of fields) if (!(await desk.saidBeside(control))?.trim()) unsaid.push(typed);
  expect(unsaid).toEqual([]);
}

const refused = () => desk.page.getByRole('region', { name: 'There is a problem' }).waitFor();

describe('what was typed and refused stands as it was typed:', () => {
  it(
    'an instant to look at, and the page stays as of now',
    watched(async () => {
      await desk.go(`/positions/${fleet.airframe.id}`);
      for (const typed of ['11.12.2025 10:00', '2025-02-30 10:00', '2025-01-02 24:10', '2025-1-2']) {
        const field: Typed = [[desk.field('As of'), typed]];
        await type(field);
        await desk.button('Show').click();
        await expectRefusedAsTyped(field);
        expect(new URL(desk.page.url()).search).toBe('');
      }
    }),
  );

  it(
    'the moment of a change, and the serials, in their letters and spaces',
    watched(async () => {
      await desk.go(`/changes/new?airframe=${fleet.airframe.id}&position=1`);
      const moment: Typed = [[desk.field('Changed at'), '04/01/2025 9h30']];
      const serials: Typed = [
        [desk.field('Serial that comes off'), 'zz-e1 '],
        [desk.page.getByRole('combobox', { name: 'Serial that goes on' }), ' ZZ-E3x'],
      ];
      await type([...moment, ...serials]);
      await desk.button('Check the change').click();
      await refused();
      await expectRefusedAsTyped(moment);
      expect(await shown(serials)).toEqual(asTyped(serials));
    }),
  );

  it(
    'the cells of a flight',
    watched(async () => {
      await desk.go(`/flights/enter?airframe=${fleet.airframe.id}`);
      const cell = (label: string) => desk.field(`${label}, row 1`);
      const right: Typed = [
        [cell('Log page'), '0090'],
        [cell('From'), 'vdl'],
        [cell('To'), ' krn'],
      ];
      const wrong: Typed = [
        [cell('Date'), '2025-13-04'],
        [cell('Take-off'), '25:61'],
        [cell('Landing'), '1802'],
        [cell('Touch-and-goes'), '1.5'],
        [cell('Starts'), '1e1'],
        [cell('Aborted take-offs'), '-0'],
      ];
      await type([...right, ...wrong]);
      await desk.button('Save 1 flight').click();
      await refused();
      await expectRefusedAsTyped(wrong);
      expect(await shown(right)).toEqual(asTyped(right));
    }),
  );

  it(
    'a flight that the server refuses',
    watched(async () => {
      const [, flight] = daily(2);
      const cell = (label: string) => desk.field(`${label}, row 1`);
      const fields: Typed = [
        [cell('Log page'), ' X1'],
        [cell('Date'), '2025-01-02'],
        [cell('From'), 'krn'],
        [cell('To'), 'vdl'],
        [cell('Take-off'), '11:00'],
        [cell('Landing'), '13:05'],
        [cell('Touch-and-goes'), '00'],
        [cell('Starts'), '01'],
        [cell('Aborted take-offs'), '0'],
      ];
      await type(fields);
      await desk.button('Save 1 flight').click();
      await desk.page
        .getByText(new RegExp(`overlap|${flight?.page}`, 'i'))
        .first()
        .waitFor();
      expect(await shown(fields)).toEqual(asTyped(fields));
    }),
  );

  it(
    'the numbers of an opening balance',
    watched(async () => {
      await desk.go(`/register/components/${fleet.engines[2]?.id}`);
      await desk.button('Record an opening balance').click();
      const fields: Typed = [
        [desk.field('Holds at'), '2025-01-01T00'],
        [desk.field('Hours'), '1234,5'],
        [desk.field('Cycles'), '8226,5'],
      ];
      await type(fields);
      await desk.button('Record the opening balance').click();
      await refused();
      await expectRefusedAsTyped(fields);
    }),
  );

  it(
    'the numbers of a life limit',
    watched(async () => {
      await desk.go('/register/life-limits');
      await desk.button('Add a life limit').click();
      const fields: Typed = [
        [desk.field('Cycles'), '20.000'],
        [desk.field('Hours'), '12000'],
        [desk.field('Effective on'), '1 Jan 2025'],
      ];
      await type(fields);
      await desk.button('Add the life limit').click();
      await refused();
      await expectRefusedAsTyped(fields);
    }),
  );

  it(
    'no control of any form is one that rounds, clamps or scrolls a number away',
    watched(async () => {
      const numeric: string[] = [];
      for (const path of ['/flights/enter', '/changes/new', '/positions', '/due', '/register/components']) {
        await desk.go(path);
        const found = await desk.page
          .locator('input[type=number], input[type=date], input[type=datetime-local], [role=spinbutton]')
          .count();
        if (found > 0) numeric.push(path);
      }
      expect(numeric).toEqual([]);
    }),
  );
});
