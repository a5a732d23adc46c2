import { amountIn, leftIn } from '../../format/due-words.js';
import { calendarDate } from '../../format/utc-date.js';
import type { DueRow } from '../../server/wire.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { markOf } from '../../ui/status/near.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import type { Column } from '../../ui/table/column.js';

function leftText({
  dimension,
  remainingCycles: cycles,
  remainingMinutes: minutes,
  remainingDays: days,
}: DueRow): string {
  if (dimension === 'none') return 'Not known';
  return leftIn(dimension, cycles ?? minutes ?? days ?? 0);
}

/** What is left in the dimensions of a requirement that do not govern. */
function othersText({ dues, dimension }: DueRow): readonly string[] {
  return dues.filter((due) => due.dimension !== dimension).map((due) => leftIn(due.dimension, due.remaining));
}

function limitText({ limit, dimension, document, dueOn }: DueRow): string | null {
  // What is not verified is held against no number, but may well have a document.
  if (limit === null || dimension === 'none') return document === null ? 'No limit recorded' : null;
  return dueOn === null ? amountIn(dimension, limit) : calendarDate(dueOn);
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

function Part({ row: { componentId, description, serialNumber } }: { readonly row: DueRow }) {
  if (componentId === null) return null;
  return (
    <span className="due-line">
      {description}{' '}
      <RouteLink href={`/components/${componentId}`}>
        <SerialText>{serialNumber ?? ''}</SerialText>
      </RouteLink>
    </span>
  );
}

/** A part and its limit, or a requirement and the part it is held against. */
function What({ row }: { readonly row: DueRow }) {
  const { requirement } = row;
  if (requirement === null) return <Part row={row} />;
  return (
    <>
      <RouteLink href={`/requirements/${requirement.id}`}>
        <SerialText>{requirement.code}</SerialText>
      </RouteLink>{' '}
      {requirement.title}
      <Part row={row} />
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
        {othersText(row).map((text) => (
          <span key={text} className="due-line small">
            {text}
          </span>
        ))}
        {row.dues.length > 1 && row.requirement !== null && (
          <span className="due-line small quiet">Whichever comes {row.requirement.combine}</span>
        )}
        {row.reason !== null && <span className="due-line small">{row.reason}</span>}
        {row.flagged && <span className="due-line small">Counted at its worst case, as accepted</span>}
      </>
    ),
  },
  { id: 'what', header: 'What', namesRow: true, cell: (row) => <What row={row} /> },
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
    header: 'Limit or interval',
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
