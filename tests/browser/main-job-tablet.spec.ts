import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { type ChangeHouse, openChangeHouse, orderChange } from '../support/thread/change-house.js';
import { deskIn, engage } from '../support/thread/house.js';
import { SIDEWAYS, StepTablet, UPRIGHT } from '../support/thread/step-tablet.js';
import { watched } from '../support/thread/watched.js';
import { type ShownPackage, stepOf, workOf } from '../support/work/work-desk.js';

const BOLTS = 'Forward mount bolt';

let at: ChangeHouse;
let work: ShownPackage;
let first: StepTablet;
let second: StepTablet;
let password: { readonly method: 'password'; readonly secret: string };

beforeAll(async () => {
  at = await openChangeHouse();
  const { house, crew } = at;
  password = { method: 'password', secret: house.founded.password };
  work = await orderChange(at);
  first = new StepTablet(await deskIn(house, UPRIGHT));
  await first.desk.enter(crew.technician);
  second = new StepTablet(await deskIn(house, SIDEWAYS));
  await second.desk.enter(
    await engage(house, { signInName: 'theo', fullName: 'Theo Second', roles: ['technician'] }),
  );
}, 180_000);

afterAll(() => at?.house.close(), 30_000);

const goTo = (tablet: StepTablet, step: number) => tablet.desk.go(`/packages/${work.id}?step=${step}`);

const stored = async (key: string) => stepOf(await workOf(at.house.administrator, work.id), key);

describe('a torque typed at a tablet', () => {
  it.each([
    { typed: '118.4', verdict: 'Rejected', words: /3\.4 N·m above the range/ },
    { typed: '1e2', verdict: 'Rejected', words: null },
    { typed: '115.01', verdict: 'Rejected', words: /0\.01 N·m above the range/ },
    { typed: '105.0', verdict: 'Accepted', words: /Inside the range/ },
    { typed: '112,5', verdict: 'Accepted', words: /Inside the range/ },
  ])('as $typed is stored and shown as typed: $verdict', ({ typed, verdict, words }) =>
    watched(async () => {
      await goTo(first, 5);
      const { page } = first;
      if ((await first.wrench().count()) === 0)
        await first.capture(BOLTS).getByRole('button', { name: 'Enter again' }).tap();
      await first.takeWrench('TW-014');
      await first.type(typed);
      expect(await first.wrench().inputValue()).toBe(typed);
      if (words !== null) await page.locator('.reading-verdict').filter({ hasText: words }).waitFor();
      await first.recordTorque(verdict === 'Rejected' ? 'Keep as rejected' : /^Record bolt/);

      const entry = (await stored('install')).entries.at(-1);
      expect(entry).toMatchObject({
        typed: { indication: typed },
        judgement: { verdict: verdict.toLowerCase() },
      });
      const attempts = first.capture(BOLTS).locator('.attempt');
      expect(await attempts.last().innerText()).toContain(verdict);
      await goTo(first, 5);
      expect(await attempts.last().innerText()).toContain(`set to ${typed} N·m`);
    })(),
  );
});

describe('a session that ends in the middle of a step', () => {
  it(
    'asks to sign in again above the page; what was typed stands there after it, and is recorded',
    watched(async () => {
      const { page, desk } = first;
      await goTo(first, 1);
      await page.getByLabel('How many tags went out', { exact: true }).fill('6');
      await desk.context.clearCookies();
      await first.capture('Tags hung').getByRole('button', { name: 'Record the count' }).tap();
      const again = page.getByRole('alertdialog', { name: 'Your session has ended' });
      await again.waitFor();
      await again.getByLabel('Password', { exact: true }).fill(password.secret);
      await again.getByRole('button', { name: 'Sign in' }).tap();
      await again.waitFor({ state: 'detached' });
      const field = page.getByLabel('How many tags went out', { exact: true });
      expect(await field.inputValue()).toBe('6');
      await first.capture('Tags hung').getByRole('button', { name: 'Record the count' }).tap();
      await first.capture('Tags hung').locator('.attempt').first().waitFor();
      expect((await stored('make-safe')).entries.map(({ typed }) => typed)).toEqual([
        { kind: 'count', number: '6' },
      ]);
    }),
  );

  it(
    'keeps a torque that was typed and not recorded',
    watched(async () => {
      const { page, desk } = first;
      await goTo(first, 5);
      await first.takeWrench('TW-014');
      await first.type('110.0');
      await desk.context.clearCookies();
      await desk.button(/^Record bolt/).tap();
      const again = page.getByRole('alertdialog', { name: 'Your session has ended' });
      await again.waitFor();
      await again.getByLabel('Password', { exact: true }).fill(password.secret);
      await again.getByRole('button', { name: 'Sign in' }).tap();
      await again.waitFor({ state: 'detached' });
      expect(await first.wrench().inputValue()).toBe('110.0');
      await first.recordTorque(/^Record bolt/);
    }),
  );
});

describe('without a connection', () => {
  it(
    'what is typed stays, and recording and signing are off with their reason',
    watched(async () => {
      const { page, desk } = first;
      await goTo(first, 1);
      await first.record('Tools taken out', { 'How many tools went out': '21' });
      const tags = first.capture('Tags hung');
      await tags.getByRole('button', { name: 'Enter again' }).tap();
      const field = tags.getByLabel('How many tags went out', { exact: true });
      await field.fill('7');
      await desk.context.setOffline(true);
      await page.getByText(/^Offline since /).waitFor();
      await tags.getByText('Off while there is no connection. What you typed stays here.').waitFor();
      const record = tags.getByRole('button', { name: 'Record the count' });
      expect(await record.getAttribute('aria-disabled')).toBe('true');
      expect(await field.inputValue()).toBe('7');
      const sign = desk.button('Sign');
      expect(await sign.getAttribute('aria-disabled')).toBe('true');
      await first.panel(1).locator('.sign-area').getByText('Off while there is no connection').waitFor();
      await sign.tap({ force: true });
      expect(await page.getByRole('dialog').count()).toBe(0);
      await desk.context.setOffline(false);
      await page.getByText(/^Offline since /).waitFor({ state: 'detached' });
      expect(await sign.getAttribute('aria-disabled')).not.toBe('true');
    }),
  );
});

describe('two tablets that sign one step', () => {
  it(
    'the second is told who signed it and when, that nothing of theirs was signed, and goes back to the step',
    watched(async () => {
      for (const tablet of [first, second]) {
        await goTo(tablet, 1);
        await tablet.desk.button('Sign').tap();
      }
      const sheet = await second.fillSheet(password);
      await first.signSheet(password);
      await sheet.getByRole('button', { name: 'Sign these words' }).tap();

      const conflict = second.page.getByRole('alert').filter({ hasText: 'Signed by somebody else first' });
      await conflict.waitFor();
      const words = (await conflict.innerText()).replace(/\s+/g, ' ');
      expect(words).toMatch(/Yours Not recorded/);
      expect(words).toMatch(/On record now Tess Nichols, \d{1,2} \w{3} \d{4} \d\d:\d\dZ/);
      expect(words).toContain('Nothing was signed.');
      await second.desk.button('Back to the step').tap();
      await second.panel(1).getByText('Work done: Tess Nichols, T 17').waitFor();
      const { signatures } = await stored('make-safe');
      expect(signatures.map(({ personName }) => personName)).toEqual(['Tess Nichols']);
    }),
  );
});

/** Smallest of the glass that is meant for a finger: WCAG 2.2 asks for 24 px, 44 px is the enhanced size (2.5.5). */
const FINGER = 44;

/** What a finger is to hit in a part of the page, and is smaller: its name and size. */
const tooSmall = (tablet: StepTablet, within: string): Promise<string[]> =>
  tablet.page
    .locator(`${within} :is(button, input, select, textarea, summary, a, label.choice-option)`)
    .evaluateAll(
      (all, least) =>
        all
          .filter((each) => each.checkVisibility() && !each.closest('.visually-hidden, p'))
          .filter((each) => !(each instanceof HTMLInputElement && each.type === 'radio'))
          .map((each) => ({ each, box: each.getBoundingClientRect() }))
          .filter(({ box }) => Math.min(box.width, box.height) < least - 0.5)
          .map(
            ({ each, box }) =>
              `${each.getAttribute('aria-label') ?? each.textContent?.trim() ?? each.tagName}: ${Math.round(box.width)} × ${Math.round(box.height)}`,
          ),
      FINGER,
    );

describe.each([
  { name: 'upright', tablet: () => first },
  { name: 'on its side', tablet: () => second },
])('on a tablet held $name', ({ tablet: held }) => {
  it(
    'every control of a step is large enough for a finger; the keys of the keypad are 20 mm',
    watched(async () => {
      const tablet = held();
      await goTo(tablet, 5);
      if ((await tablet.wrench().count()) === 0)
        await tablet.capture(BOLTS).getByRole('button', { name: 'Enter again' }).tap();
      expect(await tooSmall(tablet, '.step-panel')).toEqual([]);
      const keys = await tablet.page.locator('.key').evaluateAll((all) => {
        const mm = Number.parseFloat(getComputedStyle(document.documentElement).getPropertyValue('--mm'));
        return all.map((key) => {
          const { width, height } = key.getBoundingClientRect();
          return Math.min(width, height) / mm;
        });
      });
      expect(keys).toHaveLength(13);
      expect(Math.min(...keys)).toBeGreaterThanOrEqual(20);
      await tablet.panel(5).evaluate((panel) => {
        const planted = document.createElement('button');
        planted.style.cssText = 'width: 40px; height: 60px; padding: 0';
        planted.textContent = 'x';
        panel.append(planted);
      });
      expect(await tooSmall(tablet, '.step-panel')).toEqual(['x: 40 × 60']);
    }),
  );

  it(
    'every control of the sheet to sign is, and nothing is wider than the glass',
    watched(async () => {
      const tablet = held();
      await goTo(tablet, 2);
      await tablet.desk.button('Sign').tap();
      await tablet.page.getByRole('dialog').locator('blockquote').waitFor();
      expect(await tooSmall(tablet, ':is([role=dialog], dialog)')).toEqual([]);
      expect(
        await tablet.page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
      ).toBeLessThanOrEqual(0);
    }),
  );
});
