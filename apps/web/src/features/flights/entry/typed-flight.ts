import { parseHours } from '../../../format/hours.js';
import { parseDate, parseMoment } from '../../../format/utc-moment.js';
import { wireMinute } from '../../../format/when.js';
import type { NewException, NewFlight } from '../flights-data.js';

/** How a position did otherwise than its airframe; nothing is told of one that ran throughout. */
export interface TypedException {
  readonly positionNumber: number;
  readonly kind: 'shut-down' | 'not-running';
  /** For an engine shut down: how long it stood still, 'h:mm'. */
  readonly minutes: string;
}

/** A flight exactly as typed. Field names are the server's, but for the date, which both times share. */
export interface TypedFlight {
  readonly logPage: string;
  readonly date: string;
  readonly fromStation: string;
  readonly toStation: string;
  readonly takeOffAt: string;
  readonly landingAt: string;
  readonly touchAndGoes: string;
  readonly starts: string;
  readonly abortedTakeOffs: string;
  readonly exceptions: readonly TypedException[];
}

export type FlightField = Exclude<keyof TypedFlight, 'exceptions'>;

/** The fields in the order in which they stand and are pasted. */
export const FLIGHT_FIELDS = [
  'logPage',
  'date',
  'fromStation',
  'toStation',
  'takeOffAt',
  'landingAt',
  'touchAndGoes',
  'starts',
  'abortedTakeOffs',
] as const satisfies readonly FlightField[];

export const FIELD_WORDS: Readonly<Record<FlightField, string>> = {
  logPage: 'Log page',
  date: 'Date',
  fromStation: 'From',
  toStation: 'To',
  takeOffAt: 'Take-off',
  landingAt: 'Landing',
  touchAndGoes: 'Touch-and-goes',
  starts: 'Starts',
  abortedTakeOffs: 'Aborted take-offs',
};

/** A row before anything is typed: one start, no touch-and-goes, no aborted take-offs. */
export const BLANK_FLIGHT: TypedFlight = {
  logPage: '',
  date: '',
  fromStation: '',
  toStation: '',
  takeOffAt: '',
  landingAt: '',
  touchAndGoes: '0',
  starts: '1',
  abortedTakeOffs: '0',
  exceptions: [],
};

/** Whether nothing was typed in the row. The date alone, carried down, is nothing. */
export const isBlank = (flight: TypedFlight): boolean =>
  FLIGHT_FIELDS.every((field) => field === 'date' || flight[field].trim() === BLANK_FLIGHT[field]) &&
  flight.exceptions.length === 0;

const CLOCK = /^([01]?\d|2[0-3]):([0-5]\d)(?:\s*\+\s*(1))?$/;
const DAY_MINUTES = 1440;

/** A time of day on the flight's date, '14:20', or of the next day, '00:35+1'; or date and time in full. */
function instantOn(date: string, typed: string): number | null {
  const whole = parseMoment(typed);
  if (whole.ok) return whole.instant;
  const match = CLOCK.exec(typed.trim());
  const day = parseMoment(`${date.trim()} 00:00`);
  if (match === null || !day.ok) return null;
  return day.instant + Number(match[1]) * 60 + Number(match[2]) + (match[3] === undefined ? 0 : DAY_MINUTES);
}

/** Take-off to landing in whole minutes, also when negative; null while either is not readable. */
export function flownMinutes(flight: TypedFlight): number | null {
  const takeOff = instantOn(flight.date, flight.takeOffAt);
  const landing = instantOn(flight.date, flight.landingAt);
  return takeOff === null || landing === null ? null : landing - takeOff;
}

/** What is wrong, by field. */
export type FlightFaults = Partial<Readonly<Record<FlightField | 'exceptions', string>>>;

const COUNT = /^\d{1,4}$/;

function faultOfTimes(flight: TypedFlight): FlightFaults {
  const readable = (field: 'takeOffAt' | 'landingAt'): boolean =>
    CLOCK.test(flight[field].trim()) || parseMoment(flight[field]).ok;
  const inFull = parseMoment(flight.takeOffAt).ok && parseMoment(flight.landingAt).ok;
  const date = parseDate(flight.date);
  const flown = flownMinutes(flight);
  return {
    ...(date.ok || inFull ? {} : { date: date.reason }),
    ...(readable('takeOffAt') ? {} : { takeOffAt: 'Enter the take-off in UTC, for example 14:20' }),
    ...(readable('landingAt')
      ? {}
      : { landingAt: 'Enter the landing in UTC, for example 18:02, or 00:35+1 for the next day' }),
    ...(flown !== null && flown <= 0
      ? { landingAt: 'Lands before take-off. For the next day enter it with +1, for example 00:35+1' }
      : {}),
  };
}

function faultOfExceptions({ exceptions }: TypedFlight): FlightFaults {
  const wrong = exceptions.find(({ kind, minutes }) => kind === 'shut-down' && !parseHours(minutes).ok);
  return wrong === undefined
    ? {}
    : { exceptions: `Enter how long position ${wrong.positionNumber} stood still, for example 2:21` };
}

/** What is plainly wrong with a row before it is sent. */
export function faultsOf(flight: TypedFlight): FlightFaults {
  const missing = (field: 'logPage' | 'fromStation' | 'toStation', message: string): FlightFaults =>
    flight[field].trim() === '' ? { [field]: message } : {};
  const counts = (['touchAndGoes', 'starts', 'abortedTakeOffs'] as const).filter(
    (field) => !COUNT.test(flight[field].trim()),
  );
  return {
    ...missing('logPage', 'Enter the number of the log page'),
    ...missing('fromStation', 'Enter the station of departure'),
    ...missing('toStation', 'Enter the station of arrival'),
    ...faultOfTimes(flight),
    ...Object.fromEntries(counts.map((field) => [field, 'Enter a whole number, 0 if there was none'])),
    ...faultOfExceptions(flight),
  };
}

function exceptionWords({ exceptions }: TypedFlight): NewException[] {
  return exceptions.map(({ positionNumber, kind, minutes }) => {
    const stood = parseHours(minutes);
    return kind === 'shut-down' && stood.ok
      ? { positionNumber, kind, minutes: stood.minutes }
      : { positionNumber, kind };
  });
}

/** A row without faults as it is sent. Null when its times are not readable. */
export function flightWords(flight: TypedFlight): NewFlight | null {
  const takeOff = instantOn(flight.date, flight.takeOffAt);
  const landing = instantOn(flight.date, flight.landingAt);
  if (takeOff === null || landing === null) return null;
  const exceptions = exceptionWords(flight);
  return {
    logPage: flight.logPage.trim(),
    fromStation: flight.fromStation.trim().toUpperCase(),
    toStation: flight.toStation.trim().toUpperCase(),
    takeOffAt: wireMinute(takeOff),
    landingAt: wireMinute(landing),
    touchAndGoes: Number(flight.touchAndGoes),
    starts: Number(flight.starts),
    abortedTakeOffs: Number(flight.abortedTakeOffs),
    ...(exceptions.length === 0 ? {} : { exceptions }),
  };
}

/** 'YYYY-MM-DD HH:MM' beside a date: '18:02' on it, '00:35+1' on the next day, in full otherwise. */
export function timeBeside(date: string, moment: string): string {
  const at = parseMoment(moment);
  const day = parseMoment(`${date} 00:00`);
  if (!at.ok || !day.ok) return moment;
  const after = at.instant - day.instant;
  const clock = moment.trim().slice(11, 16);
  if (after >= 0 && after < DAY_MINUTES) return clock;
  return after >= DAY_MINUTES && after < 2 * DAY_MINUTES ? `${clock}+1` : moment;
}
