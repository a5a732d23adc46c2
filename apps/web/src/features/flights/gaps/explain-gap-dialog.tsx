import { useState } from 'react';
import { useAct } from '../../../server/act.js';
import { PACKAGES_KEY } from '../../../server/work.js';
import { Button } from '../../../ui/actions/button.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { useActForm } from '../../../ui/fields/act-form.js';
import { TextAreaField } from '../../../ui/fields/text-area-field.js';
import { ErrorSummary } from '../../../ui/messages/error-summary.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import { explainGap, FLIGHTS_KEY, type FlightGap, type LoggedFlight } from '../flights-data.js';
import { gapText } from './gap-words.js';

interface ExplainGapDialogProps {
  readonly flight: LoggedFlight;
  readonly gap: FlightGap;
  readonly offBecause: string | null;
  readonly onClose: () => void;
  readonly onDone: () => void;
}

const HINTS = {
  pages: 'Such as: page spoilt and left blank; a new log book began',
  stations: 'Such as: station typed otherwise; moved by road; landed elsewhere without a flight of ours',
} as const;

/** Asks why no flight is missing where the log jumps. */
export function ExplainGapDialog({ flight, gap, offBecause, onClose, onDone }: ExplainGapDialogProps) {
  const [formId] = useState(() => `explain-${flight.id}-${gap.kind}`);
  const explaining = useAct({
    perform: explainGap,
    refresh: [FLIGHTS_KEY, PACKAGES_KEY, ['history']],
    onDone,
  });
  const form = useActForm({
    start: { note: '' },
    check: ({ note }) => (note.trim() === '' ? { note: 'Enter why no flight is missing' } : {}),
    words: ({ note }) => ({ flightId: flight.id, kind: gap.kind, note: note.trim() }),
    act: explaining,
  });
  return (
    <SheetDialog
      title={`Explain the gap before log page ${flight.logPage}`}
      open
      onClose={onClose}
      actions={
        <>
          <Button type="submit" form={formId} kind="primary" busy={form.busy} offBecause={offBecause}>
            Record the note
          </Button>
          <Button onClick={onClose}>Leave it open</Button>
        </>
      }
    >
      <p>
        {gapText(gap)}. A flight that is not in the log does not count for any engine or part, so a gap blocks
        every release of this aircraft.
      </p>
      <p>
        If a flight was flown in between,{' '}
        <RouteLink href={`/flights/enter?airframe=${flight.airframeId}`}>enter the missing flight</RouteLink>{' '}
        to close the gap. If none was, note why. The note is shown with each release, and stands for this gap
        alone.
      </p>
      <ErrorSummary messages={form.messages} attempt={form.attempt} />
      <form id={formId} noValidate onSubmit={form.submit}>
        <TextAreaField
          {...form.field('note')}
          label="Why no flight is missing"
          hint={HINTS[gap.kind]}
          value={form.typed.note}
          onChange={(event) => form.change({ note: event.target.value })}
          autoFocus
        />
      </form>
    </SheetDialog>
  );
}
