import { exactCycles } from '../../format/cycles.js';
import { hoursMinutes } from '../../format/hours.js';
import { momentText } from '../../format/when.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { SerialText } from '../../ui/status/serial-text.js';
import type { Column } from '../../ui/table/column.js';
import { DataTable } from '../../ui/table/data-table.js';
import { eventsText, spanText } from './counter-words.js';
import type { AirframeCounters, ClockAddend } from './counters-data.js';
import { LineFlights } from './line-flights.js';

type Line = ClockAddend & { readonly key: string; readonly clockId: string; readonly ofPosition: boolean };

const hoursOf = (minutes: number | null) => (minutes === null ? 'Not known' : hoursMinutes(minutes));
const flightsOf = (cycles: ClockAddend['cycles']) => (cycles === null ? 'Not known' : exactCycles(cycles));

/** A year of an airframe's log begins a minute before it, to count what landed at midnight. */
function yearOf({ from }: ClockAddend): string {
  if (from === null) return '';
  return String(new Date(Date.parse(from) + 60_000).getUTCFullYear());
}

function What({ line }: { readonly line: Line }) {
  const { kind, engine, from, to, counts, source, note, ofPosition, clockId } = line;
  if (kind === 'opening')
    return (
      <>
        <strong>Opening balance</strong>
        <span className="line-detail">
          {to !== null && `Holds at ${momentText(to)}. `}
          {source !== null && `Source: ${source}`}
          {note !== null && ` ${note}`}
        </span>
      </>
    );
  return (
    <>
      <strong>
        {!ofPosition && `Flown in ${yearOf(line)}`}
        {ofPosition && engine === null && 'Empty'}
        {engine !== null && (
          <RouteLink href={`/components/${engine.id}`}>
            <SerialText>{engine.serialNumber}</SerialText>
          </RouteLink>
        )}
      </strong>
      {ofPosition && <span className="line-detail">{spanText(from, to)}</span>}
      {counts !== null && <span className="line-detail">{eventsText(counts)}</span>}
      {from !== null && <LineFlights span={{ carrierId: clockId, from, to }} />}
    </>
  );
}

const COLUMNS: readonly Column<Line>[] = [
  {
    id: 'what',
    header: 'What',
    cell: (line) => (
      <div className="line-what">
        <What line={line} />
      </div>
    ),
    namesRow: true,
  },
  { id: 'hours', header: 'Hours', align: 'figures', cell: ({ minutes }) => hoursOf(minutes) },
  { id: 'flights', header: 'Flights', align: 'figures', cell: ({ cycles }) => flightsOf(cycles) },
  {
    id: 'hours-so-far',
    header: 'Hours so far',
    align: 'figures',
    cell: ({ running }) => <span className="so-far">{hoursOf(running.minutes)}</span>,
  },
  {
    id: 'flights-so-far',
    header: 'Flights so far',
    align: 'figures',
    cell: ({ running }) => <span className="so-far">{flightsOf(running.cycles)}</span>,
  },
];

interface ClockTableProps {
  readonly label: string;
  readonly clockId: string;
  readonly ofPosition: boolean;
  readonly sum: Pick<AirframeCounters, 'total' | 'addends'>;
}

/** What an airframe or a position has run, as a sum on paper. */
export function ClockTable({ label, clockId, ofPosition, sum: { total, addends } }: ClockTableProps) {
  return (
    <div className="sum">
      <DataTable
        caption={label}
        captionHidden
        columns={COLUMNS}
        rows={addends.map((line, place) => ({ ...line, clockId, ofPosition, key: `${place}` }))}
        rowKey={({ key }) => key}
      />
      <p className="sum-total">
        Total{' '}
        <strong>{total.minutes === null ? 'hours not verified' : `${hoursMinutes(total.minutes)} h`}</strong>,{' '}
        <strong>
          {total.cycles === null ? 'flights not verified' : `${exactCycles(total.cycles)} flights`}
        </strong>
      </p>
    </div>
  );
}
