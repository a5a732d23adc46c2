import { useState } from 'react';
import { exactCycles } from '../../../../format/cycles.js';
import { hoursMinutes } from '../../../../format/hours.js';
import { calendarDate } from '../../../../format/utc-date.js';
import { Button } from '../../../../ui/actions/button.js';
import { RouteLink } from '../../../../ui/actions/route-link.js';
import { EmptyState } from '../../../../ui/messages/empty-state.js';
import { SerialText } from '../../../../ui/status/serial-text.js';
import { Voided } from '../../../../ui/status/voided.js';
import type { Column } from '../../../../ui/table/column.js';
import { DataTable } from '../../../../ui/table/data-table.js';
import { VoidDialog } from '../../void-dialog.js';
import { voidAccomplishment } from '../requirement-acts.js';
import { type Accomplishment, WHAT_IS_DUE } from '../requirement-queries.js';
import { CorrectMetForm } from './correct-met-form.js';

const COLUMNS: readonly Column<Accomplishment>[] = [
  {
    id: 'on',
    header: 'Met on',
    cell: ({ on, voided, voidReason }) => (
      <>
        {calendarDate(on)}
        {voided && <Voided reason={voidReason} />}
      </>
    ),
    sortBy: ({ on }) => on,
  },
  {
    id: 'subject',
    header: 'On',
    namesRow: true,
    cell: ({ subject }) => <SerialText>{subject}</SerialText>,
    sortBy: ({ subject }) => subject,
  },
  {
    id: 'counters',
    header: 'Since new',
    cell: ({ minutes, cycles }) => (
      <>
        <span className="duty-line">
          {minutes === null ? 'Hours by the flights logged' : `${hoursMinutes(minutes)} h`}
        </span>
        <span className="duty-line">
          {cycles === null ? 'Cycles by the flights logged' : `${exactCycles(cycles)} cycles`}
        </span>
      </>
    ),
  },
  {
    id: 'evidence',
    header: 'Evidence',
    cell: ({ evidence, method, packageId, packageNumber }) => (
      <>
        {evidence}
        {method !== null && <span className="duty-line small quiet">Method: {method}</span>}
        {packageId !== null && packageNumber !== null && (
          <span className="duty-line">
            Package{' '}
            <RouteLink href={`/packages/${packageId}`}>
              <SerialText>{packageNumber}</SerialText>
            </RouteLink>
          </span>
        )}
      </>
    ),
  },
];

interface AccomplishmentTableProps {
  readonly rows: readonly Accomplishment[];
  readonly may: boolean;
}

/** When a requirement was met, of all revisions of its code; voided ones stay, struck through. */
export function AccomplishmentTable({ rows, may }: AccomplishmentTableProps) {
  const [correcting, setCorrecting] = useState<Accomplishment | null>(null);
  const [voiding, setVoiding] = useState<Accomplishment | null>(null);
  const act: Column<Accomplishment> = {
    id: 'void',
    header: 'Correct',
    cell: (row) =>
      row.voided ? (
        ''
      ) : (
        <span className="duty-acts">
          {row.packageId === null && (
            <Button
              onClick={() => setCorrecting(row)}
              aria-label={`Correct what was met on ${row.subject} on ${calendarDate(row.on)}`}
            >
              Correct
            </Button>
          )}
          <Button
            onClick={() => setVoiding(row)}
            aria-label={`Void what was met on ${row.subject} on ${calendarDate(row.on)}`}
          >
            Void
          </Button>
        </span>
      ),
  };
  return (
    <>
      <DataTable
        caption="When it was met"
        captionHidden
        columns={may ? [...COLUMNS, act] : COLUMNS}
        rows={rows}
        rowKey={({ id }) => id}
        struck={({ voided }) => voided}
        empty={<EmptyState>Nobody recorded that it was met.</EmptyState>}
      />
      {correcting !== null && <CorrectMetForm row={correcting} onClose={() => setCorrecting(null)} />}
      {voiding !== null && (
        <VoidDialog
          id={voiding.id}
          what={`accomplishment on ${voiding.subject}`}
          consequence="It stays in sight, struck through, and counts no more from now on: what is due is computed as if it had not been met then."
          perform={voidAccomplishment}
          refresh={WHAT_IS_DUE}
          said="What is due was computed again."
          onClose={() => setVoiding(null)}
        />
      )}
    </>
  );
}
