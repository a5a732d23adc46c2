import { RouteLink } from '../../ui/actions/route-link.js';
import { SerialText } from '../../ui/status/serial-text.js';
import type { Column } from '../../ui/table/column.js';
import { DataTable } from '../../ui/table/data-table.js';
import { spanText } from './balance-words.js';
import { Account, Difference } from './fleet-table.js';
import type { AirframeBalance, BalanceSpan } from './trial-balance-queries.js';

interface OfSpanProps {
  readonly airframeId: string;
  readonly span: BalanceSpan;
}

/** Who was there then, or that nobody was. */
export function WhoWasThere({ span: { componentId, serialNumber } }: { readonly span: BalanceSpan }) {
  if (componentId === null || serialNumber === null) return 'No engine';
  return (
    <RouteLink href={`/components/${componentId}`}>
      <SerialText>{serialNumber}</SerialText>
    </RouteLink>
  );
}

/** Where to read what the span rests on: its flights, and who was where. */
export function SpanLinks({ airframeId, span: { componentId, from, lastFlightId } }: OfSpanProps) {
  const flights =
    lastFlightId === null
      ? `/flights?airframe=${airframeId}`
      : `/flights?airframe=${airframeId}&flight=${lastFlightId}`;
  const places =
    componentId === null
      ? `/positions/${airframeId}${from === null ? '' : `?at=${from}`}`
      : `/components/${componentId}?tab=places`;
  return (
    <>
      <RouteLink className="balance-line" href={flights}>
        Its flights
      </RouteLink>
      <RouteLink className="balance-line" href={places}>
        {componentId === null ? 'What stood there' : 'Where the engine was'}
      </RouteLink>
    </>
  );
}

const columnsOf = (airframeId: string): readonly Column<BalanceSpan>[] => [
  { id: 'when', header: 'When, UTC', cell: (span) => <span className="balance-when">{spanText(span)}</span> },
  { id: 'engine', header: 'Engine', namesRow: true, cell: (span) => <WhoWasThere span={span} /> },
  { id: 'flown', header: 'Flown', align: 'figures', cell: ({ flown }) => <Account counts={flown} /> },
  { id: 'runs', header: 'Run on ground', align: 'figures', cell: ({ runs }) => <Account counts={runs} /> },
  {
    id: 'taken',
    header: 'On engine, or empty',
    align: 'figures',
    cell: ({ taken }) => <Account counts={taken} />,
  },
  {
    id: 'notRunning',
    header: 'Not running',
    align: 'figures',
    cell: ({ notRunning }) => <Account counts={notRunning} />,
  },
  {
    id: 'difference',
    header: 'Difference',
    align: 'figures',
    cell: ({ difference }) => <Difference counts={difference} />,
  },
  { id: 'links', header: 'Read', cell: (span) => <SpanLinks airframeId={airframeId} span={span} /> },
];

interface SpanTableProps {
  readonly balance: AirframeBalance;
  readonly positionNumber: number;
  readonly spans: readonly BalanceSpan[];
}

/** Engine by engine, and the times between, at one position. */
export function SpanTable({ balance, positionNumber, spans }: SpanTableProps) {
  return (
    <DataTable
      caption={`Position ${positionNumber} engine by engine`}
      captionHidden
      columns={columnsOf(balance.airframeId)}
      rows={spans}
      rowKey={({ from, componentId }) => `${from ?? ''} ${componentId ?? ''}`}
    />
  );
}
