import type { components } from '@strutbook/api-client/schema.gen.js';
import { parseHours } from '../../../format/hours.js';
import type { EngineModel } from '../../../server/fleet.js';
import { whole } from '../plain-checks.js';

export type LimitRow = components['schemas']['LimitRowDto'];

/** A row that can't be read, by the line it stands on. */
export interface LineFault {
  readonly line: number;
  readonly message: string;
}

/** What was pasted, row by row. */
export interface Pasted {
  /** The line each row stands on is `lines[index]`. */
  readonly rows: readonly LimitRow[];
  readonly lines: readonly number[];
  readonly faults: readonly LineFault[];
}

/** The columns, in their order. */
export const PASTED_COLUMNS = 'Part number, engine model, rating, cycles, hours, calendar';

const SPANS =
  /^(\d{1,5})\s*(day|month|year)s?\s+from\s+(new|first installation|overhaul)(?:,?\s+to month end)?$/i;
const ANY = new Set(['', 'any', '*']);
const WORDS: Readonly<Record<string, LimitRow['authorisation']>> = {
  'n/l': 'not-limited',
  'not limited': 'not-limited',
  'n/a': 'not-authorised',
  'not authorised': 'not-authorised',
};

/**
 * Rows of a table as they come from a spreadsheet: cells by tabs, or by commas or semicolons. A head line is left out.
 * Cycles may say 'N/L' (not limited) or 'N/A' (not authorised); the calendar is '10 years from new', '400 days from
 * overhaul' or '24 months from new to month end'. Total.
 */
export function readPasted(text: string, models: readonly EngineModel[]): Pasted {
  const found: { rows: LimitRow[]; lines: number[]; faults: LineFault[] } = {
    rows: [],
    lines: [],
    faults: [],
  };
  for (const [index, line] of text.split(/\r?\n/).entries()) {
    if (line.trim() === '' || /^\s*part[ _]?number/i.test(line)) continue;
    const row = readRow(cellsOf(line), models);
    if (typeof row === 'string') found.faults.push({ line: index + 1, message: row });
    else {
      found.rows.push(row);
      found.lines.push(index + 1);
    }
  }
  return found;
}

function cellsOf(line: string): readonly string[] {
  const by = line.includes('\t') ? '\t' : line.includes(';') ? ';' : ',';
  return line.split(by).map((cell) => cell.trim());
}

/** The row, or what is wrong with it. */
function readRow(cells: readonly string[], models: readonly EngineModel[]): LimitRow | string {
  const [partNumber = '', model = '', rating = '', cycles = '', hours = '', calendar = ''] = cells;
  if (partNumber === '') return 'Enter the part number first.';
  const found = models.find(({ designation }) => designation.toLowerCase() === model.toLowerCase());
  if (found === undefined)
    return `${model === '' ? 'No model' : `“${model}”`} is not an engine model on record.`;
  const row = {
    partNumber,
    engineModelId: found.id,
    ...(ANY.has(rating.toLowerCase()) ? {} : { ratingCode: rating }),
  };
  const authorisation = WORDS[cycles.toLowerCase()];
  if (authorisation !== undefined)
    return hours === '' && calendar === '' ? { ...row, authorisation } : `“${cycles}” leaves no other limit.`;
  const limits = readLimits(cycles, hours, calendar);
  return typeof limits === 'string' ? limits : { ...row, authorisation: 'limited', ...limits };
}

function readLimits(cycles: string, hours: string, calendar: string): Partial<LimitRow> | string {
  const count = cycles === '' ? null : whole(cycles.replaceAll(/[ ,](?=\d{3})/g, ''));
  if (cycles !== '' && (count ?? 0) < 1) return `“${cycles}” is not a whole number of cycles.`;
  const time = hours === '' ? null : minutesOf(hours);
  if (time === 0) return `“${hours}” is not a number of hours.`;
  const days = calendar === '' ? {} : readCalendar(calendar);
  if (days === null) return `“${calendar}” is not a calendar life: write it as “10 years from new”.`;
  if (count === null && time === null && calendar === '') return 'Enter cycles, hours or a calendar life.';
  return {
    ...(count === null ? {} : { cycles: count }),
    ...(time === null ? {} : { minutes: time }),
    ...days,
  };
}

/** Whole minutes of typed hours, with or without minutes; 0 of what is none. */
function minutesOf(hours: string): number {
  const time = parseHours(/^[\d,]+$/.test(hours) ? `${hours}:00` : hours);
  return time.ok ? time.minutes : 0;
}

function readCalendar(text: string): Partial<LimitRow> | null {
  const [, count, unit, from] = SPANS.exec(text) ?? [];
  if (count === undefined || unit === undefined || from === undefined || Number(count) < 1) return null;
  const isDays = unit.toLowerCase() === 'day';
  return {
    calendarSpan: Number(count) * (unit.toLowerCase() === 'year' ? 12 : 1),
    calendarUnit: isDays ? 'days' : 'months',
    calendarFrom: from.toLowerCase().replace(' ', '-') as NonNullable<LimitRow['calendarFrom']>,
    ...(isDays
      ? {}
      : { monthRule: /to month end$/i.test(text) ? ('month-end' as const) : ('same-day' as const) }),
  };
}
