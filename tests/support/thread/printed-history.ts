import { spawnSync } from 'node:child_process';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

interface PrintedCycles {
  readonly units: number;
  readonly denominator: number;
}

/** A line of a history as the API gives it. */
export interface DataLine {
  readonly at: string;
  readonly placed: string | null;
  readonly title: string;
  readonly detail: string;
  readonly struck: { readonly recordedAt: string; readonly by: string; readonly reason: string } | null;
  readonly adds: { readonly minutes: number | null; readonly cycles: PrintedCycles | null } | null;
  readonly totals: { readonly minutes: number | null; readonly cycles: number | null };
  readonly entry: {
    readonly number: number | null;
    readonly recordedAt: string;
    readonly by: string;
    readonly hash: string | null;
  };
}

/** A history as the API gives it. */
export interface DataHistory {
  readonly subject: { readonly label: string };
  readonly lines: readonly DataLine[];
  readonly totals: { readonly lines: number };
}

/** A text on a sheet, where it stands in points from the lower left, and how high it is. */
export interface PrintedText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly height: number;
}

/** A sheet with its texts in the order of its content. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly PrintedText[];
}

/** Reads the texts of every sheet, each with its place. */
export async function readSheets(bytes: Uint8Array): Promise<Sheet[]> {
  const loading = getDocument({ data: new Uint8Array(bytes), useSystemFonts: true, verbosity: 0 });
  const document = await loading.promise;
  const sheets: Sheet[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const { width, height } = page.getViewport({ scale: 1 });
    const { items } = await page.getTextContent();
    const texts = items.flatMap((item) => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [, , , , x = 0, y = 0] = item.transform as number[];
      return [{ text: item.str, x, y, height: item.height }];
    });
    sheets.push({ width, height, texts });
  }
  await loading.destroy();
  return sheets;
}

/** Without white space: a wrapped word is the same word. */
export const squeezed = (text: string): string => text.normalize('NFC').replace(/\s+/g, '');

const clock = (at: string): string => at.replace('T', ' ');
const hours = (minutes: number | null): string =>
  minutes === null
    ? 'hours not known'
    : `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')} h`;
const added = ({ units, denominator }: PrintedCycles): string =>
  denominator === 1 ? `${units}` : `${units}/${denominator}`;

/** Every value of a line by its path, in the order of its members, as it is written on paper. */
export function valuesOf(line: DataLine): readonly (readonly [path: string, printed: string])[] {
  const { struck, adds, totals, entry } = line;
  const values: [string, string | null][] = [
    ['at', clock(line.at)],
    ['placed', line.placed],
    ['title', line.title],
    ['detail', line.detail],
    ['struck.recordedAt', struck && clock(struck.recordedAt)],
    ['struck.by', struck?.by ?? null],
    ['struck.reason', struck?.reason ?? null],
    ['adds.minutes', adds && hours(adds.minutes)],
    ['adds.cycles', adds && (adds.cycles === null ? 'cycles not known' : added(adds.cycles))],
    ['totals.minutes', hours(totals.minutes)],
    ['totals.cycles', totals.cycles === null ? 'cycles not known' : String(totals.cycles)],
    ['entry.number', entry.number === null ? 'No entry' : String(entry.number)],
    ['entry.recordedAt', clock(entry.recordedAt)],
    ['entry.by', entry.by],
    ['entry.hash', entry.hash],
  ];
  return values.flatMap(([path, printed]) => (printed === null || printed === '' ? [] : [[path, printed]]));
}

/** Between two values of a line stand no more than a few words, such as 'Struck' or 'No.'. */
const MOST_BETWEEN = 12;

/** The first value of the lines that does not stand where it belongs in the text; null when all do. */
export function firstMissing(lines: readonly DataLine[], text: string): string | null {
  const whole = squeezed(text);
  let from = 0;
  for (const [index, line] of lines.entries())
    for (const [path, printed] of valuesOf(line)) {
      const wanted = squeezed(printed);
      const at = whole.slice(from, from + MOST_BETWEEN + wanted.length).indexOf(wanted);
      if (at < 0) return `line ${index + 1}, ${path}: ${printed}; there: ${whole.slice(from, from + 80)}`;
      from += at + wanted.length;
    }
  return null;
}

/** Draws the sheets of a kept document beside it, for looking at. Answers false where there is no program for it. */
export function drawSheets(file: string): boolean {
  const { error, status, stderr } = spawnSync('pdftoppm', [
    '-r',
    '70',
    '-png',
    file,
    file.replace(/\.pdf$/, ''),
  ]);
  if (error !== undefined) return false;
  if (status !== 0) throw new Error(`pdftoppm: ${stderr.toString()}`);
  return true;
}
