import { readDecimal, readSignedDecimal } from '../torque/decimal.js';
import { compare, type Fraction, fraction } from '../units/fraction.js';
import type { LeakCheckCapture, ReadingRow, ReadingsCapture } from './capture.js';
import type { EntryReason, Typed } from './entry.js';

/**
 * What is held against a leak check: a duration missing or too short, a power missing or another one, a leak.
 * The duration asked for is enough. Total.
 *
 * Source: NTSB AAR-84/04 (a short motoring check found nothing); JTSB AI2015-2 (a leak shows at power).
 */
export function judgeLeakCheck(
  capture: LeakCheckCapture,
  typed: Extract<Typed, { kind: 'leak-check' }>,
): EntryReason[] {
  return [
    ...durationReasons(typed.minutes, capture.minMinutes),
    ...powerReasons(typed.power, capture.power),
    ...(typed.found === 'leak' ? [{ code: 'LEAK_FOUND' as const, detail: {} }] : []),
  ];
}

function durationReasons(typed: string, minMinutes: number): EntryReason[] {
  if (typed.trim() === '') return [{ code: 'DURATION_MISSING', detail: { minMinutes } }];
  const read = readDecimal(typed);
  if (read === null) return [{ code: 'NOT_A_NUMBER', detail: { what: 'The number of minutes', typed } }];
  return compare(read, fraction(minMinutes)) < 0
    ? [{ code: 'DURATION_SHORT', detail: { typed, minMinutes } }]
    : [];
}

function powerReasons(typed: string, power: string): EntryReason[] {
  const plain = (text: string) => text.trim().replace(/\s+/g, ' ').toLowerCase();
  if (plain(typed) === '') return [{ code: 'POWER_MISSING', detail: { power } }];
  return plain(typed) === plain(power) ? [] : [{ code: 'POWER_DIFFERS', detail: { typed, power } }];
}

/**
 * What is held against the readings of a run: one missing, one that is no number, one outside its bounds, which
 * are included. A reading may be below zero. Throws when a bound of the capture is no number.
 */
export function judgeReadings(
  capture: ReadingsCapture,
  values: Readonly<Record<string, string>>,
): EntryReason[] {
  return capture.rows.flatMap((row) =>
    readingReasons(row, Object.hasOwn(values, row.key) ? values[row.key] : undefined),
  );
}

function readingReasons(row: ReadingRow, typed = ''): EntryReason[] {
  if (typed.trim() === '') return [{ code: 'READING_MISSING', detail: { what: row.label } }];
  const read = readSignedDecimal(typed);
  if (read === null) return [{ code: 'NOT_A_NUMBER', detail: { what: row.label, typed } }];
  const about = { what: row.label, value: withUnit(typed.trim(), row.unit) };
  if (row.low !== null && compare(read, bound(row.low)) < 0)
    return [{ code: 'BELOW_RANGE', detail: { ...about, low: withUnit(row.low, row.unit) } }];
  if (row.high !== null && compare(read, bound(row.high)) > 0)
    return [{ code: 'ABOVE_RANGE', detail: { ...about, high: withUnit(row.high, row.unit) } }];
  return [];
}

const withUnit = (text: string, unit: string) => (unit === '' ? text : `${text} ${unit}`);

function bound(text: string): Fraction {
  const read = readSignedDecimal(text);
  if (read === null) throw new RangeError(`a figure of the data that is no number: ${text}`);
  return read;
}
