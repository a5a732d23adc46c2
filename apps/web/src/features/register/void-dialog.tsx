import type { QueryKey } from '@tanstack/react-query';
import { type ActHeaders, useAct } from '../../server/act.js';
import { useOfflineSince } from '../../server/connection.js';
import { Button } from '../../ui/actions/button.js';
import { useActForm } from '../../ui/fields/act-form.js';
import { TextAreaField } from '../../ui/fields/text-area-field.js';
import { announce } from '../../ui/messages/announcements.js';
import { ErrorSummary } from '../../ui/messages/error-summary.js';
import { OFF_WHILE_OFFLINE } from '../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../ui/overlay/sheet-dialog.js';
import { missing } from './plain-checks.js';

/** Names a fact to void, and why. */
export interface Voiding {
  readonly id: string;
  readonly reason: string;
}

interface VoidDialogProps<Done> {
  readonly id: string;
  /** 'requirement R-1': what is voided. */
  readonly what: string;
  readonly consequence: string;
  readonly perform: (voiding: Voiding, headers: ActHeaders) => Promise<Done>;
  /** What is read again after it. */
  readonly refresh: readonly QueryKey[];
  /** What is announced besides that it is voided. */
  readonly said?: string;
  /** Told what the server answered. */
  readonly onDone?: ((done: Done) => void) | undefined;
  readonly onClose: () => void;
}

/** Asks why before a fact of the register is voided. */
export function VoidDialog<Done>({
  id,
  what,
  consequence,
  perform,
  refresh,
  said,
  onDone,
  onClose,
}: VoidDialogProps<Done>) {
  const offline = useOfflineSince() !== null;
  const act = useAct({
    perform,
    refresh,
    onDone: (done) => {
      onDone?.(done);
      announce([`The ${what} is voided.`, ...(said === undefined ? [] : [said])].join(' '));
      onClose();
    },
  });
  const form = useActForm({
    start: { reason: '' },
    check: (typed) => missing(typed, { reason: 'Enter why it is voided' }),
    words: ({ reason }): Voiding => ({ id, reason: reason.trim() }),
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
