import { readFile } from 'node:fs/promises';
import type { Locator } from 'playwright-core';
import { readPdf } from '../pdf-text.js';
import { squeezed } from './printed-history.js';
import { keep } from './watched.js';

/** Taps a link to a PDF, keeps the file under this name, and answers all its words without white space. */
export async function takePaper(link: Locator, name: string): Promise<string> {
  await link.waitFor({ timeout: 60_000 });
  const [taken] = await Promise.all([link.page().waitForEvent('download'), link.tap()]);
  const bytes = await readFile(await taken.path());
  keep(`${name}.pdf`, bytes);
  return squeezed((await readPdf(bytes)).pages.map(({ text }) => text).join(' '));
}
