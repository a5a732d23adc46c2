import { ProblemError } from '@strutbook/api-client/problem-error.js';
import { useState } from 'react';
import { useAct } from '../../server/act.js';
import { COMPONENTS_KEY } from '../../server/components.js';
import { FLEET_KEY } from '../../server/fleet.js';
import { Button } from '../../ui/actions/button.js';
import { useActForm } from '../../ui/fields/act-form.js';
import { TextAreaField } from '../../ui/fields/text-area-field.js';
import { ConflictPanel } from '../../ui/messages/conflict-panel.js';
import { ErrorSummary } from '../../ui/messages/error-summary.js';
import { SheetDialog } from '../../ui/overlay/sheet-dialog.js';
import { FlightFacts } from './flight-facts.js';
import { FLIGHTS_KEY, type FlightsAnswer, type LoggedFlight, voidFlight } from './flights-data.js';

interface VoidDialogProps {
  readonly flight: LoggedFlight;
  /** The same flight as it was last read. */
  readonly now: LoggedFlight;
  readonly offBecause: string | null;
  readonly onClose: () => void;
  readonly onDone: (answer: FlightsAnswer) => void;
}

/** Asks for the reason before a flight stops counting. */
export function VoidDialog({ flight, now, offBecause, onClose, onDone }: VoidDialogProps) {
  const [formId] = useState(() => `void-${flight.id}`);
  const voiding = useAct({
    perform: voidFlight,
    refresh: [FLIGHTS_KEY, FLEET_KEY, COMPONENTS_KEY, ['history']],
    onDone,
  });
  const form = useActForm({
    start: { reason: '' },
    check: ({ reason }) => (reason.trim() === '' ? { reason: 'Enter why the flight is voided' } : {}),
    words: ({ reason }) => ({ id: flight.id, reason: reason.trim() }),
    act: voiding,
  });
  const conflict = voiding.error instanceof ProblemError && voiding.error.status === 409 && now.voided;
  return (
    <SheetDialog
      title={`Void the flight of log page ${flight.logPage}?`}
      open
      onClose={onClose}
      actions={
        <>
          <Button
            type="submit"
            form={formId}
            kind="primary"
            busy={form.busy}
            offBecause={conflict ? 'Off: it was voided meanwhile' : offBecause}
          >
            Void the flight
          </Button>
          <Button onClick={onClose}>Keep it</Button>
        </>
      }
    >
      <p>
        The line stays on record, struck through, with your reason. Its hours and events stop counting for the
        airframe and for every engine that flew it.
      </p>
      <FlightFacts flight={flight} />
      {conflict ? (
        <ConflictPanel
          recordedBy="Read again just now"
          lines={[
            { term: 'Flight', yours: 'Void', onRecord: 'Voided already', differs: false },
            {
              term: 'Reason',
              yours: form.typed.reason,
              onRecord: now.voidReason ?? 'None',
              differs: true,
            },
          ]}
          onDiscardMine={onClose}
        />
      ) : (
        <ErrorSummary messages={form.messages} attempt={form.attempt} />
      )}
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
