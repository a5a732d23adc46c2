import { useId, useState } from 'react';
import { useAct } from '../../server/act.js';
import { useOfflineSince } from '../../server/connection.js';
import type { WorkPackage } from '../../server/work.js';
import { Button } from '../../ui/actions/button.js';
import { TextAreaField } from '../../ui/fields/text-area-field.js';
import { announce } from '../../ui/messages/announcements.js';
import { ErrorSummary } from '../../ui/messages/error-summary.js';
import { fieldMessage, summaryOf } from '../../ui/messages/field-messages.js';
import { OFF_WHILE_OFFLINE } from '../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../ui/overlay/sheet-dialog.js';
import { withdrawPackage } from './package-acts.js';

interface WithdrawDialogProps {
  readonly work: WorkPackage;
  readonly onClose: () => void;
}

/** Asks before a package is withdrawn; why is asked for, and stays on record. */
export function WithdrawDialog({ work, onClose }: WithdrawDialogProps) {
  const id = `${useId()}-reason`;
  const offline = useOfflineSince() !== null;
  const [reason, setReason] = useState('');
  const [missing, setMissing] = useState<string | null>(null);
  const [attempt, setAttempt] = useState(0);
  const act = useAct({
    perform: withdrawPackage,
    refresh: [[]],
    onDone: () => {
      announce(`${work.number} is withdrawn. What was recorded in it stays on record.`);
      onClose();
    },
  });
  const send = () => {
    const nothing = reason.trim() === '' ? 'Enter why the package is withdrawn' : null;
    setMissing(nothing);
    setAttempt(attempt + 1);
    if (nothing === null) act.mutate({ packageId: work.id, reason: reason.trim() });
    else act.reset();
  };
  const messages =
    missing === null ? summaryOf(act.error, { reason: id }) : [{ fieldId: id, message: missing }];
  return (
    <SheetDialog
      title={`Withdraw ${work.number}?`}
      open
      onClose={onClose}
      actions={
        <>
          <Button
            kind="primary"
            busy={act.isPending}
            offBecause={offline ? OFF_WHILE_OFFLINE : null}
            onClick={send}
          >
            Withdraw the package
          </Button>
          <Button onClick={onClose}>Leave it open</Button>
        </>
      }
    >
      <ErrorSummary messages={messages} attempt={attempt + (act.isError ? 1 : 0)} />
      <p>
        Nobody can work in it afterwards, and it is never released. It is refused once a component was taken
        off or put on in it: then the work is finished and released.
      </p>
      <TextAreaField
        id={id}
        label="Why"
        maxLength={200}
        autoFocus
        value={reason}
        onChange={({ target }) => setReason(target.value)}
        error={missing ?? fieldMessage(act.error, 'reason')}
      />
    </SheetDialog>
  );
}
