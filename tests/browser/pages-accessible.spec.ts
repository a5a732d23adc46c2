import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { employ, foundAnother } from '../support/scenario/office.js';
import { findings, findingsInBothThemes, THEMES, turnTo } from '../support/thread/axe.js';
import type { Credentials, Desk } from '../support/thread/desk.js';
import { DIALOGS } from '../support/thread/dialogs.js';
import { failEveryAnswer, loseEveryAnswer, openFailing } from '../support/thread/failing-server.js';
import { type FullRecord, makeFullRecord } from '../support/thread/full-record.js';
import { deskIn, engage, type House, openHouse } from '../support/thread/house.js';
import { PLAIN_PLACES, type Place, recordPlaces } from '../support/thread/places.js';
import { watched } from '../support/thread/watched.js';

const EVERY_ROLE = ['technician', 'inspector', 'certifying-staff', 'planner', 'records', 'administrator'];

let house: House;
let record: FullRecord;
let everyone: Credentials;
/** Holds every role where everything is on record. */
let desk: Desk;
/** Administrator of an operator who has recorded nothing. */
let beginner: Desk;

beforeAll(async () => {
  house = await openHouse();
  const { founded } = house;
  const certifier = await employ(house, {
    signInName: 'roe',
    fullName: 'Lee Roe',
    roles: ['certifying-staff'],
    licence: 'CS 4711',
  });
  record = await makeFullRecord(house.administrator, certifier, { days: 8, password: founded.password });
  everyone = await engage(house, {
    signInName: 'all',
    fullName: 'Allie Roles',
    roles: EVERY_ROLE,
    licence: 'CS 4712',
  });
  desk = await deskIn(house);
  await desk.enter(everyone);
  beginner = await deskIn(house);
  await beginner.enter(await foundAnother(house, 'NEW'));
}, 180_000);

afterAll(() => house?.close(), 30_000);

const everyPlace = (): readonly Place[] => [...PLAIN_PLACES, ...recordPlaces(record)];

/** What axe finds on each of the places, opened one after the other; a place without a finding is left out. */
async function survey(at: Desk, places: readonly Place[]): Promise<Record<string, string[]>> {
  const found: Record<string, string[]> = {};
  for (const { name, path } of places) {
    await at.go(path);
    const here = await findingsInBothThemes(at.page);
    if (here.length > 0) found[`${name} (${path})`] = here;
  }
  return found;
}

describe('axe finds nothing', () => {
  it(
    'only where there is nothing: a fault planted in the page is found',
    watched(async () => {
      await desk.go('/positions');
      await desk.page.evaluate(() => {
        document.querySelector('h1')?.after(document.createElement('img'));
      });
      expect((await findings(desk.page)).map((finding) => finding.split(':')[0])).toEqual(['image-alt']);
    }),
  );

  it(
    'on any page with records on it',
    watched(async () => {
      expect(await survey(desk, PLAIN_PLACES)).toEqual({});
      await desk.go('/positions');
      expect(await desk.page.locator('.empty').count()).toBe(0);
    }),
  );

  it(
    'on any page of one record',
    watched(async () => {
      expect(await survey(desk, recordPlaces(record))).toEqual({});
    }),
  );

  it(
    'on any page while nothing is recorded',
    watched(async () => {
      expect(await survey(beginner, PLAIN_PLACES)).toEqual({});
      await beginner.go('/positions');
      expect(await beginner.page.locator('.empty').count()).toBe(1);
    }),
  );

  it(
    'at the door, where a password is changed, and where there is no page',
    watched(async () => {
      const stranger = await deskIn(house);
      await stranger.page.goto('/sign-in');
      await stranger.button('Sign in').waitFor();
      expect(await findingsInBothThemes(stranger.page)).toEqual([]);
      await stranger.button('Sign in').click();
      await stranger.page.getByRole('region', { name: 'There is a problem' }).waitFor();
      expect(await findingsInBothThemes(stranger.page)).toEqual([]);
      await stranger.leave();
      const other = [
        { name: 'password', path: '/password' },
        { name: 'no such page', path: '/nowhere' },
        { name: 'no such record', path: '/positions/00000000-0000-7000-8000-000000000000' },
      ];
      expect(await survey(desk, other)).toEqual({});
    }),
  );
});

describe('while the server fails, every page says so in a panel, and axe finds nothing:', () => {
  it.each([
    { words: 'it answers 500', fail: failEveryAnswer, places: everyPlace },
    // The panel is the same one: enough pages to see that each way of asking shows it.
    { words: 'it does not answer', fail: loseEveryAnswer, places: () => PLAIN_PLACES.slice(0, 6) },
  ])('$words', ({ fail, places }) =>
    watched(async () => {
      const at = await deskIn(house);
      await at.enter(everyone);
      await fail(at.page);
      const silent: string[] = [];
      const found: Record<string, string[]> = {};
      for (const { name, path } of places()) {
        await openFailing(at.page, path);
        if ((await at.page.getByRole('alert').count()) === 0) silent.push(name);
        const here = await findingsInBothThemes(at.page);
        if (here.length > 0) found[name] = here;
      }
      await at.leave();
      expect({ silent, found }).toEqual({ silent: [], found: {} });
    })(),
  );
});

describe('with a dialog or a list open, axe finds nothing:', () => {
  it.each(DIALOGS)('$name', ({ path, open }) =>
    watched(async () => {
      const { page } = desk;
      await desk.go(path(record));
      await open(desk);
      await page.getByRole('dialog').waitFor();
      expect(await findingsInBothThemes(page)).toEqual([]);
      const send = page.getByRole('dialog').locator('button[type=submit]');
      if ((await send.count()) === 1) {
        await send.click();
        await page.getByRole('region', { name: 'There is a problem' }).waitFor();
        expect(await findingsInBothThemes(page)).toEqual([]);
      }
    })(),
  );

  it(
    'the person’s menu and a list of what matches',
    watched(async () => {
      await desk.go('/changes/new');
      await desk.button('Allie Roles').click();
      expect(await findingsInBothThemes(desk.page)).toEqual([]);
      await desk.page.keyboard.press('Escape');
      await desk.field('Serial that goes on').fill('ZZ-E');
      await desk.page.getByRole('listbox').getByRole('option').first().waitFor();
      expect(await findingsInBothThemes(desk.page)).toEqual([]);
    }),
  );

  it(
    'a session that ended',
    watched(async () => {
      const at = await deskIn(house);
      await at.enter(everyone);
      await at.go('/positions');
      await at.context.clearCookies();
      await at.page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Due' }).click();
      await at.page.getByRole('alertdialog', { name: 'Your session has ended' }).waitFor();
      expect(await findingsInBothThemes(at.page)).toEqual([]);
      await at.leave();
    }),
  );
});

describe('the theme', () => {
  it(
    'chosen by the person shows the same colours as the device’s own',
    watched(async () => {
      await desk.go('/positions');
      const colours = () =>
        desk.page.evaluate(() => [
          getComputedStyle(document.documentElement).backgroundColor,
          getComputedStyle(document.body).color,
        ]);
      const byDevice: Record<string, string[]> = {};
      for (const theme of THEMES) {
        await turnTo(desk.page, theme);
        byDevice[theme] = await colours();
      }
      expect(byDevice['light']).not.toEqual(byDevice['dark']);

      await desk.button('Allie Roles').click();
      for (const [word, theme, device] of [
        ['Dark', 'dark', 'light'],
        ['Light', 'light', 'dark'],
      ] as const) {
        await turnTo(desk.page, device);
        await desk.page.getByLabel(word, { exact: true }).check();
        expect(await colours()).toEqual(byDevice[theme]);
        expect(await findings(desk.page)).toEqual([]);
        await desk.go('/positions');
        expect(await colours()).toEqual(byDevice[theme]);
        await desk.button('Allie Roles').click();
      }
      await desk.page.getByLabel('As the device', { exact: true }).check();
    }),
  );
});
