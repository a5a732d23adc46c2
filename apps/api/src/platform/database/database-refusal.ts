import type { Refusal } from '@strutbook/domain/refusals.js';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import { fromDatabaseText, toInstant, toWire } from '../http/instants.js';
import type { ApiRefusal } from '../problems/api-refusals.js';
import { type DatabaseError, databaseErrorIn } from './database-error.js';

type Detail = Readonly<Record<string, string>>;

const LOST = new Set(['57P01', '57P02', '57P03', '08000', '08001', '08003', '08006', '53300', '57014']);
const LOST_BELOW = new Set(['ECONNREFUSED', 'ECONNRESET', 'EPIPE', 'ETIMEDOUT', 'ENOENT']);

/** True for a deadlock or a serialisation failure: the transaction may be run again, whole. Total. */
export function isWorthRepeating(error: unknown): boolean {
  const code = databaseErrorIn(error)?.code;
  return code === '40001' || code === '40P01';
}

/**
 * What the database refused, as a refusal; null when the error is no refusal but a fault of ours.
 * The constraints have the last word; most of these are told earlier and better by the rules.
 */
export function databaseRefusal(error: unknown): Refusal | ApiRefusal | null {
  // Every connection is taken by acts that wait for one another, or this one took too long and was rolled back.
  if (isRecordOf(error) && error.code === 'P2028') return { code: 'BUSY', retryAfterSeconds: 2 };
  const said = databaseErrorIn(error);
  if (said === null) return isConnectionLost(error) ? { code: 'UNAVAILABLE', retryAfterSeconds: 2 } : null;
  if (LOST.has(said.code)) return { code: 'UNAVAILABLE', retryAfterSeconds: 2 };
  switch (said.code) {
    case '55P03': // lock_timeout: somebody else holds what this act needs
    case '40001':
    case '40P01':
      return { code: 'BUSY', retryAfterSeconds: 1 };
    case '22021':
    case '22P05': {
      const reason = 'A text holds a sign that cannot be kept, such as NUL.';
      return { code: 'MALFORMED', reason, fix: 'Take it out.' };
    }
    case '22003':
      return { code: 'MALFORMED', reason: 'A number is too large to be kept.', fix: 'Check the numbers.' };
    case '23P01':
    case '23505':
      return takenAlready(said);
    case 'SB001':
    case 'SB002':
    case 'SB003':
    case 'SB004':
      return refusedByTrigger(said);
    case 'SB010':
      return {
        code: 'WRONG_STATE',
        what: 'the package',
        state: detailOf(said)['status'] ?? 'closed',
        needed: 'open',
      };
    case 'SB011':
      return {
        code: 'REFUSED_BY_FACTS',
        reason: 'An inspection covers the work of its own step.',
        fix: 'Read the step again, then sign.',
      };
    case 'SB012':
      return { code: 'SAME_PERSON' };
    case 'SB041':
    case 'SB042':
    case 'SB043':
    case 'SB044':
      return runRefusal(said.code, detailOf(said));
    default:
      return null;
  }
}

function takenAlready({ constraint }: DatabaseError): ApiRefusal {
  switch (constraint) {
    case 'stay_component_once':
    case 'stay_open_component':
      return { code: 'COMPONENT_PLACED_TWICE' };
    case 'stay_slot_once':
    case 'stay_open_slot':
      return { code: 'SLOT_TAKEN' };
    case 'flight_no_overlap':
      return { code: 'FLIGHTS_OVERLAP' };
    case 'ground_run_no_overlap':
      return {
        code: 'REFUSED_BY_FACTS',
        field: 'startedAt',
        reason: 'Another run is recorded there during this time.',
        fix: 'Correct the times, or void the other run if it is the wrong one.',
      };
    case 'cycle_rule_revision':
      return {
        code: 'ALREADY_EXISTS',
        what: 'a rule of this model for the same type of airframe from the same day on',
        field: 'effectiveOn',
      };
    case 'counter_reading_once':
      return { code: 'ALREADY_EXISTS', what: 'a reading of this counter at the same minute', field: 'at' };
    case 'step_signature_once':
      return { code: 'ALREADY_SIGNED' };
    case 'ordered_change_once':
      return { code: 'ALREADY_EXISTS', what: 'an order for this place in this package', field: 'order' };
    case 'procedure_operator_id_code_revision_key':
      return { code: 'ALREADY_EXISTS', what: 'a procedure with this code and revision', field: 'revision' };
    case 'requirement_revision':
      return { code: 'ALREADY_EXISTS', what: 'a requirement with this code and revision', field: 'revision' };
    case 'import_file_content':
      return { code: 'ALREADY_EXISTS', what: 'an applied import of this very file', field: 'content' };
    default:
      return { code: 'ALREADY_EXISTS', what: 'a record with these values' };
  }
}

function refusedByTrigger(said: DatabaseError): Refusal | ApiRefusal | null {
  const detail = detailOf(said);
  switch (said.code) {
    case 'SB001':
      return {
        code: 'INSIDE_A_FLIGHT',
        at: instant(detail['at']),
        flightId: detail['flightId'] ?? '',
        page: detail['logPage'] ?? null,
        takeOffAt: instant(detail['takeOffAt']),
        landingAt: instant(detail['landingAt']),
      };
    case 'SB002': {
      const at = detail['fromAt'] ?? detail['toAt'];
      return { code: 'FLIGHT_CONTAINS_BOUNDARY', at: at === undefined ? '' : toWire(fromDatabaseText(at)) };
    }
    case 'SB003':
      return {
        code: 'WRONG_KIND',
        componentId: '',
        kind: detail['componentKind'] ?? '',
        slotId: '',
        slotKind: detail['slotKind'] ?? '',
      };
    default:
      return {
        code: 'REFUSED_BY_FACTS',
        reason: `The component was made on ${detail['manufacturedOn'] ?? 'a later day'}; it cannot be placed before that.`,
        fix: 'Give a later moment, or correct the date of manufacture first.',
      };
  }
}

/** What the guards of ground runs, and of what may not fall into one, say. */
function runRefusal(code: string, detail: Detail): ApiRefusal {
  const at = (key: 'startedAt' | 'endedAt' | 'takeOffAt' | 'landingAt' | 'at') => {
    const text = detail[key];
    return text === undefined ? '' : toWire(fromDatabaseText(text));
  };
  const run = `An engine ran there from ${at('startedAt')} to ${at('endedAt')}`;
  switch (code) {
    case 'SB041':
      return {
        code: 'REFUSED_BY_FACTS',
        field: 'boundary',
        reason: `${run}; what is in it cannot have come or gone at ${at('at')}, in the middle of the run.`,
        fix: 'Give a moment before or after the run, or void the run if it is wrong.',
      };
    case 'SB042':
      return {
        code: 'REFUSED_BY_FACTS',
        field: 'takeOffAt',
        reason: `${run} on the ground: the airframe cannot have flown then.`,
        fix: 'Correct the times of the flight, or void the run if it is wrong.',
      };
    case 'SB043':
      return {
        code: 'REFUSED_BY_FACTS',
        field: 'startedAt',
        reason: `The airframe was on the flight of log page ${detail['logPage'] ?? ''}, ${at('takeOffAt')} to ${at('landingAt')}, during this run.`,
        fix: 'Correct the times of the run, or of the flight.',
      };
    default:
      return {
        code: 'REFUSED_BY_FACTS',
        field: 'startedAt',
        reason: `No engine was there for the whole of this run, ${at('startedAt')} to ${at('endedAt')}.`,
        fix: 'Check the place and the times, or record first when the engine came there.',
      };
  }
}

function detailOf({ detail }: DatabaseError): Detail {
  try {
    return JSON.parse(detail ?? '{}') as Detail;
  } catch {
    return {}; // written by our own triggers as JSON; anything else tells nothing here
  }
}

function instant(text: string | undefined): Instant {
  return toInstant(text === undefined ? new Date(0) : fromDatabaseText(text));
}

function isRecordOf(error: unknown): error is { readonly code?: unknown } {
  return typeof error === 'object' && error !== null;
}

/** A connection that broke or could not be made, seen by the driver and not by the server. */
function isConnectionLost(error: unknown): boolean {
  for (let at: unknown = error, depth = 0; typeof at === 'object' && at !== null && depth < 6; depth += 1) {
    const { code, message, cause } = at as { code?: unknown; message?: unknown; cause?: unknown };
    if (
      typeof code === 'string' &&
      (LOST_BELOW.has(code) || code === 'P1001' || code === 'P2024' || code === 'P1017')
    ) {
      return true;
    }
    if (
      typeof message === 'string' &&
      /Connection terminated|timeout exceeded when trying to connect/.test(message)
    ) {
      return true;
    }
    at = cause;
  }
  return false;
}
