import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { findingsInBothThemes } from '../support/thread/axe.js';
import { type ChangeHouse, openChangeHouse, REQUIREMENT } from '../support/thread/change-house.js';
import type { Desk } from '../support/thread/desk.js';
import { type HalfDone, makeHalfDone } from '../support/thread/half-done.js';
import { deskIn, engage } from '../support/thread/house.js';
import { StepTablet, UPRIGHT } from '../support/thread/step-tablet.js';
import { watched } from '../support/thread/watched.js';

const EVERY_ROLE = ['technician', 'inspector', 'certifying-staff', 'planner', 'records', 'administrator'];

let at: ChangeHouse;
let made: HalfDone;
/** Holds every role, and did none of the work. */
let desk: Desk;
let tablet: StepTablet;

beforeAll(async () => {
  at = await openChangeHouse();
  made = await makeHalfDone(at);
  const person = { signInName: 'all', fullName: 'Allie Roles', roles: EVERY_ROLE, licence: 'CS 4712' };
  desk = await deskIn(at.house, UPRIGHT);
  await desk.enter(await engage(at.house, person));
  tablet = new StepTablet(await deskIn(at.house, UPRIGHT));
  await tablet.desk.enter(at.crew.technician);
}, 180_000);

afterAll(() => at?.house.close(), 30_000);

const step = (id: string, number: number): string => `/packages/${id}?step=${number}`;

/**
 * Of the page behind a dialog, which is out of reach on purpose. Whether a dialog is modal axe guesses by where it
 * stands in the window.
 */
const BEHIND = /^\w+: (landmark-one-main|page-has-heading-one):/;

const nothingFoundInDialog = async (of: Desk = desk): Promise<void> => {
  await of.page.getByRole('dialog').waitFor();
  expect((await findingsInBothThemes(of.page)).filter((finding) => !BEHIND.test(finding))).toEqual([]);
};

const nothingFound = async (of: Desk = desk): Promise<void> => {
  // What is scrolled beneath the bar on top counts as too small to hit.
  await of.page.evaluate(() => window.scrollTo(0, 0));
  expect(await findingsInBothThemes(of.page)).toEqual([]);
};

describe('axe finds nothing on the pages of work:', () => {
  it.each([
    { name: 'what waits, rejected and to inspect', path: () => '/work' },
    { name: 'a step that changed since it was signed', path: () => step(made.change, 1) },
    { name: 'a signed step', path: () => step(made.change, 2) },
    { name: 'a step with a torque out of range', path: () => step(made.change, 5) },
    { name: 'a step that waits for another', path: () => step(made.change, 7) },
    { name: 'the last step', path: () => step(made.change, 8) },
    { name: 'a step with counts to enter', path: () => step(made.untouched, 1) },
    { name: 'a step that takes something off', path: () => step(made.untouched, 4) },
    { name: 'a step that waits for an inspection', path: () => step(made.toInspect, 1) },
    { name: 'a package that is withdrawn', path: () => step(made.withdrawn, 1) },
    {
      name: 'a release check with points of most kinds',
      path: () => `/packages/${made.change}/release-check`,
    },
    { name: 'a release check without a point', path: () => `/packages/${made.ready}/release-check` },
    { name: 'a release check of what is withdrawn', path: () => `/packages/${made.withdrawn}/release-check` },
    { name: 'a tool that was used', path: () => `/tools/${at.toolId}` },
    { name: 'a procedure', path: () => `/procedures/${at.procedureId}` },
    { name: 'requirements', path: () => '/requirements' },
    { name: 'what I may sign', path: () => '/my-authority' },
  ])('$name', ({ path }) =>
    watched(async () => {
      await desk.go(path());
      await nothingFound();
    })(),
  );

  it(
    'a PIN to choose, and what is wrong with it',
    watched(async () => {
      await desk.go('/pin');
      await nothingFound();
      await desk.button('Choose this PIN').tap();
      await desk.page.getByRole('region', { name: 'There is a problem' }).waitFor();
      await nothingFound();
    }),
  );

  it(
    'opening a package, part after part, each with what is missing',
    watched(async () => {
      const { page } = desk;
      const missing = page.getByRole('region', { name: 'There is a problem' });
      const next = () => desk.button('Continue').tap();
      await desk.go('/packages/new');
      await next();
      await missing.waitFor();
      await nothingFound();
      await desk.field('Kind of work').selectOption({ label: 'Engine change' });
      await desk.field('Airframe').selectOption({ label: 'ZZ-101, Veldt Aircraft ZZ-T2' });
      await next();
      await page.getByRole('heading', { name: '2 Order' }).waitFor();
      await next();
      await missing.waitFor();
      await nothingFound();
      await desk.field('Position').selectOption({ index: 2 });
      await desk.field('Where it goes').selectOption({ index: 1 });
      await desk.field('Serial that goes on').fill('ZZ-E');
      await page.getByRole('listbox').getByRole('option').first().waitFor();
      await nothingFound();
      await page.getByRole('option', { name: /^ZZ-E5/ }).tap();
      await desk.field('Why it is changed').fill('Planned');
      await nothingFound();
      await next();
      await page.getByRole('heading', { name: '3 Steps' }).waitFor();
      await next();
      await missing.waitFor();
      await nothingFound();
      await desk.field('Where the steps come from').selectOption({ label: 'Of our own, typed here' });
      await desk.button('Add a step').tap();
      await nothingFound();
      await desk.field('Where the steps come from').selectOption({ label: 'From a procedure' });
      await desk.field('Procedure').selectOption({ index: 1 });
      await next();
      await page
        .getByRole('checkbox', { name: new RegExp(REQUIREMENT) })
        .first()
        .tap();
      await nothingFound();
      await next();
      await page.getByRole('heading', { name: '5 Look over' }).waitFor();
      await nothingFound();
    }),
  );
});

const press = (name: string | RegExp) => () => desk.button(name).first().tap();

describe('axe finds nothing with a dialog of work open, empty and refused:', () => {
  it.each([
    {
      name: 'signing an inspection',
      path: () => step(made.toInspect, 1),
      open: press('Sign the inspection'),
    },
    { name: 'undoing a signature', path: () => step(made.change, 2), open: press('Undo') },
    { name: 'striking out an entry', path: () => step(made.change, 5), open: press('Strike out') },
    { name: 'adding a step', path: () => step(made.change, 5), open: press('Add a step') },
    { name: 'amending an order', path: () => step(made.untouched, 1), open: press('Amend the order') },
    { name: 'withdrawing a package', path: () => step(made.untouched, 1), open: press('Withdraw') },
  ])('$name', ({ path, open }) =>
    watched(async () => {
      await desk.go(path());
      await open();
      const dialog = desk.page.getByRole('dialog');
      await dialog.waitFor();
      await desk.settled();
      await nothingFoundInDialog();
      await dialog.locator('button[type=submit], .overlay-actions button').first().tap();
      await dialog.getByRole('region', { name: 'There is a problem' }).waitFor();
      await nothingFoundInDialog();
    })(),
  );

  it(
    'a second person at a tablet, first the wrong one',
    watched(async () => {
      await tablet.desk.go(step(made.toInspect, 1));
      await tablet.desk.button('Another person signs here').tap();
      await nothingFoundInDialog(tablet.desk);
      const sheet = tablet.page.getByRole('dialog');
      await sheet.getByLabel('Their sign-in name').fill('tess');
      await sheet.getByLabel('Their sign-in name').blur();
      await sheet.getByText('A different inspector must sign').first().waitFor();
      await nothingFoundInDialog(tablet.desk);
    }),
  );

  it(
    'an inspection that somebody else signed first, and a release that was just signed',
    watched(async () => {
      const password = { method: 'password', secret: at.house.founded.password } as const;
      await tablet.desk.go(step(made.toInspect, 1));
      await tablet.desk.button('Another person signs here').tap();
      const sheet = await tablet.fillSheet(password, 'ines');
      await desk.go(step(made.toInspect, 1));
      await desk.button('Sign the inspection').tap();
      await new StepTablet(desk).signSheet(password);
      await sheet.getByRole('button', { name: 'Sign these words' }).tap();
      await tablet.page.getByRole('alert').filter({ hasText: 'Signed by somebody else first' }).waitFor();
      await nothingFoundInDialog(tablet.desk);

      await desk.go(`/packages/${made.ready}/release-check`);
      await desk.button('Release to service').tap();
      await desk.page.getByRole('region', { name: 'There is a problem' }).waitFor();
      await nothingFound();
      await desk.field('Your password, again').fill(password.secret);
      await desk.button('Release to service').tap();
      await desk.page.getByRole('link', { name: /^Certificate of / }).waitFor({ timeout: 60_000 });
      await nothingFound();
    }),
  );

  it(
    'a step without a connection',
    watched(async () => {
      await tablet.desk.go(step(made.change, 5));
      await tablet.desk.context.setOffline(true);
      await tablet.page.getByText(/^Offline since /).waitFor();
      await nothingFound(tablet.desk);
      await tablet.desk.context.setOffline(false);
    }),
  );
});
