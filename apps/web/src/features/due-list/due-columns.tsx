import { amountIn, leftIn } from '../../format/due-words.js';
import { calendarDate } from '../../format/utc-date.js';
import type { DueRow } from '../../server/wire.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { markOf } from '../../ui/status/near.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import type { Column } from '../../ui/table/column.js';

type Due = DueRow['dues'][number];

function sourceText({ document, revision }: DueRow): string {
  if (document === null) return 'No limit recorded';
  return revision === null ? document : `${document}, revision ${revision}`;
}

function Where({ row }: { readonly row: DueRow }) {
  const { engineId, engineSerial, serialNumber, airframeId, airframe, positionNumber } = row;
  return (
    <>
      {engineSerial !== null && engineId !== null && engineSerial !== serialNumber && (
        <span className="due-line small">
          In{' '}
          <RouteLink href={`/components/${engineId}`}>
            <SerialText>{engineSerial}</SerialText>
          </RouteLink>
        </span>
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

/** A life limit or a requirement, and the document it is from. */
function What({ row }: { readonly row: DueRow }) {
  const { requirement, kind } = row;
  return (
    <>
      {requirement === null ? (
        kind === 'counters' ? (
          'Counters'
        ) : (
          'Life limit'
        )
      ) : (
        <>
          <RouteLink href={`/requirements/${requirement.id}`}>
            <SerialText>{requirement.code}</SerialText>
          </RouteLink>{' '}
          {requirement.title}
        </>
      )}
      {kind !== 'counters' && <span className="due-line small quiet">{sourceText(row)}</span>}
    </>
  );
}

const isOf = (dimension: Due['dimension'], column: 'minutes' | 'cycles' | 'days'): boolean =>
  dimension === column || (column === 'days' && dimension === 'months');

/** What is left in one dimension; the one that governs stands out. */
function Left({ row, column }: { readonly row: DueRow; readonly column: 'minutes' | 'cycles' | 'days' }) {
  const dues = row.dues.filter(({ dimension }) => isOf(dimension, column));
  if (dues.length === 0) return <span className="quiet">–</span>;
  return (
    <>
      {dues.map((due) => {
        const governs = row.dues.length > 1 && due.dimension === row.dimension;
        return (
          <span key={`${due.dimension} ${due.isBound}`} className="due-line">
            <span className="due-figure">
              {governs ? (
                <strong>{leftIn(due.dimension, due.remaining)}</strong>
              ) : (
                leftIn(due.dimension, due.remaining)
              )}
            </span>
            <span className="due-line due-figure small quiet">
              {due.dueOn === null
                ? due.interval !== null && `Of ${amountIn(due.dimension, due.interval)}`
                : `Through ${calendarDate(due.dueOn)}`}
              {due.isBound && ', outer bound'}
            </span>
            {due.remaining < 0 && due.untilLatest >= 0 && (
              <span className="due-line small">
                {leftIn(due.dimension, due.untilLatest)} of what is granted
              </span>
            )}
            {governs && <span className="due-line small">Governs</span>}
          </span>
        );
      })}
    </>
  );
}

const left = (id: 'minutes' | 'cycles' | 'days', header: string): Column<DueRow> => ({
  id,
  header,
  cell: (row) => <Left row={row} column={id} />,
});

/** Never read: the server sorts. It only says that the column can be sorted by. */
const byServer = (): number => 0;

/** The rows are in the server's order: its sorts are those of the columns that sort. */
export const DUE_COLUMNS: readonly Column<DueRow>[] = [
  {
    id: 'urgency',
    header: 'Status',
    sortBy: byServer,
    cell: (row) => (
      <>
        <StatusMark status={markOf(row.status)} />
        {row.reason !== null && <span className="due-line small">{row.reason}</span>}
        {row.flagged && <span className="due-line small">Counted at its worst case, as accepted</span>}
      </>
    ),
  },
  { id: 'code', header: 'What', namesRow: true, sortBy: byServer, cell: (row) => <What row={row} /> },
  {
    id: 'subject',
    header: 'Of',
    sortBy: byServer,
    cell: (row) => (
      <span className="due-where">
        <Part row={row} />
        <Where row={row} />
      </span>
    ),
  },
  { ...left('minutes', 'Hours'), id: 'remaining', sortBy: byServer },
  left('cycles', 'Cycles'),
  {
    ...left('days', 'Calendar'),
    cell: (row) => (
      <>
        <Left row={row} column="days" />
        {row.dues.length > 1 && row.requirement !== null && (
          <span className="due-line small quiet">Whichever comes {row.requirement.combine}</span>
        )}
      </>
    ),
  },
  {
    id: 'projected',
    header: 'Projected',
    sortBy: byServer,
    cell: ({ projectedOn, basis }) => (
      <>
        {projectedOn === null ? 'No date' : calendarDate(projectedOn)}
        <span className="due-line small quiet">{basis}</span>
      </>
    ),
  },
];
