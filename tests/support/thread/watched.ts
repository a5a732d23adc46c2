import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect } from '@jest/globals';
import { desksInUse } from './desk.js';

/** Where pictures and documents of the browser tests are kept for looking at. */
export const outputFolder = fileURLToPath(new URL('../../../.test-output/', import.meta.url));

const fileName = (words: string): string => words.replace(/\W+/g, '-').slice(0, 120);

/** Keeps a file of this name among the output and answers its path. */
export function keep(name: string, bytes: Uint8Array): string {
  fs.mkdirSync(outputFolder, { recursive: true });
  const file = path.join(outputFolder, name);
  fs.writeFileSync(file, bytes);
  return file;
}

async function photograph(): Promise<void> {
  const test = fileName(expect.getState().currentTestName ?? 'browser test');
  for (const [index, { page }] of desksInUse().entries()) {
    const picture = await page.screenshot({ fullPage: true, timeout: 10_000 }).catch(() => null);
    if (picture !== null) console.error(`picture: ${keep(`failed-${test}-${index + 1}.png`, picture)}`);
  }
}

/** A test that leaves a picture of every desk when it fails, and that fails when a page broke its own rules. */
export function watched(work: () => Promise<void>): () => Promise<void> {
  return async () => {
    try {
      await work();
      expect(desksInUse().flatMap(({ faults }) => faults)).toEqual([]);
    } catch (error) {
      await photograph();
      throw error;
    } finally {
      for (const { faults } of desksInUse()) faults.length = 0;
    }
  };
}

/** Parts of one story, each resting on those before it: after the first that fails, the rest say so at once. */
export function story(): (work: () => Promise<void>) => () => Promise<void> {
  let broken = false;
  return (work) => async () => {
    if (broken) throw new Error('an earlier part of this story failed');
    broken = true;
    await watched(work)();
    broken = false;
  };
}
