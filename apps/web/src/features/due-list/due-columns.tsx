import { hoursMinutes, thousands } from '../../format/hours.js';
import { remainingCycles, remainingMinutes } from '../../format/remaining.js';
import { calendarDate } from '../../format/utc-date.js';
import type { DueRow } from '../../server/wire.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { markOf } from '../../ui/status/near.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import type { Column } from '../../ui/table/column.js';

function leftText({ remainingCycles: cycles, remainingMinutes: minutes }: DueRow): string {
  if (cycles !== null) return remainingCycles(cycles);
  return minutes === null ? 'Not known' : remainingMinutes(minutes);
}

function limitText({ limit, dimension, document }: DueRow): string | null {
  // What is not verified is held against no number, but may well have a document.
  if (limit === null) return document === null ? 'No limit recorded' : null;
  return dimension === 'minutes' ? `${hoursMinutes(limit)} h` : `${thousands(limit)} cycles`;
}

function sourceText({ document, revision }: DueRow): string | null {
  if (document === null) return null;
  return revision === null ? document : `${document}, revision ${revision}`;
}

function Where({ row }: { readonly row: DueRow }) {
  const { engineId, engineSerial, airframeId, airframe, positionNumber } = row;
  return (
    <>
      {engineSerial !== null && engineId !== null && (
        <RouteLink href={`/components/${engineId}`}>
          <SerialText>{engineSerial}</SerialText>
        </RouteLink>
      )}
      <span className="due-line small">
        {airframe === null || airframeId === null ? (
          'On no airframe'
        ) : (
          <>
            {positionNumber !== null && (positionNumber === 0 ? 'APU of ' : `Position ${positionNumber} on `)}
            <RouteLink href={`/positions/${airframeId}`}>
              <SerialText>{airframe}</SerialText>
            </RouteLink>
          </>
        )}
      </span>
    </>
  );
}

/** The list in the server's order, the most urgent first: it is not sorted otherwise. */
export const DUE_COLUMNS: readonly Column<DueRow>[] = [
  { id: 'status', header: 'Status', cell: ({ status }) => <StatusMark status={markOf(status)} /> },
  {
    id: 'left',
    header: 'Left',
    cell: (row) => (
      <>
        <strong>{leftText(row)}</strong>
        {row.reason !== null && <span className="due-line small">{row.reason}</span>}
        {row.flagged && <span className="due-line small">Counted at its worst case, as accepted</span>}
      </>
    ),
  },
  {
    id: 'part',
    header: 'Part',
    namesRow: true,
    cell: ({ componentId, description, serialNumber }) => (
      <>
        {description}
        <span className="due-line">
          <RouteLink href={`/components/${componentId}`}>
            <SerialText>{serialNumber}</SerialText>
          </RouteLink>
        </span>
      </>
    ),
  },
  {
    id: 'where',
    header: 'In',
    cell: (row) => (
      <span className="due-where">
        <Where row={row} />
      </span>
    ),
  },
  {
    id: 'limit',
    header: 'Limit',
    cell: (row) => (
      <>
        {limitText(row)}
        {sourceText(row) !== null && <span className="due-line small quiet">{sourceText(row)}</span>}
      </>
    ),
  },
  {
    id: 'projected',
    header: 'Projected',
    cell: ({ projectedOn, basis }) => (
      <>
        {projectedOn === null ? 'No date' : calendarDate(projectedOn)}
        <span className="due-line small quiet">{basis}</span>
      </>
    ),
  },
];
