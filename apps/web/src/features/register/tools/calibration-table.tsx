import { useState } from 'react';
import { calendarDate } from '../../../format/utc-date.js';
import { type Calibration, TOOLS_KEY } from '../../../server/tools.js';
import { Button } from '../../../ui/actions/button.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { Voided } from '../../../ui/status/voided.js';
import type { Column } from '../../../ui/table/column.js';
import { DataTable } from '../../../ui/table/data-table.js';
import { VoidDialog } from '../void-dialog.js';
import { voidCalibration } from './tool-acts.js';

const FACTS: readonly Column<Calibration>[] = [
  {
    id: 'certificate',
    header: 'Certificate',
    cell: ({ certificate, voided, voidReason }) => (
      <>
        <span className="serial">{certificate}</span>
        {voided && <Voided reason={voidReason} />}
      </>
    ),
    namesRow: true,
  },
  {
    id: 'made',
    header: 'Calibrated on',
    cell: ({ calibratedOn }) => calendarDate(calibratedOn),
    sortBy: ({ calibratedOn }) => calibratedOn,
  },
  {
    id: 'due',
    header: 'Good through',
    cell: ({ dueOn }) => calendarDate(dueOn),
    sortBy: ({ dueOn }) => dueOn,
  },
  { id: 'counts', header: 'Counts', cell: ({ governs }) => (governs ? <strong>Counts today</strong> : '') },
];

interface CalibrationTableProps {
  readonly calibrations: readonly Calibration[];
  readonly may: boolean;
}

/** All calibrations of a tool, the newest first. */
export function CalibrationTable({ calibrations, may }: CalibrationTableProps) {
  const [voiding, setVoiding] = useState<Calibration | null>(null);
  const acts: readonly Column<Calibration>[] = may
    ? [
        {
          id: 'act',
          header: 'Act',
          cell: (calibration) =>
            calibration.voided ? null : (
              <Button
                kind="quiet"
                aria-label={`Void calibration ${calibration.certificate}`}
                onClick={() => setVoiding(calibration)}
              >
                Void
              </Button>
            ),
        },
      ]
    : [];
  return (
    <>
      <DataTable
        caption="Calibrations"
        captionHidden
        columns={[...FACTS, ...acts]}
        rows={calibrations}
        rowKey={({ id }) => id}
        struck={({ voided }) => voided}
        empty={
          <EmptyState>
            No calibration is recorded{may ? '. Record one above from its certificate.' : '.'}
          </EmptyState>
        }
      />
      {voiding !== null && (
        <VoidDialog
          id={voiding.id}
          what={`calibration ${voiding.certificate}`}
          consequence="It stays in sight, struck through, and counts no more from now on. What was measured with the tool in open packages holds up their release, unless another calibration covers that day or it is measured again."
          perform={voidCalibration}
          refresh={[TOOLS_KEY]}
          onClose={() => setVoiding(null)}
        />
      )}
    </>
  );
}
