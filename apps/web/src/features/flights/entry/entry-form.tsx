import { type FormEvent, type KeyboardEvent, useState } from 'react';
import { counted } from '../../../format/counts.js';
import { utcMoment } from '../../../format/utc-date.js';
import { useOfflineSince } from '../../../server/connection.js';
import type { Airframe } from '../../../server/fleet.js';
import { useSession } from '../../../server/session.js';
import { Button } from '../../../ui/actions/button.js';
import { announce } from '../../../ui/messages/announcements.js';
import { ErrorSummary } from '../../../ui/messages/error-summary.js';
import type { ExceptionPosition } from '../exceptions-fields.js';
import type { FlightsAnswer } from '../flights-data.js';
import { SavedFlights, savedWords } from '../saved-flights.js';
import { keepDraft, readDraft } from './drafts.js';
import { ExceptionsDialog } from './exceptions-dialog.js';
import { FlightGrid } from './flight-grid.js';
import { type FlightField, isBlank } from './typed-flight.js';
import { useFlightEntry } from './use-flight-entry.js';
import { MOST_FLIGHTS, useRows } from './use-rows.js';

interface EntryFormProps {
  readonly airframe: Airframe;
  readonly positions: readonly ExceptionPosition[];
}

function DraftNote({ at, onDiscard }: { readonly at: number; readonly onDiscard: () => void }) {
  return (
    <div className="row">
      <p>Typed on this device and not saved, last on {utcMoment(at)}.</p>
      <Button onClick={onDiscard}>Discard what is typed</Button>
    </div>
  );
}

/** The grid of flights of one airframe, its draft on this device, and saving it. */
export function EntryForm({ airframe, positions }: EntryFormProps) {
  const personId = useSession()?.person.id ?? '';
  const offline = useOfflineSince() !== null;
  const [draft, setDraft] = useState(() => readDraft(personId, airframe.id));
  const [saved, setSaved] = useState<FlightsAnswer | null>(null);
  const [refusedPaste, setRefusedPaste] = useState<string | null>(null);
  const [excepting, setExcepting] = useState<number | null>(null);
  const rows = useRows(draft?.rows ?? [], (flights) => keepDraft(personId, airframe.id, flights));
  const entry = useFlightEntry(airframe.id, rows.rows, (answer) => {
    rows.begin([]);
    setDraft(null);
    setSaved(answer);
    announce(`${savedWords(answer)}.`);
  });
  const count = rows.rows.filter(({ flight }) => !isBlank(flight)).length;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setSaved(null);
    if (!offline) entry.save();
  };
  const saveByKey = (event: KeyboardEvent<HTMLFormElement>) => {
    if (event.key.toLowerCase() === 's' && (event.ctrlKey || event.metaKey)) submit(event);
  };
  const paste = (text: string, row: number, field: FlightField) => {
    const why = rows.paste(text, row, field, airframe.registration);
    setRefusedPaste(why);
    if (why === null) entry.forget();
  };
  const discard = () => {
    rows.begin([]);
    setDraft(null);
    entry.forget();
  };
  const held = excepting === null ? undefined : rows.rows[excepting];
  return (
    // Ctrl+S in any cell is heard here.
    <form className="stack" noValidate onSubmit={submit} onKeyDown={saveByKey}>
      {saved !== null && (
        <SavedFlights what={savedWords(saved)} answer={saved} onClose={() => setSaved(null)} />
      )}
      {draft !== null && <DraftNote at={draft.at} onDiscard={discard} />}
      <ErrorSummary messages={entry.messages} attempt={entry.attempt} />
      {refusedPaste !== null && (
        <p role="alert" className="field-error">
          Not pasted. {refusedPaste}
        </p>
      )}
      <FlightGrid
        caption={`Flights to save for ${airframe.registration}. All times are UTC.`}
        rows={rows}
        faults={entry.faults}
        onPaste={paste}
        onExceptions={setExcepting}
      />
      <div className="row entry-acts">
        <Button
          onClick={() => rows.add()}
          offBecause={rows.rows.length >= MOST_FLIGHTS ? `${MOST_FLIGHTS} flights are saved at a time` : null}
        >
          Add a row
        </Button>
        <Button
          type="submit"
          kind="primary"
          busy={entry.busy}
          offBecause={
            offline
              ? 'Off while there is no connection. What you type is kept on this device, not sent.'
              : null
          }
        >
          {entry.busy ? 'Saving' : count === 0 ? 'Save flights' : `Save ${counted(count, 'flight')}`}
        </Button>
      </div>
      {held !== undefined && excepting !== null && (
        <ExceptionsDialog
          row={excepting}
          positions={positions}
          value={held.flight.exceptions}
          onChange={(exceptions) => rows.put(excepting, { exceptions })}
          onClose={() => setExcepting(null)}
        />
      )}
    </form>
  );
}
