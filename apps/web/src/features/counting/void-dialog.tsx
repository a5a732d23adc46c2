import { type ActHeaders, useAct } from '../../server/act.js';
import { COMPONENTS_KEY } from '../../server/components.js';
import { useOfflineSince } from '../../server/connection.js';
import { FLEET_KEY } from '../../server/fleet.js';
import { Button } from '../../ui/actions/button.js';
import { useActForm } from '../../ui/fields/act-form.js';
import { TextAreaField } from '../../ui/fields/text-area-field.js';
import { ErrorSummary } from '../../ui/messages/error-summary.js';
import { OFF_WHILE_OFFLINE } from '../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../ui/overlay/sheet-dialog.js';
import { COUNTING_KEY } from './counting-data.js';

/** What is read again after anything that counts has changed. */
export const COUNTED = [COUNTING_KEY, COMPONENTS_KEY, FLEET_KEY, ['due'], ['history']] as const;

interface VoidDialogProps<Answer> {
  readonly id: string;
  /** 'reading', 'run': what is voided. */
  readonly what: string;
  readonly consequence: string;
  readonly perform: (
    words: { readonly id: string; readonly reason: string },
    headers: ActHeaders,
  ) => Promise<Answer>;
  readonly onClose: () => void;
  readonly onDone: (answer: Answer) => void;
}

/** Asks why before something that counts is voided. */
export function VoidDialog<Answer>({
  id,
  what,
  consequence,
  perform,
  onClose,
  onDone,
}: VoidDialogProps<Answer>) {
  const offline = useOfflineSince() !== null;
  const act = useAct({ perform, refresh: COUNTED, onDone });
  const form = useActForm({
    start: { reason: '' },
    check: ({ reason }) => (reason.trim() === '' ? { reason: `Enter why the ${what} is voided` } : {}),
    words: ({ reason }) => ({ id, reason: reason.trim() }),
    act,
  });
  return (
    <SheetDialog title={`Void the ${what}?`} open onClose={onClose}>
      <form className="stack" noValidate onSubmit={form.submit}>
        <ErrorSummary messages={form.messages} attempt={form.attempt} />
        <p>{consequence}</p>
        <TextAreaField
          {...form.field('reason')}
          label="Reason"
          value={form.typed.reason}
          maxLength={200}
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
            Void the {what}
          </Button>
          <Button onClick={onClose}>Leave as it is</Button>
        </div>
      </form>
    </SheetDialog>
  );
}
