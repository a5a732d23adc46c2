import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { Page } from 'playwright-core';
import { employ, foundAnother } from '../support/scenario/office.js';
import { findings, findingsInBothThemes, THEMES, turnTo } from '../support/thread/axe.js';
import type { Credentials, Desk } from '../support/thread/desk.js';
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

/** What axe finds on each of the places, opened one after the other; a place without a finding is left out. */
async function survey(at: Desk, places: readonly Place[], prepare?: () => Promise<void>) {
  const found: Record<string, string[]> = {};
  for (const { name, path } of places) {
    await at.go(path);
    await prepare?.();
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
      const empty = desk.page.locator('.empty');
      const places = PLAIN_PLACES.filter(({ name }) => name !== 'positions');
      expect(await survey(desk, [{ name: 'positions', path: '/positions' }, ...places])).toEqual({});
      await desk.go('/positions');
      expect(await empty.count()).toBe(0);
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

/** Lets the client's own repetitions of a failed question pass at once. */
async function untilItGivesUp(page: Page): Promise<void> {
  for (let step = 0; step < 20 && (await page.getByRole('alert').count()) === 0; step += 1) {
    await page.clock.runFor(1_000);
    await page.waitForTimeout(30);
  }
}

const FAILED = {
  type: 'urn:problem:BUG',
  title: 'Something went wrong',
  status: 500,
  detail: 'The server could not answer.',
  code: 'BUG',
  fields: [],
  requestId: 'req-1',
};

describe('while the server fails', () => {
  it.each([
    [
      'answers 500',
      (page: Page) =>
        page.route(/\/api\/(?!session)/, (route) =>
          route.fulfill({
            status: 500,
            contentType: 'application/problem+json',
            body: JSON.stringify(FAILED),
          }),
        ),
    ],
    ['does not answer', (page: Page) => page.route(/\/api\/(?!session)/, (route) => route.abort())],
  ] as const)('and %s, every page says so in a panel, and axe finds nothing', (_, fail) =>
    watched(async () => {
      const at = await deskIn(house);
      await at.enter(everyone);
      await at.page.clock.install();
      await fail(at.page);
      const silent: string[] = [];
      const found: Record<string, string[]> = {};
      for (const { name, path } of [...PLAIN_PLACES, ...recordPlaces(record)]) {
        await at.page.goto(path);
        await at.page.getByRole('heading', { level: 1 }).first().waitFor();
        await untilItGivesUp(at.page);
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
  const flights = () => `/flights?airframe=${record.airframe.id}`;
  const named: readonly (readonly [name: string, path: () => string, act: () => Promise<unknown>])[] = [
    ['the finder', () => '/positions', () => desk.page.keyboard.press('Control+k')],
    [
      'voiding a flight',
      flights,
      () =>
        desk
          .button(/^Void log page/)
          .first()
          .click(),
    ],
    [
      'correcting a flight',
      flights,
      () =>
        desk
          .button(/^Correct log page/)
          .first()
          .click(),
    ],
    [
      'positions that did not run',
      () => '/flights/enter',
      () => desk.button(/^Positions that did not run/).click(),
    ],
    [
      'adding an airframe type',
      () => '/register/airframe-types',
      () => desk.button('Add an airframe type').click(),
    ],
    ['adding an airframe', () => '/register/airframes', () => desk.button('Add an airframe').click()],
    [
      'adding an engine model',
      () => '/register/engine-models',
      () => desk.button('Add an engine model').click(),
    ],
    ['adding a life limit', () => '/register/life-limits', () => desk.button('Add a life limit').click()],
    ['adding a location', () => '/register/locations', () => desk.button('Add a location').click()],
    ['adding a component', () => '/register/components', () => desk.button('Add a component').click()],
    [
      'an opening balance',
      () => `/register/components/${record.engineId}`,
      () => desk.button('Record an opening balance').click(),
    ],
    [
      'a rating',
      () => `/register/components/${record.engineId}`,
      () => desk.button('Record a rating').click(),
    ],
    [
      'a shop visit',
      () => `/register/components/${record.engineId}`,
      () => desk.button('Record an overhaul or shop visit').click(),
    ],
    [
      'moving to a location',
      () => `/register/components/${record.engineId}`,
      () => desk.button('Move to a location').click(),
    ],
    ['adding a person', () => '/people', () => desk.button('Add a person').click()],
    ['disabling a person', () => '/people', () => desk.button('Disable Lee Roe').click()],
  ];

  it.each(named)('%s', (_, path, act) =>
    watched(async () => {
      await desk.go(path());
      await act();
      await desk.page.getByRole('dialog').waitFor();
      expect(await findingsInBothThemes(desk.page)).toEqual([]);
      const send = desk.page.getByRole('dialog').locator('button[type=submit]');
      if ((await send.count()) === 1) {
        await send.click();
        await desk.page.getByRole('region', { name: 'There is a problem' }).waitFor();
        expect(await findingsInBothThemes(desk.page)).toEqual([]);
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
