import { readFile } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { employ } from '../support/scenario/office.js';
import { done } from '../support/scenario/problem.js';
import type { Desk } from '../support/thread/desk.js';
import { type FullRecord, makeFullRecord } from '../support/thread/full-record.js';
import { deskIn, engage, type House, openHouse } from '../support/thread/house.js';
import { PLAIN_PLACES, recordPlaces } from '../support/thread/places.js';
import {
  type DataHistory,
  drawSheets,
  firstMissing,
  readSheets,
  type Sheet,
  squeezed,
} from '../support/thread/printed-history.js';
import { keep, watched } from '../support/thread/watched.js';

/** Buttons that read, look or print; whatever else is offered would change the record. */
const READING =
  /^(Find\b.*|Audra Tor|Apply|Show|Show now|Show readiness|Print|Print report|Prepare the sheet \(PDF\)|Check again|Show (older|more) .*|Show the list: .*|Open all|Close all|Close)$/;

let house: House;
let record: FullRecord;
let desk: Desk;

beforeAll(async () => {
  house = await openHouse();
  const certifier = await employ(house, {
    signInName: 'roe',
    fullName: 'Lee Roe',
    roles: ['certifying-staff'],
    licence: 'CS 4711',
  });
  record = await makeFullRecord(house.administrator, certifier, {
    days: 45,
    password: house.founded.password,
  });
  const auditor = await engage(house, { signInName: 'audra', fullName: 'Audra Tor', roles: ['auditor'] });
  desk = await deskIn(house);
  await desk.signIn(auditor);
}, 180_000);

afterAll(() => house?.close(), 30_000);

/** Pages that are there for an act alone. */
const ACT_PAGES = 'a[href^="/changes/new"], a[href^="/packages/new"], a[href^="/flights/enter"]';

/** The names of what the page offers to press beside links to pages that only show, and the heads that sort. */
const offered = (): Promise<string[]> =>
  desk.page.locator(`button:not(th button), input[type=file], ${ACT_PAGES}`).evaluateAll((all) =>
    all
      .filter((element) => element.checkVisibility())
      .map((element) => element.getAttribute('aria-label') ?? (element as HTMLElement).innerText)
      .map((name) => name.replace(/\s+/g, ' ').trim()),
  );

describe('an auditor', () => {
  it(
    'opens every page and is offered no act on any of them',
    watched(async () => {
      const acts: string[] = [];
      for (const { name, path } of [...PLAIN_PLACES, ...recordPlaces(record)]) {
        await desk.go(path);
        expect(await desk.page.getByRole('alert').allInnerTexts()).toEqual([]);
        expect(await desk.page.getByText('Read only', { exact: true }).count()).toBe(1);
        for (const button of await offered()) if (!READING.test(button)) acts.push(`${name}: ${button}`);
      }
      expect(acts).toEqual([]);
    }),
  );

  it(
    'is told who enters flights, opens a package and logs a change where the address is typed',
    watched(async () => {
      await desk.go('/flights/enter');
      await desk.page.getByText('Flights are entered by: Records office or Administrator.').waitFor();
      await desk.go('/packages/new');
      await desk.page.getByRole('heading', { name: 'You may not open a package' }).waitFor();
      await desk.go('/changes/new');
      await desk.page.getByRole('heading', { name: 'You may not log a change' }).waitFor();
    }),
  );

  it(
    'reads the history of an airframe: every line of the data, the struck one with its reason',
    watched(async () => {
      await desk.goToPlace('History');
      await desk.link('ZZ-101').click();
      await desk.page.getByRole('heading', { level: 1, name: /^History of .*ZZ-101/ }).waitFor();
      await desk.settled();

      const { lines } = await historyOf('airframes', record.airframe.id);
      const rows = desk.page.getByRole('table').locator('tbody tr:not(.line-year)');
      expect(await rows.count()).toBe(lines.length);
      const struck = lines.filter((line) => line.struck !== null);
      expect(struck).toHaveLength(2);
      expect(await desk.page.locator('tr[data-voided]').count()).toBe(2);
      expect(squeezed(await desk.page.getByRole('table').innerText())).toContain('ΩŁódź—endofthereason');
    }),
  );

  it(
    'finds the history of an engine by its serial',
    watched(async () => {
      await desk.goToPlace('History');
      await desk.field('Serial or part number').fill('ZZ-E1');
      await desk.page.getByRole('option', { name: /^ZZ-E1\s/ }).click();
      await desk.page.getByRole('heading', { level: 1, name: 'History of Engine ZZ-E1' }).waitFor();
      await desk.settled();
      const { lines } = await historyOf('components', record.engineId);
      expect(await desk.page.getByRole('table').locator('tbody tr:not(.line-year)').count()).toBe(
        lines.length,
      );
    }),
  );
});

const historyOf = async (kind: string, id: string) =>
  done(await house.administrator.get<DataHistory>(`/api/${kind}/${id}/history`));

/** Has the report of the history in sight prepared, takes it from the page, and keeps it. */
async function download(name: string): Promise<{ bytes: Uint8Array; file: string }> {
  await desk.button('Print report').click();
  const link = desk.link('Open the report (PDF)');
  await link.waitFor({ timeout: 60_000 });
  const [taken] = await Promise.all([desk.page.waitForEvent('download'), link.click()]);
  const bytes = await readFile(await taken.path());
  return { bytes, file: keep(`${name}.pdf`, bytes) };
}

const HEADS = squeezed('When (UTC) What Adds Total Recorded');

/** What stands below the table's heads, sheet after sheet. */
const bodyOf = (sheets: readonly Sheet[]): string =>
  sheets
    .map(({ texts }) => squeezed(texts.map(({ text }) => text).join(' ')))
    .map((text) => text.slice(text.indexOf(HEADS) + HEADS.length))
    .join('');

describe.each([
  { kind: 'airframes', name: 'history-airframe', label: 'ZZ-101', id: () => record.airframe.id },
  { kind: 'components', name: 'history-engine', label: 'ZZ-E1', id: () => record.engineId },
])('the report an auditor takes home: $name', ({ kind, name, label, id }) => {
  let sheets: Sheet[];

  it(
    'shows every value of every line of the data, in order',
    watched(async () => {
      await desk.go(`/history/${kind}/${id()}`);
      const { bytes, file } = await download(name);
      drawSheets(file);
      sheets = await readSheets(bytes);
      const { lines } = await historyOf(kind, id());

      expect(lines.length).toBeGreaterThan(45);
      expect(firstMissing(lines, bodyOf(sheets))).toBeNull();
    }),
  );

  it('names its subject and its number on every sheet', () => {
    expect(sheets.length).toBeGreaterThan(1);
    for (const [index, { texts }] of sheets.entries()) {
      const text = texts
        .map((each) => each.text)
        .join(' ')
        .replace(/\s+/g, ' ');
      expect(text).toContain(label);
      expect(text).toContain(`Page ${index + 1} of ${sheets.length}`);
    }
  });

  it('keeps every text on the sheet and large enough to be read', () => {
    const off = sheets.flatMap(({ width, height, texts }) =>
      texts.filter(
        ({ x, y, height: size }) => x < 20 || x > width - 20 || y < 20 || y > height - 20 || size < 6,
      ),
    );
    expect(off).toEqual([]);
  });
});
