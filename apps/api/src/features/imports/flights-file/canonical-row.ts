import { canonical } from '@strutbook/journal/canonical.js';
import type { ReadyFlight } from './check-rows.js';
import { describeInstant } from './describe-instant.js';

/** A ready row with the id it is recorded under. */
export interface RecordedRow extends ReadyFlight {
  readonly id: string;
}

/**
 * The canonical text of one row of a batch: a leaf of the tree whose root the batch's journal entry holds.
 *
 * Made of what the flight's own record keeps, in the file's order, so that it can be made again from the records:
 * {abortedTakeOffs, airframeId, fromStation, id, landingAt, logPage, row, starts, takeOffAt, toStation,
 * touchAndGoes}, instants as 'YYYY-MM-DDTHH:MMZ'.
 */
export function canonicalRow({ id, airframeId, flight }: RecordedRow): string {
  return canonical({
    row: flight.line,
    id,
    airframeId,
    logPage: flight.logPage,
    fromStation: flight.fromStation,
    toStation: flight.toStation,
    takeOffAt: `${describeInstant(flight.takeOffAt).replace(' ', 'T')}Z`,
    landingAt: `${describeInstant(flight.landingAt).replace(' ', 'T')}Z`,
    touchAndGoes: flight.touchAndGoes,
    starts: flight.starts,
    abortedTakeOffs: flight.abortedTakeOffs,
  });
}
