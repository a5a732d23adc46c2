import { useAct } from '../../../server/act.js';
import { useOfflineSince } from '../../../server/connection.js';
import { type Calibration, TOOLS_KEY } from '../../../server/tools.js';
import { Button } from '../../../ui/actions/button.js';
import { useActForm } from '../../../ui/fields/act-form.js';
import { TextAreaField } from '../../../ui/fields/text-area-field.js';
import { announce } from '../../../ui/messages/announcements.js';
import { ErrorSummary } from '../../../ui/messages/error-summary.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import { missing } from '../plain-checks.js';
import { voidCalibration } from './tool-acts.js';

interface VoidCalibrationDialogProps {
  readonly calibration: Calibration;
  readonly onClose: () => void;
}

/** Asks why before a calibration is voided. */
export function VoidCalibrationDialog({ calibration, onClose }: VoidCalibrationDialogProps) {
  const { id, certificate } = calibration;
  const offline = useOfflineSince() !== null;
  const act = useAct({
    perform: voidCalibration,
    refresh: [TOOLS_KEY],
    onDone: () => {
      announce(`Calibration ${certificate} is voided.`);
      onClose();
    },
  });
  const form = useActForm({
    start: { reason: '' },
    check: (typed) => missing(typed, { reason: 'Enter why it is voided' }),
    words: ({ reason }) => ({ id, reason: reason.trim() }),
    act,
  });
  return (
    <SheetDialog title={`Void calibration ${certificate}?`} open onClose={onClose}>
      <form className="stack" noValidate onSubmit={form.submit}>
        <ErrorSummary messages={form.messages} attempt={form.attempt} />
        <p>
          It stays in sight, struck through, and counts no more from now on. What was accepted with the tool
          before stays as it was judged.
        </p>
        <TextAreaField
          {...form.field('reason')}
          label="Reason"
          value={form.typed.reason}
          onChange={({ target }) => form.change({ reason: target.value })}
          autoFocus
        />
        <div className="row">
          <Button
            type="submit"
            kind="primary"
            busy={form.busy}
            offBecause={offline ? OFF_WHILE_OFFLINE : null}
          >
            Void
          </Button>
          <Button onClick={onClose}>Leave as it is</Button>
        </div>
      </form>
    </SheetDialog>
  );
}
