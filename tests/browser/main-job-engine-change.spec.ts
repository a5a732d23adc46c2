import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { done } from '../support/scenario/problem.js';
import { openChangeByForm, pasteFlights } from '../support/thread/change-form.js';
import { type ChangeHouse, openChangeHouse, REQUIREMENT } from '../support/thread/change-house.js';
import type { Desk } from '../support/thread/desk.js';
import { deskIn } from '../support/thread/house.js';
import { takePaper } from '../support/thread/paper.js';
import { squeezed } from '../support/thread/printed-history.js';
import { blocksOf, followPoint } from '../support/thread/release-points.js';
import { SIDEWAYS, StepTablet, UPRIGHT } from '../support/thread/step-tablet.js';
import { story } from '../support/thread/watched.js';
import { CHANGE_TITLES } from '../support/work/tablet-change.js';
import type { ShownPackage } from '../support/work/work-desk.js';

const [, OPEN_COWL, PART_FUEL, REMOVE, INSTALL, REJOIN, LEAKS, CLOSE] = CHANGE_TITLES as string[] &
  [string, string, string, string, string, string, string, string];
const FLIGHTS = [
  'Log page,Date,From,To,Take-off,Landing,Touch-and-goes,Starts,Aborted take-offs',
  'P1003,2025-01-04,KRN,VDL,10:00,12:00,0,1,0',
  'P1004,2025-01-05,VDL,KRN,10:00,09:30,0,1,0',
  'P1005,2025-01-06,KRN,VDL,10:00,11:15,1,2,0',
].map((row) => row.split(','));
const ACTS = /^(sign|another|record|undo|strike|enter|amend|withdraw|add)\b/i;
/** What holds the release up while the change is half done, and the step that clears it. */
const POINTS = [
  { words: /To inspect.*Step 6/, step: 6 },
  { words: /Still open.*Fan cowl, left/, account: 'Fan cowl', step: 8 },
  { words: /Counts differ.*blanks.*Out: 14\. In: 13\./, account: 'Blanks', step: 6 },
  { words: /Step 7.*Leak check.*3 minutes are shorter than the 5 asked for/, step: 7 },
];
const part = story();
const PIN = { method: 'PIN', secret: '704182' } as const;
const BOLTS = 'Forward mount bolt';

let at: ChangeHouse;
let clerk: Desk;
let planner: Desk;
let tablet: StepTablet;
let certifier: StepTablet;
let auditor: Desk;
let number: string;
let release: string;
let password: { readonly method: 'password'; readonly secret: string };

beforeAll(async () => {
  at = await openChangeHouse();
  const { house, crew } = at;
  password = { method: 'password', secret: house.founded.password };
  clerk = await deskIn(house);
  await clerk.signIn(crew.clerk);
  planner = await deskIn(house, SIDEWAYS);
  await planner.signIn(crew.planner);
  tablet = new StepTablet(await deskIn(house, UPRIGHT));
  await tablet.desk.signIn(crew.technician);
  certifier = new StepTablet(await deskIn(house, UPRIGHT));
  await certifier.desk.signIn(crew.certifier);
  auditor = await deskIn(house, UPRIGHT);
  await auditor.signIn(crew.auditor);
}, 180_000);

afterAll(() => at?.house.close(), 30_000);

const thePackage = async (): Promise<ShownPackage> => {
  const { rows } = done(
    await at.house.administrator.get<{ rows: ShownPackage[] }>('/api/packages?kind=engine-change'),
  );
  const found = rows.find((each) => each.number === number);
  if (found === undefined) throw new Error(`no package ${number}`);
  return found;
};

describe('an engine change, from the flights before it to the auditor after it:', () => {
  it(
    'a clerk pastes flights from a spreadsheet, mends the wrong one, and saves',
    part(async () => {
      const { page } = clerk;
      await clerk.go(`/flights/enter?airframe=${at.fleet.airframe.id}`);
      await pasteFlights(clerk, FLIGHTS);
      expect(await clerk.field('Landing, row 3').inputValue()).toBe('11:15');
      await clerk.button('Save 3 flights').click();

      const wrong = clerk.field('Landing, row 2');
      await page.getByRole('region', { name: 'There is a problem' }).waitFor();
      expect(await clerk.saidBeside(wrong)).toMatch(/^Lands before take-off/);
      await wrong.fill('11:30');
      await clerk.button('Save 3 flights').click();
      await page.getByRole('heading', { name: '3 flights saved, 4:45 h' }).waitFor();
    }),
  );

  it(
    'a planner opens the change at its position by a procedure, with the requirement it closes',
    part(async () => {
      number = await openChangeByForm(planner, REQUIREMENT);
      expect(await thePackage()).toMatchObject({ status: 'open', steps: { signed: 0, total: 8 } });
    }),
  );

  it(
    'the technician chooses a PIN, and finds the change among what waits',
    part(async () => {
      const { desk, page } = tablet;
      await desk.go('/my-authority');
      await page.getByRole('link', { name: 'Choose a PIN' }).first().tap();
      await desk.field('Your password').fill(password.secret);
      await desk.field('PIN').fill(PIN.secret);
      await desk.field('PIN again').fill(PIN.secret);
      await desk.button('Choose this PIN').tap();
      await page.getByRole('heading', { level: 1, name: 'What I may sign' }).waitFor();
      await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Work' }).tap();
      await page.getByRole('link', { name: `Continue ${number} at step 1` }).tap();
      await tablet.panel(1).waitFor();
    }),
  );

  it(
    'works the steps up to the engine on its stand; what comes off is typed from its plate',
    part(async () => {
      await tablet.record('Tags hung', { 'How many tags went out': '6' });
      await tablet.record('Tools taken out', { 'How many tools went out': '21' });
      await tablet.sign(PIN);
      await tablet.openStep(OPEN_COWL);
      await tablet.sign(PIN);
      await tablet.openStep(PART_FUEL);
      await tablet.record('Blanks put on', { 'How many blanks went out': '14' });
      await tablet.sign(PIN);
      await tablet.openStep(REMOVE);
      await tablet.plate('Serial off, from the plate', 'ZZ-E1');
      expect(await tablet.sign(PIN)).toContain('ZZ-E1');
      expect(await thePackage()).toMatchObject({ steps: { signed: 4 } });
    }),
  );

  it(
    'is told at once that a torque is out of range, in shape and words; Sign is gone and the attempt is kept',
    part(async () => {
      const { desk, page } = tablet;
      await tablet.openStep(INSTALL);
      await tablet.papers('ZZ-E3');
      await tablet.plate('Serial on, from the plate', 'ZZ-E3');
      await tablet.takeWrench('TW-014');
      await tablet.keyIn('118.4');
      const verdict = page.locator('.reading-verdict .status-mark');
      await verdict.waitFor();
      expect(await verdict.innerText()).toMatch(/3\.4 N·m above the range/);
      expect(await verdict.locator('svg').count()).toBe(1);
      await desk.button('Torque again').waitFor();
      await tablet.recordTorque('Torque again');
      const attempt = tablet.capture(BOLTS).locator('.attempt').last();
      expect(await attempt.innerText()).toMatch(/Rejected[\s\S]*set to 118\.4 N·m[\s\S]*Tess Nichols/);
      await page.getByText('Cannot be signed: an attempt stands rejected').waitFor();
      expect(await desk.button('Sign').count()).toBe(0);
    }),
  );

  it(
    'has the next one accepted as typed, with a comma, torques the others and signs',
    part(async () => {
      await tablet.type('112,5');
      await tablet.recordTorque('Record bolt 1');
      const attempts = tablet.capture(BOLTS).locator('.attempt');
      expect(await attempts.nth(0).innerText()).toMatch(/Rejected[\s\S]*118\.4/);
      expect(await attempts.nth(1).innerText()).toMatch(/Accepted[\s\S]*set to 112,5 N·m/);
      for (const bolt of ['3', '2', '4']) {
        await tablet.keyIn('110.0');
        await tablet.recordTorque(`Record bolt ${bolt}`);
      }
      expect(await tablet.sign(PIN)).toContain('112,5');
    }),
  );

  it(
    'may not inspect their own work: a different inspector must sign, here, and the session goes on',
    part(async () => {
      const { desk, page } = tablet;
      await page.getByText('A different inspector must sign: you did the work.').waitFor();
      await desk.button('Another person signs here').tap();
      const sheet = page.getByRole('dialog');
      await sheet.getByLabel('Their sign-in name').fill('tess');
      await sheet.getByLabel('Their sign-in name').blur();
      await sheet.getByText('A different inspector must sign').first().waitFor();
      await sheet.getByRole('button', { name: 'Close' }).first().tap();
      expect(await page.getByRole('heading', { name: 'Signatures' }).count()).toBe(1);

      expect(await tablet.inspect(password, 'ines')).toContain('Ines Pector');
      await tablet.panel(5).getByText('Inspected: Ines Pector, I 23').waitFor();
      await desk.button('Tess Nichols').waitFor();
    }),
  );

  it(
    'certifying staff sees what blocks the release; each point leads to the step that clears it',
    part(async () => {
      await tablet.openStep(REJOIN);
      await tablet.record('Blanks taken off', { 'How many blanks came back': '13' });
      await tablet.sign(PIN);
      await tablet.openStep(LEAKS);
      const leaks = tablet.capture('Leak check');
      await leaks.getByLabel('Power', { exact: true }).fill('idle');
      await leaks.locator('.choice-option', { hasText: 'No leak' }).tap();
      await leaks.getByRole('button', { name: 'Record the leak check' }).tap();
      await leaks.getByRole('link', { name: /^Enter how many minutes you looked/ }).waitFor();

      await tablet.leakCheck('3');

      const { id } = await thePackage();
      const held = await blocksOf(certifier, id);
      for (const point of POINTS) {
        expect(held).toContainEqual(expect.stringMatching(point.words));
        await followPoint(certifier, id, point);
      }
      const { page, desk } = certifier;
      await desk.go(`/packages/${id}/release-check`);
      expect(await desk.button('Release to service').getAttribute('aria-disabled')).toBe('true');
      expect(await page.getByLabel('Your password, again').count()).toBe(0);
    }),
  );

  it(
    'the crew clears them: blanks counted again, leaks looked for long enough, cowl closed, inspected',
    part(async () => {
      await tablet.openStep(REJOIN);
      await tablet.record('Blanks taken off', { 'How many blanks came back': '14' });
      await tablet.panel(6).getByText('No longer counts').waitFor();
      await tablet.sign(PIN);
      await tablet.inspect(password, 'ines');
      await tablet.openStep(LEAKS);
      await tablet.leakCheck('5');
      await tablet.sign(PIN);
      await tablet.openStep(CLOSE);
      await tablet.record('Tags taken in', { 'How many tags came back': '6' });
      await tablet.record('Tools back', { 'How many tools came back': '21' });
      await tablet.sign(PIN);
      await tablet.inspect(password, 'ines');
      expect(await blocksOf(certifier, (await thePackage()).id)).toEqual([]);
      await certifier.page.getByText('Ready: nothing blocks the release').waitFor();
    }),
  );

  it(
    'certifying staff signs the release; the certificate names the change, the signer and the release',
    part(async () => {
      const { page, desk } = certifier;
      await desk.field('Your password, again').fill(password.secret);
      await desk.button('Release to service').tap();
      await page
        .getByText(/^Released, /)
        .first()
        .waitFor();
      release =
        /Released, (\S+)/.exec(
          await page
            .getByText(/^Released, /)
            .first()
            .innerText(),
        )?.[1] ?? '';
      const text = await takePaper(
        page.getByRole('link', { name: /^Certificate of / }),
        'certificate-engine-change',
      );
      for (const words of [
        release,
        number,
        'ZZ-101',
        'ZZ-E1',
        'ZZ-E3',
        'Lee Roe',
        'CS 4711',
        'WO-4711',
        REQUIREMENT,
      ])
        expect(text).toContain(squeezed(words));
    }),
  );

  it(
    'an auditor reads the whole change in the history of the airframe, on screen and on paper, and is offered no act',
    part(async () => {
      const { page } = auditor;
      await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'History' }).tap();
      await auditor.link('ZZ-101').tap();
      await page.getByRole('heading', { level: 1, name: /^History of .*ZZ-101/ }).waitFor();
      await auditor.settled();
      await auditor.button('Print report').tap();
      const paper = await takePaper(auditor.link('Open the report (PDF)'), 'history-engine-change');
      const screen = squeezed(await page.getByRole('table').innerText());
      const told = ['118.4', '112,5', 'Tess Nichols', 'Ines Pector', 'Lee Roe', 'ZZ-E1', 'ZZ-E3'];
      for (const words of [...CHANGE_TITLES, ...told, number, release]) {
        expect(screen).toContain(squeezed(words));
        expect(paper).toContain(squeezed(words));
      }
      await auditor.go(`/packages/${(await thePackage()).id}?step=5`);
      await page.getByText('Inspected: Ines Pector, I 23').waitFor();
      const buttons = await page.locator('main button:visible').allInnerTexts();
      expect(buttons.filter((words) => ACTS.test(words))).toEqual([]);
    }),
  );
});
