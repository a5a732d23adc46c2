import { useState } from 'react';
import { useAct } from '../../../server/act.js';
import { PACKAGES_KEY } from '../../../server/work.js';
import { Button } from '../../../ui/actions/button.js';
import { useActForm } from '../../../ui/fields/act-form.js';
import { TextAreaField } from '../../../ui/fields/text-area-field.js';
import { ErrorSummary } from '../../../ui/messages/error-summary.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import { FLIGHTS_KEY, type GapNote, type LoggedFlight, voidGapNote } from '../flights-data.js';
import { gapText } from './gap-words.js';

interface VoidNoteDialogProps {
  readonly flight: LoggedFlight;
  readonly note: GapNote;
  readonly offBecause: string | null;
  readonly onClose: () => void;
  readonly onDone: () => void;
}

/** Asks for the reason before a note stops explaining its gap. */
export function VoidNoteDialog({ flight, note, offBecause, onClose, onDone }: VoidNoteDialogProps) {
  const [formId] = useState(() => `void-note-${note.id}`);
  const voiding = useAct({
    perform: voidGapNote,
    refresh: [FLIGHTS_KEY, PACKAGES_KEY, ['history']],
    onDone,
  });
  const form = useActForm({
    start: { reason: '' },
    check: ({ reason }) => (reason.trim() === '' ? { reason: 'Enter why the note is voided' } : {}),
    words: ({ reason }) => ({ id: note.id, reason: reason.trim() }),
    act: voiding,
  });
  return (
    <SheetDialog
      title={`Void the note before log page ${flight.logPage}?`}
      open
      onClose={onClose}
      actions={
        <>
          <Button type="submit" form={formId} kind="primary" busy={form.busy} offBecause={offBecause}>
            Void the note
          </Button>
          <Button onClick={onClose}>Keep it</Button>
        </>
      }
    >
      <p>
        {gapText(note)}. Noted: “{note.note}”
      </p>
      <p>
        The note stays on record with your reason. While the gap is there, it blocks releases again. What was
        released meanwhile stays as it was signed.
      </p>
      <ErrorSummary messages={form.messages} attempt={form.attempt} />
      <form id={formId} noValidate onSubmit={form.submit}>
        <TextAreaField
          {...form.field('reason')}
          label="Reason"
          value={form.typed.reason}
          onChange={(event) => form.change({ reason: event.target.value })}
          autoFocus
        />
      </form>
    </SheetDialog>
  );
}
