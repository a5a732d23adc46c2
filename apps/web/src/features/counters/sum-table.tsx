import { exactCycles } from '../../format/cycles.js';
import { hoursMinutes } from '../../format/hours.js';
import { momentText } from '../../format/when.js';
import type { Counters } from '../../server/wire.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import type { Column } from '../../ui/table/column.js';
import { DataTable } from '../../ui/table/data-table.js';
import { eventsText, ruleText, spanText, TRACE_WORDS, toldText } from './counter-words.js';
import type { Addend } from './counters-data.js';
import { LineFlights } from './line-flights.js';

const NOT_KNOWN = 'Not known';

const hoursOf = (minutes: number | null) => (minutes === null ? NOT_KNOWN : hoursMinutes(minutes));
const cyclesOf = (cycles: Counters['cycles']) => (cycles === null ? NOT_KNOWN : exactCycles(cycles));

function Opening({ line }: { readonly line: Addend }) {
  const { moment, ratingCode, source, trace, note } = line;
  return (
    <>
      <strong>Opening balance{ratingCode !== null && ` at rating ${ratingCode}`}</strong>
      <span className="line-detail">
        {moment !== null && `Holds at ${toldText(moment)}. `}Source: {source}
      </span>
      {trace !== null && trace !== 'shown' && (
        <span className="line-detail">
          <StatusMark status={trace === 'not-shown' ? 'not-verified' : 'plan'} word={TRACE_WORDS[trace]} />{' '}
          {note}
        </span>
      )}
    </>
  );
}

function Exceptions({ line: { exceptions } }: { readonly line: Addend }) {
  if (exceptions.length === 0) return null;
  return (
    <details>
      <summary>Not run or not counted: {exceptions.length}</summary>
      <ul className="line-flights">
        {exceptions.map(({ flightId, logPage, landingAt, kind, missed }) => (
          <li key={flightId}>
            <span className="serial">{logPage}</span>, landed {momentText(landingAt)}:{' '}
            {kind === 'not-running' ? 'not running' : 'shut down'}, less {hoursMinutes(missed.minutes)} h
            {missed.flights > 0 && ` and ${eventsText(missed)}`}
          </li>
        ))}
      </ul>
    </details>
  );
}

function Exposure({ line, ownId }: { readonly line: Addend; readonly ownId: string }) {
  const { carrier, carriedBy, from, to, ratingCode, rule, counts } = line;
  const isOwn = carrier?.kind === 'apu-counter';
  const label = isOwn ? 'Its own counter' : (carrier?.label ?? '');
  return (
    <>
      <strong>
        {carrier?.airframeId == null ? (
          label
        ) : (
          <RouteLink href={`/positions/${carrier.airframeId}`}>{label}</RouteLink>
        )}
        {carriedBy !== null && carriedBy.id !== ownId && (
          <>
            {', carried by '}
            <RouteLink href={`/components/${carriedBy.id}`}>
              <SerialText>{carriedBy.serialNumber}</SerialText>
            </RouteLink>
          </>
        )}
      </strong>
      <span className="line-detail">
        {spanText(from, to)}
        {ratingCode !== null && `, at rating ${ratingCode}`}
      </span>
      {counts !== null && <span className="line-detail">{eventsText(counts)}</span>}
      <span className="line-detail">
        {rule === null
          ? 'No rule says what a cycle is here'
          : `Cycles: ${ruleText(rule)}${rule.source === null ? '' : `; ${rule.source} revision ${rule.revision ?? ''}`}`}
      </span>
      <Exceptions line={line} />
      {carrier !== null && !isOwn && from !== null && (
        <LineFlights span={{ carrierId: carrier.id, from, to }} />
      )}
    </>
  );
}

function Gap({ line }: { readonly line: Addend }) {
  const { from, to, note, source, acceptedBy } = line;
  return (
    <>
      <strong>Gap in the records</strong>
      <span className="line-detail">
        {spanText(from, to)}: {note}
      </span>
      <span className="line-detail">
        {acceptedBy === null ? (
          <StatusMark status="not-verified" word="Not accepted" />
        ) : (
          `At its worst case, accepted by ${acceptedBy}, ${source ?? ''}`
        )}
      </span>
    </>
  );
}

function What({ line, ownId }: { readonly line: Addend; readonly ownId: string }) {
  switch (line.kind) {
    case 'opening':
      return <Opening line={line} />;
    case 'exposure':
      return <Exposure line={line} ownId={ownId} />;
    case 'gap':
      return <Gap line={line} />;
    case 'unknown':
      return <strong>{line.note}</strong>;
  }
}

const COLUMNS: readonly Column<Addend & { readonly key: string; readonly ownId: string }>[] = [
  {
    id: 'what',
    header: 'What',
    cell: (line) => (
      <div className="line-what">
        <What line={line} ownId={line.ownId} />
      </div>
    ),
    namesRow: true,
  },
  { id: 'hours', header: 'Hours', align: 'figures', cell: ({ minutes }) => hoursOf(minutes) },
  { id: 'cycles', header: 'Cycles', align: 'figures', cell: ({ cycles }) => cyclesOf(cycles) },
  {
    id: 'hours-so-far',
    header: 'Hours so far',
    align: 'figures',
    cell: ({ running }) => <span className="so-far">{hoursOf(running.minutes)}</span>,
  },
  {
    id: 'cycles-so-far',
    header: 'Cycles so far',
    align: 'figures',
    cell: ({ running }) => <span className="so-far">{cyclesOf(running.cycles)}</span>,
  },
];

interface SumTableProps {
  readonly label: string;
  /** The component whose counter it is. */
  readonly ownId: string;
  readonly lines: readonly Addend[];
  readonly total: Counters;
}

/** A counter as a sum on paper: each line, what it adds, and the sum so far; the total below. */
export function SumTable({ label, ownId, lines, total }: SumTableProps) {
  return (
    <div className="sum">
      <DataTable
        caption={label}
        captionHidden
        columns={COLUMNS}
        rows={lines.map((line, place) => ({ ...line, ownId, key: `${place}` }))}
        rowKey={({ key }) => key}
      />
      <p className="sum-total">
        Total{' '}
        <strong>{total.minutes === null ? 'hours not verified' : `${hoursMinutes(total.minutes)} h`}</strong>,{' '}
        <strong>
          {total.cycles === null ? 'cycles not verified' : `${exactCycles(total.cycles)} cycles`}
        </strong>
      </p>
    </div>
  );
}
