import type { Instant } from '@strutbook/domain/units/minutes.js';
import { describeInstant } from './describe-instant.js';
import type { FileFlight, FlightColumn } from './file-flight.js';
import { overlapsInFile } from './overlaps-in-file.js';
import type { RowErrors } from './row-error.js';

/** A flight on record. */
export interface RecordedFlight {
  readonly logPage: string;
  readonly fromStation: string;
  readonly toStation: string;
  readonly takeOffAt: Instant;
  readonly landingAt: Instant;
  readonly touchAndGoes: number;
  readonly starts: number;
  readonly abortedTakeOffs: number;
}

/** Where a component comes to the airframe or leaves it. */
export interface StayBoundary {
  readonly at: Instant;
  readonly serialNumber: string;
  readonly which: 'installed' | 'removed';
}

/** What is on record about one airframe that the file names. */
export interface AirframeOnRecord {
  readonly airframeId: string;
  readonly registration: string;
  readonly openingAt: Instant | null;
  readonly manufacturedAt: Instant | null;
  /** Flights that are not voided and may touch the file's span, by take-off. */
  readonly flights: readonly RecordedFlight[];
  /** Flights by the log pages the file names. */
  readonly pages: ReadonlyMap<string, RecordedFlight>;
  /** By instant. */
  readonly boundaries: readonly StayBoundary[];
}

/** A flight of the file that can be recorded. */
export interface ReadyFlight {
  readonly airframeId: string;
  readonly flight: FileFlight;
}

/** What became of the rows that could be read. */
export interface CheckedRows {
  readonly ready: readonly ReadyFlight[];
  readonly already: number;
}

interface Fault {
  readonly column: FlightColumn;
  readonly reason: string;
  readonly fix: string;
}

/** A clock that is a little off is no flight in the future; log_flight grants the same. */
const GRACE_MINUTES = 5;

/**
 * Holds the rows of a file against each other and against the records, as logging them one by one would.
 *
 * A row that says just what is on record is 'already' there; every other clash is an error of its line. Total.
 */
export function checkRows(
  flights: readonly FileFlight[],
  records: ReadonlyMap<string, AirframeOnRecord>,
  now: Instant,
  errors: RowErrors,
): CheckedRows {
  const ready: ReadyFlight[] = [];
  let already = 0;
  for (const [registration, rows] of byRegistration(flights)) {
    const record = records.get(registration);
    if (record === undefined) {
      for (const row of rows) tell(errors, row, unknownAirframe());
      continue;
    }
    const { fresh, known } = checkOneAirframe(rows, record, now, errors);
    already += known;
    ready.push(...fresh.map((flight) => ({ airframeId: record.airframeId, flight })));
  }
  return { ready: ready.sort((a, b) => a.flight.line - b.flight.line), already };
}

function checkOneAirframe(
  rows: readonly FileFlight[],
  record: AirframeOnRecord,
  now: Instant,
  errors: RowErrors,
): { readonly fresh: readonly FileFlight[]; readonly known: number } {
  const fresh: FileFlight[] = [];
  const pages = new Map<string, number>();
  let known = 0;
  for (const row of rows) {
    const fault = faultOf(row, record, { now, pages });
    pages.set(row.logPage, pages.get(row.logPage) ?? row.line);
    if (fault === 'already') known += 1;
    else if (fault === null) fresh.push(row);
    else tell(errors, row, fault);
  }
  for (const { row, other } of overlapsInFile(fresh)) tell(errors, row, overlapIn(other));
  return { fresh: fresh.filter((row) => !errors.has(row.line)), known };
}

function tell(errors: RowErrors, row: FileFlight, fault: Fault): void {
  errors.add({ line: row.line, value: row.typed[fault.column], ...fault });
}

function byRegistration(flights: readonly FileFlight[]): ReadonlyMap<string, FileFlight[]> {
  const groups = new Map<string, FileFlight[]>();
  for (const flight of flights) {
    const group = groups.get(flight.registration);
    if (group === undefined) groups.set(flight.registration, [flight]);
    else group.push(flight);
  }
  return groups;
}

function faultOf(
  row: FileFlight,
  record: AirframeOnRecord,
  { now, pages }: { readonly now: Instant; readonly pages: ReadonlyMap<string, number> },
): Fault | 'already' | null {
  const line = pages.get(row.logPage);
  if (line !== undefined) return pageUsedInFile(row, line);
  const samePage = record.pages.get(row.logPage);
  if (samePage !== undefined) return isSame(row, samePage) ? 'already' : pageUsed(samePage);
  if (row.landingAt > now + GRACE_MINUTES) return inTheFuture(now);
  if (record.manufacturedAt !== null && row.takeOffAt < record.manufacturedAt)
    return beforeManufacture(record.manufacturedAt);
  if (record.openingAt !== null && row.takeOffAt < record.openingAt) return beforeOpening(record.openingAt);
  const other = flightOver(row, record.flights);
  if (other !== null) return overlapWith(other);
  const boundary = boundaryInside(row, record.boundaries);
  return boundary === null ? null : containsBoundary(boundary);
}

function isSame(row: FileFlight, flight: RecordedFlight): boolean {
  return (
    row.takeOffAt === flight.takeOffAt &&
    row.landingAt === flight.landingAt &&
    row.fromStation === flight.fromStation &&
    row.toStation === flight.toStation &&
    row.touchAndGoes === flight.touchAndGoes &&
    row.starts === flight.starts &&
    row.abortedTakeOffs === flight.abortedTakeOffs
  );
}

/** The first place in a list sorted by what `key` gives at which the key is above the bound. */
function firstAbove<T>(sorted: readonly T[], bound: number, key: (entry: T) => number): T | undefined {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    const entry = sorted[middle];
    if (entry !== undefined && key(entry) > bound) high = middle;
    else low = middle + 1;
  }
  return sorted[low];
}

// Flights on record do not overlap, so in order of take-off they are in order of landing too.
function flightOver(row: FileFlight, flights: readonly RecordedFlight[]): RecordedFlight | null {
  const next = firstAbove(flights, row.takeOffAt, (flight) => flight.landingAt);
  return next !== undefined && next.takeOffAt < row.landingAt ? next : null;
}

function boundaryInside(row: FileFlight, boundaries: readonly StayBoundary[]): StayBoundary | null {
  const next = firstAbove(boundaries, row.takeOffAt, (boundary) => boundary.at);
  return next !== undefined && next.at < row.landingAt ? next : null;
}

function unknownAirframe(): Fault {
  return {
    column: 'registration',
    reason: 'No airframe with this registration is on record.',
    fix: 'Correct the registration, or register the airframe first.',
  };
}

function pageUsedInFile(row: FileFlight, line: number): Fault {
  return {
    column: 'log_page',
    reason: `Line ${line} has the log page ${row.logPage} of the same airframe too.`,
    fix: 'Correct the page number, or take one of the two lines out.',
  };
}

function pageUsed(flight: RecordedFlight): Fault {
  return {
    column: 'log_page',
    reason: `Log page ${flight.logPage} is on record with another content: take-off ${describeInstant(flight.takeOffAt)}, landing ${describeInstant(flight.landingAt)}, ${flight.fromStation} to ${flight.toStation}.`,
    fix: 'Correct the line, or correct the flight on record first.',
  };
}

function inTheFuture(now: Instant): Fault {
  return {
    column: 'landing_utc',
    reason: `The landing lies in the future; it is ${describeInstant(now)} now.`,
    fix: 'Correct the date, or bring the flight in once it has landed.',
  };
}

function beforeManufacture(at: Instant): Fault {
  return {
    column: 'take_off_utc',
    reason: `The airframe was made on ${describeInstant(at).slice(0, 10)}; the flight begins before that.`,
    fix: 'Correct the date or the registration.',
  };
}

function beforeOpening(at: Instant): Fault {
  return {
    column: 'take_off_utc',
    reason: `The airframe's opening balance holds from ${describeInstant(at)}; this flight is in it already.`,
    fix: 'Take the line out, or void the opening balance and enter an earlier one.',
  };
}

function overlapWith(flight: RecordedFlight): Fault {
  return {
    column: 'take_off_utc',
    reason: `The flight overlaps log page ${flight.logPage} on record, ${describeInstant(flight.takeOffAt)} to ${describeInstant(flight.landingAt)}.`,
    fix: 'Correct the times, or correct the flight on record first.',
  };
}

function overlapIn(other: FileFlight): Fault {
  return {
    column: 'take_off_utc',
    reason: `The flight overlaps the one on line ${other.line}, ${describeInstant(other.takeOffAt)} to ${describeInstant(other.landingAt)}.`,
    fix: 'Correct the times of one of the two.',
  };
}

function containsBoundary({ at, serialNumber, which }: StayBoundary): Fault {
  return {
    column: 'landing_utc',
    reason: `${serialNumber} is on record as ${which} at ${describeInstant(at)}, which is inside this flight.`,
    fix: 'Correct the times of the flight, or those of the installation.',
  };
}
