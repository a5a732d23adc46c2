import { minuteNow } from '../../../format/now.js';
import { FLIGHT_FIELDS, isBlank, type TypedFlight } from './typed-flight.js';

const keyOf = (personId: string, airframeId: string): string => `strutbook.flights.${personId}.${airframeId}`;

export interface Draft {
  readonly rows: readonly TypedFlight[];
  /** When it was last typed in, in minutes. */
  readonly at: number;
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

const isTypedFlight = (value: unknown): value is TypedFlight =>
  isRecord(value) &&
  FLIGHT_FIELDS.every((field) => typeof value[field] === 'string') &&
  Array.isArray(value['exceptions']);

/** What this person typed for this airframe on this device and did not save; null when nothing. */
export function readDraft(personId: string, airframeId: string): Draft | null {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(keyOf(personId, airframeId)) ?? 'null');
    if (!isRecord(kept) || typeof kept['at'] !== 'number' || !Array.isArray(kept['rows'])) return null;
    return { rows: kept['rows'].filter(isTypedFlight), at: kept['at'] };
  } catch {
    return null;
  }
}

/** Keeps what is typed on this device; nothing typed removes it. A full or closed store is no error. */
export function keepDraft(personId: string, airframeId: string, rows: readonly TypedFlight[]): void {
  try {
    if (rows.every(isBlank)) localStorage.removeItem(keyOf(personId, airframeId));
    else localStorage.setItem(keyOf(personId, airframeId), JSON.stringify({ rows, at: minuteNow() }));
  } catch {
    // The page itself still holds what was typed.
  }
}
