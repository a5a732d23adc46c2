import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const SEED = join(dirname(fileURLToPath(import.meta.url)), '..');

export function text(path) {
  return readFileSync(join(SEED, path), 'utf8');
}

export function json(path) {
  return JSON.parse(text(path));
}

export function filesIn(folder) {
  return readdirSync(join(SEED, folder)).sort();
}

/** The rows of a table (RFC 4180) by their column names; an empty cell is ''. */
export function table(path) {
  const [header, ...lines] = text(path).trimEnd().split('\n').map(cells);
  return lines.map((line) => Object.fromEntries(header.map((name, index) => [name, line[index]])));
}

function cells(line) {
  return [...`,${line}`.matchAll(/,(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(([, quoted, plain]) =>
    quoted === undefined ? plain : quoted.replaceAll('""', '"'),
  );
}

/** Does the work for each item, a few at a time; the first failure ends it. */
export async function each(items, atOnce, work) {
  const waiting = items.values();
  const answers = [];
  await Promise.all(
    Array.from({ length: atOnce }, async () => {
      for (const item of waiting) answers.push(await work(item));
    }),
  );
  return answers;
}
