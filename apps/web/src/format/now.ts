import { isoOf } from './utc-date.js';

/** The minute that it is, since 1970-01-01T00:00Z, by the clock of this device. */
export const minuteNow = (): number => Math.floor(Date.now() / 60_000);

/** Today's date in UTC, which tools and rules are judged on: '2026-11-25'. */
export const utcToday = (): string => isoOf(minuteNow()).slice(0, 10);
