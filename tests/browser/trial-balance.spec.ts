import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { withClient } from '../support/database.js';
import { tooWide } from '../support/fits.js';
import { DAY, type InService, putInService } from '../support/scenario/in-service.js';
import { instantAt } from '../support/scenario/instants.js';
import { findingsInBothThemes } from '../support/thread/axe.js';
import type { Desk } from '../support/thread/desk.js';
import { deskIn, engage, type House, openHouse } from '../support/thread/house.js';
import { watched } from '../support/thread/watched.js';

let house: House;
let fleet: InService;
let auditor: Desk;

beforeAll(async () => {
  house = await openHouse();
  fleet = await putInService(house.administrator, { days: 4 });
  auditor = await deskIn(house);
  await auditor.enter(
    await engage(house, { signInName: 'audra', fullName: 'Audra Tor', roles: ['auditor'] }),
  );
}, 180_000);

afterAll(() => house?.close(), 30_000);

const said = (words: string | RegExp) => auditor.page.getByText(words).first().waitFor();

describe('the page of the trial balance', () => {
  it(
    'is reached from the top bar and says that every difference is zero',
    watched(async () => {
      await auditor.go('/positions');
      await auditor.goToPlace('Trial balance');
      await said('Every difference is zero');
      expect(await findingsInBothThemes(auditor.page)).toEqual([]);
      expect(await tooWide(auditor)).toEqual([]);
    }),
  );

  it(
    'shows one airframe engine by engine, up to an instant that is typed',
    watched(async () => {
      await auditor.go(`/trial-balance?airframe=${fleet.airframe.id}`);
      await auditor.link('ZZ-E1').first().waitFor();
      await auditor.field('Up to').fill(
        instantAt(2 * DAY)
          .replace('T', ' ')
          .replace('Z', ''),
      );
      await auditor.button('Show').click();
      await auditor.page.waitForURL(/upTo=/);
      await auditor.settled();
      await said('Every difference is zero');
      expect(await findingsInBothThemes(auditor.page)).toEqual([]);
      expect(await tooWide(auditor)).toEqual([]);
    }),
  );

  it(
    'puts the span that does not add up first, with the way to its flights and to where its engine was',
    watched(async () => {
      const forge = (minutes: string) =>
        withClient(house.database.adminUrl, (client) =>
          client.query(
            `UPDATE exposure SET minutes = minutes ${minutes} WHERE to_at IS NULL AND component_id = '${fleet.engines[0]?.id}'`,
          ),
        );
      await forge('- 1');
      try {
        await auditor.go('/trial-balance');
        await said('1 account does not add up');
        await auditor.go(`/trial-balance?airframe=${fleet.airframe.id}`);
        const wrong = auditor.page.getByRole('region', { name: 'Where it does not add up' });
        expect(await wrong.innerText()).toMatch(/Position 1: −0:01 h[\s\S]*ZZ-E1/);
        expect(await findingsInBothThemes(auditor.page)).toEqual([]);
        await wrong.getByRole('link', { name: 'Its flights' }).click();
        await auditor.page.getByRole('heading', { level: 1, name: /Flights/ }).waitFor();
      } finally {
        await forge('+ 1');
      }
    }),
  );
});

describe('a technician', () => {
  it(
    'is told who reads the trial balance',
    watched(async () => {
      const technician = await deskIn(house);
      await technician.enter(
        await engage(house, { signInName: 'tess', fullName: 'Tess Nichols', roles: ['technician'] }),
      );
      await technician.go('/trial-balance');
      await technician.page
        .getByText('The trial balance is read by: Auditor, Records office or Administrator.')
        .waitFor();
    }),
  );
});
