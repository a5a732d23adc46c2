import { counted } from '../../format/counts.js';
import { hoursMinutes } from '../../format/hours.js';
import { instantOf, utcDate, utcTime } from '../../format/utc-date.js';
import { Button } from '../../ui/actions/button.js';
import type { Column } from '../../ui/table/column.js';
import type { LoggedFlight } from './flights-data.js';
import { FlightGaps, type GapActs } from './gaps/flight-gaps.js';

interface FlightActs {
  readonly onCorrect: (flight: LoggedFlight) => void;
  readonly onVoid: (flight: LoggedFlight) => void;
}

const EXCEPTION_WORDS = { 'shut-down': 'shut down', 'not-running': 'not running' } as const;

/** The caption says that all times are UTC. */
const clock = (instant: number): string => utcTime(instant).slice(0, 5);

/** The date once; the landing's own only when it is another day. */
function times({ takeOffAt, landingAt }: LoggedFlight) {
  const from = instantOf(takeOffAt);
  const to = instantOf(landingAt);
  if (from === null || to === null) return { date: takeOffAt, takeOff: '', landing: landingAt };
  const nextDay = utcDate(from) === utcDate(to) ? '' : ' +1';
  return { date: utcDate(from), takeOff: clock(from), landing: `${clock(to)}${nextDay}` };
}

/** 'Position 3 shut down for 2:21 h' */
export function exceptionText({ positionNumber, kind, minutes }: LoggedFlight['exceptions'][number]): string {
  const time = kind === 'shut-down' ? ` for ${hoursMinutes(minutes)} h` : '';
  return `Position ${positionNumber} ${EXCEPTION_WORDS[kind]}${time}`;
}

function Remarks({ flight, replaced }: { readonly flight: LoggedFlight; readonly replaced: boolean }) {
  const events = [
    flight.touchAndGoes > 0 ? counted(flight.touchAndGoes, 'touch-and-go', 'touch-and-goes') : '',
    flight.starts === 1 ? '' : counted(flight.starts, 'start'),
    flight.abortedTakeOffs > 0 ? counted(flight.abortedTakeOffs, 'aborted take-off') : '',
    ...flight.exceptions.map(exceptionText),
    flight.replacesId === null ? '' : 'Corrects an earlier entry',
  ].filter(Boolean);
  return (
    <>
      {flight.voided && (
        <strong className="flight-voided">
          {replaced ? 'Corrected' : 'Voided'}: “{flight.voidReason ?? 'no reason recorded'}”
        </strong>
      )}
      {events.join('; ')}
    </>
  );
}

function Acts({ flight, onCorrect, onVoid }: FlightActs & { readonly flight: LoggedFlight }) {
  if (flight.voided) return null;
  return (
    <span className="flight-acts">
      <Button
        kind="quiet"
        aria-label={`Correct log page ${flight.logPage}`}
        onClick={() => onCorrect(flight)}
      >
        Correct
      </Button>
      <Button kind="quiet" aria-label={`Void log page ${flight.logPage}`} onClick={() => onVoid(flight)}>
        Void
      </Button>
    </span>
  );
}

interface ColumnsOf {
  /** Null for those who may not. */
  readonly acts: FlightActs | null;
  readonly gapActs: GapActs | null;
  /** Flights that another corrects. */
  readonly replaced: ReadonlySet<string>;
  /** The flight that the address asks for. */
  readonly asked: string | undefined;
}

/** The id of a flight's log page on screen. */
export const flightPlace = (flightId: string): string => `flight-${flightId}`;

/** The columns of the list; acts only for those who may. */
export function flightColumns({
  acts,
  gapActs,
  replaced,
  asked,
}: ColumnsOf): readonly Column<LoggedFlight>[] {
  const own: readonly Column<LoggedFlight>[] = [
    {
      id: 'page',
      header: 'Log page',
      cell: (flight) => (
        <span
          className={flight.id === asked ? 'serial flight-asked' : 'serial'}
          {...(flight.id === asked ? { id: flightPlace(flight.id), tabIndex: -1 } : {})}
        >
          {flight.logPage}
        </span>
      ),
      namesRow: true,
    },
    {
      id: 'date',
      header: 'Date',
      cell: (flight) => <span className="flight-when">{times(flight).date}</span>,
    },
    { id: 'from', header: 'From', cell: (flight) => <span className="serial">{flight.fromStation}</span> },
    { id: 'to', header: 'To', cell: (flight) => <span className="serial">{flight.toStation}</span> },
    { id: 'takeOff', header: 'Take-off', align: 'figures', cell: (flight) => times(flight).takeOff },
    { id: 'landing', header: 'Landing', align: 'figures', cell: (flight) => times(flight).landing },
    { id: 'time', header: 'Time', align: 'figures', cell: (flight) => hoursMinutes(flight.minutes) },
    {
      id: 'remarks',
      header: 'Remarks',
      cell: (flight) => (
        <div className="flight-remarks">
          <Remarks flight={flight} replaced={replaced.has(flight.id)} />
          <FlightGaps flight={flight} acts={gapActs} />
        </div>
      ),
    },
  ];
  if (acts === null) return own;
  return [...own, { id: 'acts', header: 'Acts', cell: (flight) => <Acts flight={flight} {...acts} /> }];
}
