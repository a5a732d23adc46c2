import { useAct } from '../../../server/act.js';
import { Button } from '../../../ui/actions/button.js';
import { useActForm } from '../../../ui/fields/act-form.js';
import { SecretField } from '../../../ui/fields/secret-field.js';
import { TextAreaField } from '../../../ui/fields/text-area-field.js';
import { announce } from '../../../ui/messages/announcements.js';
import { ErrorSummary } from '../../../ui/messages/error-summary.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import { WORK_KEY } from '../work/work-queries.js';
import type { Signature } from '../work/work-shapes.js';
import { keepMethod, useFirstMethod } from './last-method.js';
import { undoSignature } from './signing-queries.js';

interface UndoDialogProps {
  readonly signature: Signature;
  readonly onClose: () => void;
}

/** Undoes a signature, with a reason and one's own secret. It stays in sight. */
export function UndoDialog({ signature, onClose }: UndoDialogProps) {
  const method = useFirstMethod();
  const act = useAct({
    perform: undoSignature,
    refresh: [WORK_KEY],
    onDone: () => {
      announce('The signature is undone. It stays in sight with your reason.');
      onClose();
    },
  });
  const form = useActForm({
    start: { reason: '', method, secret: '' },
    check: ({ reason, secret }) => ({
      ...(reason.trim() === '' ? { reason: 'Enter why the signature is undone' } : {}),
      ...(secret === '' ? { secret: 'Enter your password or PIN' } : {}),
    }),
    words: (typed) => ({ signatureId: signature.id, ...typed }),
    act,
  });
  const secret = form.field('secret');
  return (
    <SheetDialog title="Undo this signature?" open onClose={onClose}>
      <form className="stack" noValidate onSubmit={form.submit}>
        <ErrorSummary messages={form.messages} attempt={form.attempt} />
        <p>
          The signature stays in sight, struck through, with your reason. The step must be signed again; steps
          after it that are not signed yet wait for it. Those that are signed stay so: undo them too where the
          work has to be done again.
        </p>
        <TextAreaField
          {...form.field('reason')}
          label="Why"
          autoFocus
          value={form.typed.reason}
          onChange={({ target }) => form.change({ reason: target.value })}
        />
        <SecretField
          id={secret.id}
          error={secret.error}
          whose="Your"
          value={{ method: form.typed.method, secret: form.typed.secret }}
          onChange={(next) => {
            if (next.method !== form.typed.method) keepMethod(next.method);
            form.change(next);
          }}
        />
        <div className="row">
          <Button type="submit" busy={form.busy}>
            Undo the signature
          </Button>
          <Button kind="quiet" onClick={onClose}>
            Keep it
          </Button>
        </div>
      </form>
    </SheetDialog>
  );
}
