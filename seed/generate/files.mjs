import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const SEED = join(dirname(fileURLToPath(import.meta.url)), '..');

const WIDEST_LINE = 110;
const LIST = /^( *(?:"[^"]*": )?)\[\n\s+("[^"]*"(?:,\n\s+"[^"]*")*)\n\s+\](,?)$/gm;

/** Readable JSON, as the formatter leaves it: a list of words stands on one line where it fits. */
export function writeJson(path, value) {
  const text = JSON.stringify(value, null, 2).replace(LIST, (whole, before, words, comma) => {
    const line = `${before}[${words.replace(/,\n\s+/g, ', ')}]${comma}`;
    return line.length > WIDEST_LINE ? whole : line;
  });
  write(path, `${text}\n`);
}

/** Rows of one shape, RFC 4180: a value with a comma or a quote is quoted. */
export function writeCsv(path, rows) {
  const columns = Object.keys(rows[0]);
  const lines = rows.map((row) => columns.map((column) => cell(row[column])).join(','));
  write(path, `${[columns.join(','), ...lines].join('\n')}\n`);
}

function cell(value) {
  const text = String(value);
  if (!/[",\r\n]/.test(text)) return text;
  return `"${text.replaceAll('"', '""')}"`;
}

function write(path, text) {
  const file = join(SEED, path);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
}
