/** Instants here are whole minutes since 1970-01-01T00:00Z. */
export const MINUTES_A_DAY = 1440;

/** The minute of 'YYYY-MM-DDTHH:MMZ', or the first of 'YYYY-MM-DD'. */
export function minuteOf(text) {
  return Date.parse(text.length === 10 ? `${text}T00:00Z` : text) / 60000;
}

/** 'YYYY-MM-DDTHH:MMZ', as the interface writes instants. */
export function wire(minute) {
  return `${new Date(minute * 60000).toISOString().slice(0, 16)}Z`;
}

/** 'YYYY-MM-DD HH:MM', as the flight import reads them. */
export function inCsv(minute) {
  return new Date(minute * 60000).toISOString().slice(0, 16).replace('T', ' ');
}

export function dateOf(minute) {
  return wire(minute).slice(0, 10);
}

/** The demonstration's record begins here: what came before stands in the openings. */
export const RECORD_BEGINS = minuteOf('2024-11-20');
/** The last landing is not after this. */
export const RECORD_ENDS = minuteOf('2026-11-20T23:30Z');
