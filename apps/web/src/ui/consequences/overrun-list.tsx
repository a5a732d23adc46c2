import { counted, cycles } from '../../format/counts.js';
import { hoursMinutes } from '../../format/hours.js';
import { calendarDate } from '../../format/utc-date.js';
import { momentText } from '../../format/when.js';
import { RouteLink } from '../actions/route-link.js';
import { SerialText } from '../status/serial-text.js';
import { StatusMark } from '../status/status-mark.js';
import type { FlightAtEnd, Overrun } from './broken.js';
import './consequences.css';

/** 4, 'cycles' -> '4 cycles'; 90, 'minutes' -> '1:30 h'. */
function amount(count: number, dimension: Overrun['dimension']): string {
  if (dimension === 'days') return counted(count, 'day');
  return dimension === 'cycles' ? cycles(count) : `${hoursMinutes(count)} h`;
}

/** 'flown 4 cycles beyond a limit of 20,000 cycles', 'flown on, at the end 4 cycles past what was due'. */
function howText({ requirement, limit, dueOn, dimension, by }: Overrun): readonly [string, string, string] {
  const beyond = amount(by, dimension);
  if (dueOn !== null) return ['flown on for', beyond, `after its last day, ${calendarDate(dueOn)}`];
  if (limit === null) return ['flown', beyond, 'beyond the limit then in force'];
  const told = amount(limit, dimension);
  return requirement === null
    ? ['flown', beyond, `beyond a limit of ${told}`]
    : ['flown on, at the end', beyond, `past what was due at ${told} since new`];
}

function FlightLink({ flight }: { readonly flight: FlightAtEnd }) {
  return (
    <>
      <RouteLink href={`/flights?airframe=${flight.airframeId}`}>
        log page <span className="serial">{flight.logPage}</span> of{' '}
        <span className="serial">{flight.registration}</span>
      </RouteLink>{' '}
      ({momentText(flight.landingAt)})
    </>
  );
}

/** What is limited, with the way to it. */
export function LimitedName({
  componentId,
  description,
  serialNumber,
}: Pick<Overrun, 'componentId' | 'description' | 'serialNumber'>) {
  if (componentId === null) return <span className="serial">{serialNumber}</span>;
  return (
    <RouteLink href={`/components/${componentId}`}>
      {description} <SerialText>{serialNumber}</SerialText>
    </RouteLink>
  );
}

function Line({ overrun }: { readonly overrun: Overrun }) {
  const { requirement, flights, first, last, isOpen, document, revision } = overrun;
  const [flown, by, beyond] = howText(overrun);
  const isOne = flights === 1;
  return (
    <li>
      <StatusMark status="over-limit" word={isOpen ? 'Over limit' : 'Was over limit'} />
      <div>
        <p>
          <LimitedName {...overrun} />
          {requirement !== null && `, ${requirement}`}: {flown} <strong>{by}</strong> {beyond}
          {document !== '' && `, ${document} revision ${revision}`}
        </p>
        <p className="quiet">
          {counted(flights, 'flight')}:{' '}
          {isOne ? (
            <FlightLink flight={first} />
          ) : (
            <>
              from <FlightLink flight={first} /> to <FlightLink flight={last} />
            </>
          )}
          . {isOpen ? 'It goes on: nothing has ended it.' : 'It has ended since.'}
        </p>
      </div>
    </li>
  );
}

/** Spans flown over a limit, each with what, by how much, and the flights. */
export function OverrunList({ overruns }: { readonly overruns: readonly Overrun[] }) {
  return (
    <ul className="plain-list consequence-list">
      {overruns.map((overrun) => (
        <Line
          key={`${overrun.serialNumber} ${overrun.requirement} ${overrun.dimension} ${overrun.first.landingAt} ${overrun.dueOn}`}
          overrun={overrun}
        />
      ))}
    </ul>
  );
}
