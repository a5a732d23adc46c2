import type { Instant } from '@strutbook/domain/units/minutes.js';

/** The headings of a flights file, in their order. */
export const FLIGHT_COLUMNS = [
  'registration',
  'log_page',
  'from',
  'to',
  'take_off_utc',
  'landing_utc',
  'touch_and_goes',
  'starts',
  'aborted_take_offs',
] as const;

export type FlightColumn = (typeof FLIGHT_COLUMNS)[number];

/** A line of the file as it was typed. */
export type TypedRow = Readonly<Record<FlightColumn, string>>;

/** A flight as one line tells it: every value could be read. */
export interface FileFlight {
  readonly line: number;
  readonly registration: string;
  readonly logPage: string;
  readonly fromStation: string;
  readonly toStation: string;
  readonly takeOffAt: Instant;
  readonly landingAt: Instant;
  readonly touchAndGoes: number;
  readonly starts: number;
  readonly abortedTakeOffs: number;
  readonly typed: TypedRow;
}
