import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { buildEngine, slotOf } from '../support/scenario/fleet.js';
import { employ } from '../support/scenario/office.js';
import type { Credentials, Desk } from '../support/thread/desk.js';
import { type FullRecord, makeFullRecord } from '../support/thread/full-record.js';
import { deskIn, engage, type House, openHouse } from '../support/thread/house.js';
import { PLAIN_PLACES, type Place, recordPlaces } from '../support/thread/places.js';
import { watched } from '../support/thread/watched.js';

let house: House;
let record: FullRecord;
let clerk: Credentials;
let desk: Desk;
/** An airframe with four engines. */
let fourId: string;

beforeAll(async () => {
  house = await openHouse();
  const certifier = await employ(house, {
    signInName: 'roe',
    fullName: 'Lee Roe',
    roles: ['certifying-staff'],
    licence: 'CS 4711',
  });
  record = await makeFullRecord(house.administrator, certifier, {
    days: 4,
    password: house.founded.password,
  });
  const { register, modelId } = record;
  const four = await register.airframe('ZZ-401', await register.airframeType('ZZ-T4', 4));
  fourId = four.id;
  for (const number of [1, 2, 3, 4]) {
    const { id } = await buildEngine(register, modelId, `ZZ-F${number}`);
    await register.place(id, { slotId: slotOf(four, number, 'engine') }, 60);
  }
  clerk = await engage(house, {
    signInName: 'clerk',
    fullName: 'Cleo Kerk',
    roles: ['records', 'administrator'],
  });
  desk = await deskIn(house);
  await desk.enter(clerk);
}, 180_000);

afterAll(() => house?.close(), 30_000);

const places = (): readonly Place[] => [
  ...PLAIN_PLACES,
  ...recordPlaces(record),
  { name: 'an airframe with four engines', path: `/positions/${fourId}` },
];

interface Focus {
  readonly element: string;
  readonly words: string;
  /** How thick the mark around it, or around its card, is, in pixels of the page; 0 when there is none. */
  readonly mark: number;
  /** Whether half of it or more is in the window, or it fills half the window. */
  readonly inSight: boolean;
}

const focus = (): Promise<Focus> =>
  desk.page.evaluate(() => {
    const element = document.activeElement as HTMLElement;
    const marks = [element, element.closest('.card, .choice-option')].flatMap((marked) => {
      if (marked === null) return [];
      const { outlineStyle, outlineWidth } = getComputedStyle(marked);
      return outlineStyle === 'none' ? [] : [Number.parseFloat(outlineWidth)];
    });
    const { left, right, top, bottom, height } = element.getBoundingClientRect();
    const seen = Math.min(bottom, innerHeight) - Math.max(top, 0);
    return {
      element: element.tagName,
      words: (element.getAttribute('aria-label') ?? element.innerText ?? '').replace(/\s+/g, ' ').trim(),
      mark: Math.max(0, ...marks),
      inSight: left < innerWidth && right > 0 && seen >= Math.min(height, innerHeight) / 2,
    };
  });

/** A desk, a tablet upright, and a desk zoomed to 200 %, in pixels of the page. */
const WIDTHS = [1280, 834, 640] as const;

describe('on a desk, on a tablet, and zoomed to 200 %', () => {
  it(
    'no page scrolls sideways',
    watched(async () => {
      const at = await deskIn(house);
      await at.enter(clerk);
      const wide: string[] = [];
      for (const { name, path } of places()) {
        await at.go(path);
        for (const width of WIDTHS) {
          await at.page.setViewportSize({ width, height: 800 });
          const over = await at.page.evaluate(() => {
            const { scrollWidth, clientWidth } = document.documentElement;
            return scrollWidth - clientWidth;
          });
          if (over > 0) wide.push(`${name} at ${width}: ${over} px too wide`);
        }
      }
      await at.leave();
      expect(wide).toEqual([]);
    }),
  );
});

describe('by keyboard', () => {
  it(
    'the keys 1 to 4 go to the card of that position, and Enter opens its engine',
    watched(async () => {
      const { page } = desk;
      await desk.go(`/positions/${fourId}`);
      const first = page.getByRole('link', { name: /^Position 1, ZZ-F1/ });
      await first.focus();
      for (const number of [3, 1, 4, 2]) {
        await page.keyboard.press(String(number));
        expect((await focus()).words).toMatch(new RegExp(`^Position ${number}, .*ZZ-F${number}$`));
      }
      await page.keyboard.press('Enter');
      await page.getByRole('heading', { level: 1, name: 'Engine ZZ-F2' }).waitFor();
    }),
  );

  it(
    'a number typed into a field stays there',
    watched(async () => {
      await desk.go(`/positions/${fourId}`);
      const asOf = desk.field('As of');
      await asOf.focus();
      await desk.page.keyboard.type('2025');
      expect(await asOf.inputValue()).toBe('2025');
    }),
  );

  it(
    'the first Tab leads past the places, and the finder goes anywhere',
    watched(async () => {
      const { page } = desk;
      await desk.go('/positions');
      await page.keyboard.press('Tab');
      expect((await focus()).words).toBe('Skip to the page');
      await page.keyboard.press('Enter');
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('main');

      await page.keyboard.press('Control+k');
      await page.getByRole('dialog', { name: 'Find' }).waitFor();
      await page.keyboard.type('impo');
      await page.keyboard.press('Enter');
      await page.getByRole('heading', { level: 1, name: 'Imports' }).waitFor();
      expect(await page.getByRole('dialog').count()).toBe(0);
    }),
  );

  it(
    'a dialog keeps the focus inside, closes on Escape and gives it back',
    watched(async () => {
      const { page } = desk;
      await desk.go('/register/locations');
      const button = desk.button('Add a location');
      await button.focus();
      await page.keyboard.press('Enter');
      await page.getByRole('dialog').waitFor();
      for (let step = 0; step < 8; step += 1) {
        await page.keyboard.press('Tab');
        expect(await page.evaluate(() => document.activeElement?.closest('[role=dialog]') !== null)).toBe(
          true,
        );
      }
      await page.keyboard.press('Escape');
      await page.getByRole('dialog').waitFor({ state: 'detached' });
      expect(await button.evaluate((element) => element === document.activeElement)).toBe(true);
    }),
  );

  it(
    'whatever Tab reaches is marked and comes into sight, on every page',
    watched(async () => {
      const { page } = desk;
      const unseen: string[] = [];
      for (const { name, path } of places()) {
        await desk.go(path);
        // The frame is the same on all: from the page's own beginning, then.
        await page.locator('main').focus();
        for (let step = 0; step < 10; step += 1) {
          await page.keyboard.press('Tab');
          const { element, words, mark, inSight } = await focus();
          if (element === 'BODY') break;
          if (mark < 2 || !inSight)
            unseen.push(`${name}: ${words} (${mark} px${inSight ? '' : ', out of sight'})`);
        }
      }
      expect(unseen).toEqual([]);
    }),
  );
});

describe('the content security policy', () => {
  it('is in force, and what it forbids is seen by these tests', async () => {
    await desk.go('/positions');
    const ran = await desk.page.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'document.documentElement.dataset.planted = "yes"';
      document.head.append(script);
      return document.documentElement.dataset['planted'] ?? 'no';
    });
    expect(ran).toBe('no');
    await desk.page.waitForTimeout(100);
    expect(desk.faults.join()).toMatch(/Content Security Policy/);
    desk.faults.length = 0;
  });
});
