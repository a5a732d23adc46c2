import { parseHours } from '../../../format/hours.js';
import { parseMoment } from '../../../format/utc-moment.js';
import { wireMinute } from '../../../format/when.js';
import { useAct } from '../../../server/act.js';
import { useOfflineSince } from '../../../server/connection.js';
import { Button } from '../../../ui/actions/button.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { MomentField } from '../../../ui/fields/moment-field.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { ErrorSummary } from '../../../ui/messages/error-summary.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { type GroundRunAnswer, type NewRun, type RunsOf, recordRun } from '../counting-data.js';
import { COUNTED } from '../void-dialog.js';

/** A position whose engine can have run. */
export interface RunPosition {
  readonly number: number;
  readonly label: string;
  /** The engine there now. */
  readonly serial: string | null;
}

interface Typed {
  readonly positionNumber: string;
  readonly startedAt: string;
  readonly endedAt: string;
  readonly ran: string;
  readonly counted: string;
  readonly starts: string;
  readonly abortedTakeOffs: string;
  readonly purpose: string;
  readonly source: string;
}

const START: Typed = {
  positionNumber: '',
  startedAt: '',
  endedAt: '',
  ran: '',
  counted: '',
  starts: '',
  abortedTakeOffs: '',
  purpose: '',
  source: '',
};

const WHOLE = /^\d{1,4}$/;

const momentFault = (typed: string): string | null => {
  const moment = parseMoment(typed);
  return moment.ok ? null : moment.reason;
};

const minutesFault = (typed: string): string | null => {
  const time = parseHours(typed);
  return typed.trim() === '' || time.ok ? null : time.reason;
};

const empty = (typed: string, message: string): string | null => (typed.trim() === '' ? message : null);

const count = (typed: string, message: string): string | null => (WHOLE.test(typed.trim()) ? null : message);

const checkFor =
  ({ kind }: RunsOf) =>
  (typed: Typed): Faults => {
    const found: Readonly<Record<string, string | null>> = {
      positionNumber: kind === 'airframe' ? empty(typed.positionNumber, 'Choose the position') : null,
      startedAt: momentFault(typed.startedAt),
      endedAt: momentFault(typed.endedAt),
      runMinutes: minutesFault(typed.ran),
      countedMinutes: minutesFault(typed.counted),
      starts: count(typed.starts, 'Enter the starts as a whole number'),
      abortedTakeOffs: count(typed.abortedTakeOffs || '0', 'Enter a whole number, or leave it empty'),
      purpose: empty(typed.purpose, 'Enter what it was run for'),
      source: empty(typed.source, 'Enter the document the run is written in'),
    };
    return Object.fromEntries(
      Object.entries(found).flatMap(([name, message]) => (message === null ? [] : [[name, message]])),
    );
  };

const wireOf = (typed: string): string => {
  const moment = parseMoment(typed);
  return moment.ok ? wireMinute(moment.instant) : typed;
};

const minutesOf = <Name extends string>(name: Name, typed: string): Partial<Record<Name, number>> => {
  const time = parseHours(typed);
  return (typed.trim() !== '' && time.ok ? { [name]: time.minutes } : {}) as Partial<Record<Name, number>>;
};

const wordsFor =
  ({ kind, id }: RunsOf) =>
  (typed: Typed): NewRun => ({
    ...{ kind, id },
    positionNumber: kind === 'airframe' ? Number(typed.positionNumber) : null,
    startedAt: wireOf(typed.startedAt),
    endedAt: wireOf(typed.endedAt),
    ...minutesOf('runMinutes', typed.ran),
    ...minutesOf('countedMinutes', typed.counted),
    starts: Number(typed.starts.trim()),
    ...(typed.abortedTakeOffs.trim() === '' ? {} : { abortedTakeOffs: Number(typed.abortedTakeOffs.trim()) }),
    purpose: typed.purpose.trim(),
    source: typed.source.trim(),
  });

interface RunFormProps {
  readonly of: RunsOf;
  readonly positions: readonly RunPosition[];
  readonly onDone: (answer: GroundRunAnswer) => void;
}

/** A run of an engine: when, for how long, what of it counts, and where it is written. */
export function RunForm({ of, positions, onDone }: RunFormProps) {
  const offline = useOfflineSince() !== null;
  const act = useAct({ perform: recordRun, refresh: COUNTED, onDone });
  const form = useActForm({ start: START, check: checkFor(of), words: wordsFor(of), act });
  const { typed, change, field } = form;
  const text = (
    name: keyof Typed & string,
    label: string,
    {
      path = name,
      ...more
    }: { readonly path?: string; readonly hint?: string; readonly mono?: boolean } = {},
  ) => (
    <TextField
      {...field(path)}
      {...more}
      label={label}
      value={typed[name]}
      maxLength={120}
      onChange={({ target }) => change({ [name]: target.value })}
    />
  );
  return (
    <form className="stack" noValidate onSubmit={form.submit}>
      <ErrorSummary messages={form.messages} attempt={form.attempt} />
      {of.kind === 'airframe' && (
        <SelectField
          {...field('positionNumber')}
          label="Position"
          unchosen="Choose the position"
          options={positions.map(({ number, label, serial }) => ({
            value: String(number),
            label: serial === null ? `${label}, empty now` : `${label}, ${serial} now`,
          }))}
          value={typed.positionNumber}
          onChange={({ target }) => change({ positionNumber: target.value })}
        />
      )}
      <MomentField
        {...field('startedAt')}
        label="Started"
        value={typed.startedAt}
        onTyped={(startedAt) => change({ startedAt })}
      />
      <MomentField
        {...field('endedAt')}
        label="Ended"
        value={typed.endedAt}
        onTyped={(endedAt) => change({ endedAt })}
      />
      <div className="run-figures">
        {text('ran', 'Ran', { path: 'runMinutes', mono: true, hint: 'As 0:26. Empty: from start to end' })}
        {text('counted', 'Counts as time in service', {
          path: 'countedMinutes',
          mono: true,
          hint: 'By the approved data. Empty: none of it',
        })}
        {text('starts', 'Starts', { mono: true })}
        {text('abortedTakeOffs', 'Aborted take-offs', { mono: true, hint: 'Empty: none' })}
      </div>
      {text('purpose', 'What it was run for')}
      {text('source', 'Document', { hint: 'The log page, work order or test report it is written in' })}
      <div>
        <Button type="submit" kind="primary" busy={form.busy} offBecause={offline ? OFF_WHILE_OFFLINE : null}>
          {form.busy ? 'Saving' : 'Record the run'}
        </Button>
      </div>
    </form>
  );
}
