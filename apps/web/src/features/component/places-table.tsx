import { useQuery } from '@tanstack/react-query';
import { slotWords } from '../../format/place-words.js';
import { boundaryText, type Precision } from '../../format/when.js';
import { placesQuery } from '../../server/components.js';
import type { Stay } from '../../server/wire.js';
import { Answered } from '../../ui/messages/answered.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import type { Column } from '../../ui/table/column.js';
import { DataTable } from '../../ui/table/data-table.js';

interface MomentProps {
  readonly wire: string | null;
  readonly precision: Precision | null;
  readonly typed: string | null;
}

function Moment({ wire, precision, typed }: MomentProps) {
  if (wire === null) return 'Still there';
  const { main, exactly } = boundaryText(wire, precision, typed);
  return (
    <>
      {main}
      {exactly !== null && <span className="small quiet limit-number">{exactly}</span>}
    </>
  );
}

const COLUMNS: readonly Column<Stay>[] = [
  {
    id: 'from',
    header: 'From',
    cell: ({ from, fromPrecision, fromText }) => (
      <Moment wire={from} precision={fromPrecision} typed={fromText} />
    ),
    sortBy: ({ from }) => from,
  },
  {
    id: 'to',
    header: 'To',
    cell: ({ to, toPrecision, toText }) => <Moment wire={to} precision={toPrecision} typed={toText} />,
    sortBy: ({ to }) => to,
  },
  {
    id: 'where',
    header: 'Where',
    namesRow: true,
    cell: ({ label, kind, voided }) => (
      <>
        {voided && <span className="small stay-voided">Voided</span>}
        {kind === 'slot' ? slotWords(label) : label}
      </>
    ),
  },
  {
    id: 'why',
    header: 'Why',
    cell: ({ reason, endReason, voidReason }) => (
      <>
        {reason !== null && <span className="limit-number">Came: {reason}</span>}
        {endReason !== null && endReason !== reason && (
          <span className="limit-number">Left: {endReason}</span>
        )}
        {voidReason !== null && <span className="limit-number stay-voided">Voided: {voidReason}</span>}
      </>
    ),
  },
];

/** Every stay of a component, the newest first; what was voided stays, struck through. */
export function PlacesTable({ id, label }: { readonly id: string; readonly label: string }) {
  const query = useQuery(placesQuery(id));
  return (
    <Answered query={query} doing="Reading the places" lines={4}>
      {(stays) =>
        stays.length === 0 ? (
          <EmptyState>No place is on record for it. Record where it is in the register.</EmptyState>
        ) : (
          <DataTable
            caption={label}
            columns={COLUMNS}
            rows={[...stays].sort((a, b) => (a.from < b.from ? 1 : -1))}
            rowKey={(stay) => stay.id}
            struck={(stay) => stay.voided}
          />
        )
      }
    </Answered>
  );
}
