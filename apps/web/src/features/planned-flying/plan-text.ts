import { parseDate, parseMoment } from '../../format/utc-moment.js';
import { wireMinute } from '../../format/when.js';

/** A flight as the server takes it. */
export interface PlanFlight {
  readonly flightNumber?: string;
  readonly fromStation?: string;
  readonly toStation?: string;
  readonly takeOffAt: string;
  readonly landingAt: string;
}

/** What is wrong with one line, from 1. */
export interface LineFault {
  readonly line: number;
  readonly message: string;
}

/** The flights of a text, or every line that is not readable. */
export interface ReadPlan {
  readonly flights: readonly PlanFlight[];
  /** The line of each flight, from 1, so that the server's refusal can name it. */
  readonly lines: readonly number[];
  readonly faults: readonly LineFault[];
}

type Field = 'flightNumber' | 'date' | 'fromStation' | 'toStation' | 'takeOffAt' | 'landingAt' | 'ignored';

/** The order without headings; a first cell that is no date is the flight's number. */
const ORDER: readonly Field[] = ['date', 'fromStation', 'toStation', 'takeOffAt', 'landingAt'];

const HEADINGS: ReadonlyMap<string, Field> = new Map<string, Field>([
  ['flight', 'flightNumber'],
  ['flightnumber', 'flightNumber'],
  ['number', 'flightNumber'],
  ['logpage', 'ignored'],
  ['page', 'ignored'],
  ['registration', 'ignored'],
  ['airframe', 'ignored'],
  ['date', 'date'],
  ['from', 'fromStation'],
  ['to', 'toStation'],
  ['takeoff', 'takeOffAt'],
  ['takeoffutc', 'takeOffAt'],
  ['off', 'takeOffAt'],
  ['landing', 'landingAt'],
  ['landingutc', 'landingAt'],
  ['on', 'landingAt'],
]);

const plain = (heading: string): string => heading.toLowerCase().replaceAll(/[^a-z]/g, '');
const CLOCK = /^([01]?\d|2[0-3]):?([0-5]\d)(?:\s*\+\s*(1))?$/;
const STATION = /^[A-Z0-9]{2,8}$/;
const DAY_MINUTES = 1440;

function cellsOf(line: string): string[] {
  const separator = line.includes('\t') ? '\t' : line.includes(';') ? ';' : ',';
  return line.split(separator).map((cell) => cell.trim().replaceAll(/^"|"$/g, ''));
}

/**
 * Reads flights from a table of a spreadsheet or a text: a line for each, cells by tabs, semicolons or commas, with
 * headings or in the order date, from, to, take-off, landing, a flight number before or not. All times are UTC;
 * '00:35+1' lands on the next day, and so does a landing earlier than its take-off. Total.
 */
export function readPlan(text: string): ReadPlan {
  const all = text.split(/\r?\n/).map((line, index) => ({ cells: cellsOf(line), line: index + 1 }));
  const rows = all.filter(({ cells }) => cells.some((cell) => cell !== ''));
  const [head, ...rest] = rows;
  if (head === undefined) return { flights: [], lines: [], faults: [] };
  const named = head.cells.map((cell) => HEADINGS.get(plain(cell)));
  const hasHead = named.filter((field) => field !== undefined).length >= 2;
  const flights: PlanFlight[] = [];
  const lines: number[] = [];
  const faults: LineFault[] = [];
  for (const { cells, line } of hasHead ? rest : rows) {
    const read = flightOf(byField(cells, hasHead ? named : orderOf(cells)));
    if (typeof read === 'string') faults.push({ line, message: read });
    else {
      flights.push(read);
      lines.push(line);
    }
  }
  return { flights, lines, faults };
}

function orderOf(cells: readonly string[]): readonly Field[] {
  const [first = ''] = cells;
  return parseDate(first).ok || parseMoment(first).ok ? ORDER : ['flightNumber', ...ORDER];
}

function byField(
  cells: readonly string[],
  fields: readonly (Field | undefined)[],
): Partial<Record<Field, string>> {
  return Object.fromEntries(
    cells.flatMap((cell, place) => {
      const field = fields[place];
      return field === undefined || field === 'ignored' || cell === '' ? [] : [[field, cell]];
    }),
  );
}

function flightOf(cells: Partial<Record<Field, string>>): PlanFlight | string {
  const { flightNumber, fromStation, toStation, date } = cells;
  const from = fromStation?.toUpperCase();
  const to = toStation?.toUpperCase();
  const takeOff = momentOf(cells.takeOffAt, date);
  if (takeOff === null)
    return 'The take-off is not readable: enter a date such as 2026-11-30 and a time in UTC such as 14:20.';
  const landing = momentOf(cells.landingAt, cells.landingAt?.includes('-') === true ? undefined : date);
  if (landing === null)
    return 'The landing is not readable: enter a time in UTC such as 18:02, or 00:35+1 for the next day.';
  const wrong = [from, to].find((station) => station !== undefined && !STATION.test(station));
  if (wrong !== undefined) return `“${wrong}” is no station: enter 2 to 8 letters or digits.`;
  // A landing earlier in the day than its take-off is of the next day.
  const isOvernight = landing <= takeOff && CLOCK.test(cells.landingAt ?? '');
  return {
    ...(flightNumber === undefined ? {} : { flightNumber }),
    ...(from === undefined ? {} : { fromStation: from }),
    ...(to === undefined ? {} : { toStation: to }),
    takeOffAt: wireMinute(takeOff),
    landingAt: wireMinute(isOvernight ? landing + DAY_MINUTES : landing),
  };
}

function momentOf(typed: string | undefined, date: string | undefined): number | null {
  if (typed === undefined) return null;
  const whole = parseMoment(typed);
  if (whole.ok) return whole.instant;
  const match = CLOCK.exec(typed);
  const day = parseMoment(`${date ?? ''} 00:00`);
  if (match === null || !day.ok) return null;
  return day.instant + Number(match[1]) * 60 + Number(match[2]) + (match[3] === undefined ? 0 : DAY_MINUTES);
}
