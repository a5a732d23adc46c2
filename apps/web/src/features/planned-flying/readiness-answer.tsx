import { counted } from '../../format/counts.js';
import { leftIn } from '../../format/due-words.js';
import { hoursMinutes } from '../../format/hours.js';
import { calendarDate } from '../../format/utc-date.js';
import { momentText } from '../../format/when.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import type { Column } from '../../ui/table/column.js';
import { DataTable } from '../../ui/table/data-table.js';
import type { Readiness, ReadinessFlight, ReadinessItem } from './planning-data.js';

function Named({ item }: { readonly item: ReadinessItem }) {
  const { name, of, requirementId, componentId, engineSerial, positionNumber } = item;
  return (
    <>
      {requirementId === null ? name : <RouteLink href={`/requirements/${requirementId}`}>{name}</RouteLink>}
      <span className="readiness-line">
        {componentId === null ? of : <RouteLink href={`/components/${componentId}`}>{of}</RouteLink>}
        {engineSerial !== null && `, in ${engineSerial}`}
        {positionNumber !== null && componentId !== null && `, position ${positionNumber}`}
      </span>
    </>
  );
}

const leftText = ({ left, reason }: ReadinessItem): string =>
  left.length === 0
    ? (reason ?? 'Past')
    : left
        .map(({ dimension, remaining, untilLatest, dueOn }) =>
          [
            leftIn(dimension, remaining),
            dueOn === null ? '' : `, through ${calendarDate(dueOn)}`,
            untilLatest === remaining ? '' : ` (${leftIn(dimension, untilLatest)} of what is granted)`,
          ].join(''),
        )
        .join('; ');

/** Each item with the flights that reach it. */
const ITEM_COLUMNS: readonly Column<ReadinessItem>[] = [
  {
    id: 'what',
    header: 'What',
    namesRow: true,
    cell: (item) => <Named item={item} />,
  },
  { id: 'left', header: 'Left before the first flight', cell: leftText },
  {
    id: 'reached',
    header: 'Reached',
    cell: ({ breaksOnFlight, dueOnFlight }) =>
      breaksOnFlight === null
        ? `Due in flight ${dueOnFlight ?? ''}, inside what is granted`
        : `Flight ${breaksOnFlight} must not be made`,
  },
];

/** What cannot be foretold, and why. */
const UNKNOWN_COLUMNS: readonly Column<ReadinessItem>[] = [
  { id: 'status', header: 'Status', cell: () => <StatusMark status="not-verified" /> },
  { id: 'what', header: 'What', namesRow: true, cell: (item) => <Named item={item} /> },
  { id: 'why', header: 'Why', cell: ({ reason }) => reason ?? 'Not known' },
];

const words = ({ name, of }: ReadinessItem): string => `${name}, ${of}`;

function reachedBy({ number }: ReadinessFlight, items: readonly ReadinessItem[]): readonly string[] {
  return [
    ...items.filter((item) => item.breaksOnFlight === number).map((item) => `Over: ${words(item)}`),
    ...items
      .filter((item) => item.dueOnFlight === number && item.breaksOnFlight !== number)
      .map((item) => `Due, inside what is granted: ${words(item)}`),
  ];
}

const flightColumns = ({ items, lastAllowed }: Readiness): readonly Column<ReadinessFlight>[] => [
  { id: 'number', header: 'Flight', namesRow: true, align: 'figures', cell: ({ number }) => String(number) },
  {
    id: 'way',
    header: 'From, to',
    cell: ({ flightNumber, fromStation, toStation }) => (
      <>
        {fromStation ?? '–'} to {toStation ?? '–'}
        {flightNumber !== null && <span className="readiness-line small quiet">{flightNumber}</span>}
      </>
    ),
  },
  { id: 'off', header: 'Take-off', cell: ({ takeOffAt }) => momentText(takeOffAt) },
  { id: 'on', header: 'Landing', cell: ({ landingAt }) => momentText(landingAt) },
  { id: 'time', header: 'Time', align: 'figures', cell: ({ minutes }) => hoursMinutes(minutes) },
  {
    id: 'may',
    header: 'May be made',
    cell: ({ number, allowed }) => (
      <strong>{allowed ? (number === lastAllowed ? 'Yes, and no further' : 'Yes') : 'No'}</strong>
    ),
  },
  {
    id: 'reached',
    header: 'What it reaches',
    cell: (flight) =>
      reachedBy(flight, items).map((text) => (
        <span key={text} className="readiness-line small">
          {text}
        </span>
      )),
  },
];

const itemKey = (item: ReadinessItem): string => `${item.kind} ${item.requirementId ?? ''} ${words(item)}`;

// All that are reached stand there; of the rest the first and those around the last that may be made.
const MOST_FLIGHTS = 200;

/** Which flights may be made: the answer in words first, then what is reached, what is not verified, and each flight. */
export function ReadinessAnswer({ answer }: { readonly answer: Readiness }) {
  const { verdict, statement, basisText, flights, notVerified, items, notLogged, dayZone, lastAllowed } =
    answer;
  const shown = flights.slice(0, Math.max(MOST_FLIGHTS, lastAllowed + 20));
  return (
    <div className="stack">
      <section className={`readiness-verdict readiness-${verdict}`} aria-live="polite">
        <h2>{statement}</h2>
        <p>
          {basisText} Days are counted in {dayZone}. A forecast is never a limit: what is flown counts.
        </p>
        {notLogged > 0 && (
          <p>
            <strong>{counted(notLogged, 'planned flight')} before now have no flight in the log.</strong> What
            they used is counted nowhere: enter them, or void them.
          </p>
        )}
      </section>
      {items.length > 0 && (
        <section className="stack-small">
          <h3>What the flying reaches</h3>
          <DataTable
            caption="What the flying reaches"
            captionHidden
            columns={ITEM_COLUMNS}
            rows={items}
            rowKey={itemKey}
          />
        </section>
      )}
      {notVerified.length > 0 && (
        <section className="stack-small">
          <h3>Not verified: {notVerified.length}</h3>
          <p className="quiet">Nothing is foretold of these: whatever is flown, they stay not verified.</p>
          <DataTable
            caption="Not verified"
            captionHidden
            columns={UNKNOWN_COLUMNS}
            rows={notVerified}
            rowKey={itemKey}
          />
        </section>
      )}
      {flights.length > 0 && (
        <section className="stack-small print-landscape">
          <h3>Flights</h3>
          <DataTable
            caption="Flights to come"
            captionHidden
            columns={flightColumns(answer)}
            rows={shown}
            rowKey={({ number }) => String(number)}
          />
          {shown.length < flights.length && (
            <p className="quiet">
              The first {shown.length} of {flights.length} flights are shown.
            </p>
          )}
        </section>
      )}
    </div>
  );
}
