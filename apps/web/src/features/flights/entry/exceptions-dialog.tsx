import { Button } from '../../../ui/actions/button.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import { type ExceptionPosition, ExceptionsFields } from '../exceptions-fields.js';
import type { TypedException } from './typed-flight.js';

interface ExceptionsDialogProps {
  readonly row: number;
  readonly positions: readonly ExceptionPosition[];
  readonly value: readonly TypedException[];
  readonly onChange: (next: readonly TypedException[]) => void;
  readonly onClose: () => void;
}

/** Says which positions did not run for all of one flight. */
export function ExceptionsDialog({ row, positions, value, onChange, onClose }: ExceptionsDialogProps) {
  return (
    <SheetDialog
      title={`Positions in row ${row + 1}`}
      open
      onClose={onClose}
      actions={
        <Button kind="primary" onClick={onClose}>
          Done
        </Button>
      }
    >
      <p>
        What an engine did not run does not count for it. The airframe keeps the whole flight. It is saved
        with the row.
      </p>
      {positions.length === 0 ? (
        <p>The positions of this airframe could not be read.</p>
      ) : (
        <ExceptionsFields positions={positions} value={value} onChange={onChange} />
      )}
    </SheetDialog>
  );
}
