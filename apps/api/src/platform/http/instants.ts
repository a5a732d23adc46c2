import type { Instant } from '@strutbook/domain/units/minutes.js';

const MINUTE_MS = 60_000;
const WIRE = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})Z$/;

/** The wire's form of an instant, 'YYYY-MM-DDTHH:MMZ' in UTC; seconds are cut off. Total. */
export function toWire(date: Date): string {
  return `${date.toISOString().slice(0, 16)}Z`;
}

/** The wire's form of a moment of recording, which keeps its milliseconds. Total. */
export function toWirePrecise(date: Date): string {
  return date.toISOString();
}

/** The instant a wire text means; null when the text is not of that form or no such minute exists. Total. */
export function fromWire(text: string): Date | null {
  if (!WIRE.test(text)) return null;
  const date = new Date(`${text.slice(0, 16)}:00Z`);
  // 31 April or 24:00 would be moved to the next day in silence.
  return Number.isNaN(date.getTime()) || toWire(date) !== text ? null : date;
}

/** Whole minutes since 1970-01-01T00:00Z; seconds are cut off. Total. */
export function toInstant(date: Date): Instant {
  return Math.floor(date.getTime() / MINUTE_MS) as Instant;
}

/** The `Date` of an instant of the core. Total. */
export function fromInstant(instant: Instant): Date {
  return new Date(instant * MINUTE_MS);
}

const DAY_MINUTES = 24 * 60;
const TWO_DIGITS = Array.from({ length: 60 }, (_, number) => String(number).padStart(2, '0'));
let lastDay = { day: 0, text: '1970-01-01' };

/** The wire's form of an instant of the core. Total. */
export function instantToWire(instant: Instant): string {
  const day = Math.floor(instant / DAY_MINUTES);
  // Of thousands of instants in order most are of the day of the one before.
  if (day !== lastDay.day)
    lastDay = {
      day,
      text: fromInstant((day * DAY_MINUTES) as Instant)
        .toISOString()
        .slice(0, 10),
    };
  const minute = instant - day * DAY_MINUTES;
  return `${lastDay.text}T${TWO_DIGITS[Math.floor(minute / 60)]}:${TWO_DIGITS[minute % 60]}Z`;
}

/** The instant of a timestamp as PostgreSQL writes it in JSON, '2026-03-01T10:00:00+00:00'. Total for those. */
export function fromDatabaseText(text: string): Date {
  return new Date(text.replace(' ', 'T').replace(/([+-]\d{2})$/, '$1:00'));
}

/** The wire's form 'YYYY-MM-DD' of a day kept as a PostgreSQL date, which Prisma gives as midnight UTC. Total. */
export function dayToWire(date: Date): string {
  return date.toISOString().slice(0, 10);
}

/** Midnight UTC of a day 'YYYY-MM-DD', as Prisma takes it for a PostgreSQL date; null when there is no such day. */
export function dayFromWire(text: string): Date | null {
  const midnight = /^\d{4}-\d{2}-\d{2}$/.test(text) ? new Date(`${text}T00:00:00Z`) : new Date(Number.NaN);
  return Number.isNaN(midnight.getTime()) || dayToWire(midnight) !== text ? null : midnight;
}

/** The instant a text means that its form was checked of. Throws on one that was not checked. */
export function momentOf(text: string): Date {
  const at = fromWire(text);
  if (at === null) throw new Error(`checked before: not an instant: ${text}`);
  return at;
}

/** The day a text means that its form was checked of, as `dayFromWire` gives it. Throws on one that was not checked. */
export function dayOf(text: string): Date {
  const day = dayFromWire(text);
  if (day === null) throw new Error(`checked before: not a day: ${text}`);
  return day;
}
