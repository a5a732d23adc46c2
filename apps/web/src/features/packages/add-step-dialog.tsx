import { useId, useState } from 'react';
import { useAct } from '../../server/act.js';
import { useOfflineSince } from '../../server/connection.js';
import type { WorkPackage } from '../../server/work.js';
import { Button } from '../../ui/actions/button.js';
import { announce } from '../../ui/messages/announcements.js';
import { ErrorSummary } from '../../ui/messages/error-summary.js';
import { fieldMessage, summaryOf } from '../../ui/messages/field-messages.js';
import { OFF_WHILE_OFFLINE } from '../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../ui/overlay/sheet-dialog.js';
import { EMPTY_STEP, NO_TITLE, ownStep } from './own-step.js';
import { OwnStepFields } from './own-step-fields.js';
import { addStep } from './package-acts.js';

interface AddStepDialogProps {
  readonly work: WorkPackage;
  readonly onClose: () => void;
}

/** Adds a step that the procedure does not have. It must be signed like every other. */
export function AddStepDialog({ work, onClose }: AddStepDialogProps) {
  const id = useId();
  const ids = { title: `${id}-title`, text: `${id}-text` };
  const offline = useOfflineSince() !== null;
  const [step, setStep] = useState(EMPTY_STEP);
  const [missing, setMissing] = useState<string | null>(null);
  const [attempt, setAttempt] = useState(0);
  const act = useAct({
    perform: addStep,
    refresh: [[]],
    onDone: () => {
      announce(`The step is added to ${work.number}.`);
      onClose();
    },
  });
  const send = () => {
    const nothing = step.title.trim() === '' ? NO_TITLE : null;
    setMissing(nothing);
    setAttempt(attempt + 1);
    if (nothing === null) act.mutate({ packageId: work.id, step: ownStep(step) });
    else act.reset();
  };
  const messages = missing === null ? summaryOf(act.error, ids) : [{ fieldId: ids.title, message: missing }];
  return (
    <SheetDialog
      title={`Add a step to ${work.number}`}
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
            Add the step
          </Button>
          <Button onClick={onClose}>Cancel</Button>
        </>
      }
    >
      <ErrorSummary messages={messages} attempt={attempt + (act.isError ? 1 : 0)} />
      <p>It comes after the steps of the procedure and must be signed before the release.</p>
      <OwnStepFields
        ids={ids}
        step={step}
        set={(change) => setStep((before) => ({ ...before, ...change }))}
        said={(field) => (field === 'title' ? missing : null) ?? fieldMessage(act.error, field)}
        autoFocus
      />
    </SheetDialog>
  );
}
