import { hoursMinutes } from '../../format/hours.js';
import { momentText } from '../../format/when.js';
import { exceptionText } from './flight-columns.js';
import type { LoggedFlight } from './flights-data.js';

interface FactsProps {
  readonly flight: LoggedFlight;
}

/** A flight as it is on record. */
export function FlightFacts({ flight }: FactsProps) {
  const lines = [
    ['Log page', flight.logPage],
    ['From, to', `${flight.fromStation} to ${flight.toStation}`],
    ['Take-off', momentText(flight.takeOffAt)],
    ['Landing', momentText(flight.landingAt)],
    ['Time', `${hoursMinutes(flight.minutes)} h`],
    ['Touch-and-goes', String(flight.touchAndGoes)],
    ['Starts', String(flight.starts)],
    ['Aborted take-offs', String(flight.abortedTakeOffs)],
    ...flight.exceptions.map((exception) => ['Exception', exceptionText(exception)] as const),
  ] as const;
  return (
    <dl className="flight-facts">
      {lines.map(([term, value]) => (
        <div key={`${term} ${value}`}>
          <dt>{term}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
