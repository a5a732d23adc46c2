import { Button } from '../../../ui/actions/button.js';
import { useActForm } from '../../../ui/fields/act-form.js';
import { TextAreaField } from '../../../ui/fields/text-area-field.js';
import { announce } from '../../../ui/messages/announcements.js';
import { ErrorSummary } from '../../../ui/messages/error-summary.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import { holdsSignature } from '../captures/capture-entries.js';
import { useStepAct } from '../work/use-desk.js';
import { voidEntry } from '../work/work-queries.js';
import type { Entry, Step } from '../work/work-shapes.js';

interface VoidDialogProps {
  readonly step: Step;
  readonly entry: Entry;
  readonly words: string;
  readonly onClose: () => void;
}

/** Strikes an entry out with a reason. It stays in sight. */
export function VoidDialog({ step, entry, words, onClose }: VoidDialogProps) {
  const act = useStepAct(voidEntry, () => {
    announce('Struck out. The entry stays in sight.');
    onClose();
  });
  const form = useActForm({
    start: { reason: '' },
    check: ({ reason }) => (reason.trim() === '' ? { reason: 'Enter why it is struck out' } : {}),
    words: ({ reason }) => ({ entryId: entry.id, reason }),
    act,
  });
  return (
    <SheetDialog title="Strike this entry out?" open onClose={onClose}>
      <form className="stack" noValidate onSubmit={form.submit}>
        <ErrorSummary messages={form.messages} attempt={form.attempt} />
        <p>{words}</p>
        <p>The entry stays in sight, struck through, with your reason.</p>
        {holdsSignature(step) && (
          <p>
            <strong>This step is signed.</strong> The signature stays in sight, but no longer counts.
          </p>
        )}
        <TextAreaField
          {...form.field('reason')}
          label="Why"
          autoFocus
          value={form.typed.reason}
          onChange={({ target }) => form.change({ reason: target.value })}
        />
        <div className="row">
          <Button type="submit" busy={form.busy}>
            Strike out
          </Button>
          <Button kind="quiet" onClick={onClose}>
            Keep it
          </Button>
        </div>
      </form>
    </SheetDialog>
  );
}
