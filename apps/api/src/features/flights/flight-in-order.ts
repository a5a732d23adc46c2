import type { Actor } from '../../platform/access/actor.js';
import { databaseErrorIn } from '../../platform/database/database-error.js';
import { fromInstant } from '../../platform/http/instants.js';
import type { FlightCommand } from './flight-command.js';

/**
 * Logs a flight that comes after all others of its airframe, with its key, and reads the airframe's opening beside it.
 * The opening is read after the function has set the operator: it hangs on the function's answer, and is joined row by row.
 */
export const IN_ORDER_SQL = `SELECT l.answer, o.minutes::text AS "openingMinutes", o.cycles::text AS "openingFlights"
  FROM (SELECT log_flight_in_order($1::int, $2::uuid, $3::text, $4::bytea, $5::uuid, $6::uuid, $7::text, $8::text, $9::text,
    $10::timestamptz, $11::timestamptz, $12::int, $13::int, $14::int, $15::int, $16::text, 'entered', $17::text) AS answer) l
  LEFT JOIN LATERAL (SELECT minutes, cycles FROM opening WHERE operator_id = $1::int AND airframe_id = $6::uuid
    AND basis = 'new' AND voided_seq IS NULL AND l.answer IS NOT NULL LIMIT 1) o ON true`;

/** What IN_ORDER_SQL takes, in order; `body` is the canonical body of the flight's entry in the journal. */
export function inOrderValues(
  { operatorId, personId }: Pick<Actor, 'operatorId' | 'personId'>,
  { key, fingerprint }: { readonly key: string; readonly fingerprint: Uint8Array },
  {
    airframeId,
    flight,
    body,
  }: { readonly airframeId: string; readonly flight: FlightCommand; readonly body: string },
): readonly unknown[] {
  const { id, logPage, fromStation, toStation, takeOffAt, landingAt, typed } = flight;
  const { touchAndGoes, starts, abortedTakeOffs } = flight;
  return [
    ...[operatorId, personId, key, Buffer.from(fingerprint), id, airframeId, logPage, fromStation, toStation],
    ...[fromInstant(takeOffAt).toISOString(), fromInstant(landingAt).toISOString(), landingAt - takeOffAt],
    ...[touchAndGoes, starts, abortedTakeOffs, typed, body],
  ];
}

/** The key or the log page is used, the span is taken, or nothing was recorded of the airframe before. */
const MORE_TO_LOOK_AT = new Set(['23505', '23P01', 'SB020']);

/** Whether the database refused because there is more to look at than the last landing; nothing was written. Total. */
export function isMoreToLookAt(error: unknown): boolean {
  return MORE_TO_LOOK_AT.has(databaseErrorIn(error)?.code ?? '');
}
