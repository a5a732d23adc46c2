import { ProblemError } from '@strutbook/api-client/problem-error.js';
import { useState } from 'react';
import { hoursMinutes } from '../../format/hours.js';
import { typedMoment } from '../../format/when.js';
import { useAct } from '../../server/act.js';
import { COMPONENTS_KEY } from '../../server/components.js';
import { FLEET_KEY } from '../../server/fleet.js';
import { Button } from '../../ui/actions/button.js';
import { type Faults, useActForm } from '../../ui/fields/act-form.js';
import { TextAreaField } from '../../ui/fields/text-area-field.js';
import { TextField } from '../../ui/fields/text-field.js';
import { ErrorSummary } from '../../ui/messages/error-summary.js';
import { SheetDialog } from '../../ui/overlay/sheet-dialog.js';
import { CorrectionConflict } from './correction-conflict.js';
import {
  FIELD_WORDS,
  type FlightField,
  faultsOf,
  flightWords,
  flownMinutes,
  type TypedFlight,
  timeBeside,
} from './entry/typed-flight.js';
import { type ExceptionPosition, ExceptionsFields } from './exceptions-fields.js';
import { FlightFacts } from './flight-facts.js';
import { correctFlight, FLIGHTS_KEY, type FlightsAnswer, type LoggedFlight } from './flights-data.js';

interface CorrectDialogProps {
  readonly flight: LoggedFlight;
  /** The same flight as it was last read. */
  readonly now: LoggedFlight;
  readonly positions: readonly ExceptionPosition[];
  readonly offBecause: string | null;
  readonly onClose: () => void;
  readonly onDone: (answer: FlightsAnswer) => void;
}

interface Typed {
  readonly reason: string;
  readonly flight: TypedFlight;
}

/** A flight on record as it would be typed. */
function typedOf(flight: LoggedFlight): TypedFlight {
  const takeOff = typedMoment(flight.takeOffAt);
  const date = takeOff.slice(0, 10);
  return {
    logPage: flight.logPage,
    date,
    fromStation: flight.fromStation,
    toStation: flight.toStation,
    takeOffAt: timeBeside(date, takeOff),
    landingAt: timeBeside(date, typedMoment(flight.landingAt)),
    touchAndGoes: String(flight.touchAndGoes),
    starts: String(flight.starts),
    abortedTakeOffs: String(flight.abortedTakeOffs),
    exceptions: flight.exceptions.map(({ positionNumber, kind, minutes }) => ({
      positionNumber,
      kind,
      minutes: kind === 'shut-down' ? hoursMinutes(minutes) : '',
    })),
  };
}

function check({ reason, flight }: Typed): Faults {
  const inFlight = Object.entries(faultsOf(flight)).map(([field, message]) => [`flight.${field}`, message]);
  return {
    ...Object.fromEntries(inFlight),
    ...(reason.trim() === '' ? { reason: 'Enter why the flight is corrected' } : {}),
  };
}

const PAIRS: readonly (readonly FlightField[])[] = [
  ['logPage', 'date'],
  ['fromStation', 'toStation'],
  ['takeOffAt', 'landingAt'],
  ['touchAndGoes', 'starts'],
  ['abortedTakeOffs'],
];

/** Enters a flight again as it was. The old entry stays, struck, beside the new one. */
export function CorrectDialog({ flight, now, positions, offBecause, onClose, onDone }: CorrectDialogProps) {
  const [formId] = useState(() => `correct-${flight.id}`);
  const correcting = useAct({
    perform: correctFlight,
    refresh: [FLIGHTS_KEY, FLEET_KEY, COMPONENTS_KEY, ['history']],
    onDone,
  });
  const form = useActForm({
    start: { reason: '', flight: typedOf(flight) },
    check,
    words: (typed: Typed) => {
      const told = flightWords(typed.flight);
      if (told === null) throw new Error('A flight without readable times was let through');
      return { id: flight.id, reason: typed.reason.trim(), flight: told };
    },
    act: correcting,
  });
  const { typed, change, field } = form;
  const put = (next: Partial<TypedFlight>) => change({ flight: { ...typed.flight, ...next } });
  const flown = flownMinutes(typed.flight);
  const conflict = correcting.error instanceof ProblemError && correcting.error.status === 409 && now.voided;
  return (
    <SheetDialog
      title={`Correct the flight of log page ${flight.logPage}`}
      shape="sheet"
      open
      onClose={onClose}
      actions={
        <>
          <Button
            type="submit"
            form={formId}
            kind="primary"
            busy={form.busy}
            offBecause={conflict ? 'Off: this entry was voided meanwhile' : offBecause}
          >
            Record the correction
          </Button>
          <Button onClick={onClose}>Leave as it is</Button>
        </>
      }
    >
      {conflict ? (
        <CorrectionConflict yours={typed.flight} now={now} onDiscardMine={onClose} onDone={onDone} />
      ) : (
        <ErrorSummary messages={form.messages} attempt={form.attempt} />
      )}
      <h3>On record</h3>
      <FlightFacts flight={flight} />
      <h3>As it was</h3>
      <form id={formId} className="stack" noValidate onSubmit={form.submit}>
        {PAIRS.map((pair) => (
          <div key={pair.join()} className="two-fields">
            {pair.map((name) => (
              <TextField
                key={name}
                {...field(`flight.${name}`)}
                label={FIELD_WORDS[name]}
                mono
                value={typed.flight[name]}
                onChange={(event) => put({ [name]: event.target.value })}
              />
            ))}
          </div>
        ))}
        <p role="status">
          Time: {flown === null || flown <= 0 ? 'not readable' : `${hoursMinutes(flown)} h`}
        </p>
        <ExceptionsFields
          positions={positions}
          value={typed.flight.exceptions}
          onChange={(exceptions) => put({ exceptions })}
          error={field('flight.exceptions').error}
        />
        <TextAreaField
          {...field('reason')}
          label="Reason"
          hint="It stands beside the old entry, for everybody to read"
          value={typed.reason}
          onChange={(event) => change({ reason: event.target.value })}
        />
      </form>
    </SheetDialog>
  );
}
