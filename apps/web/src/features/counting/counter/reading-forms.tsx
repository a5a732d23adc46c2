import { parseMoment } from '../../../format/utc-moment.js';
import { wireMinute } from '../../../format/when.js';
import { useAct } from '../../../server/act.js';
import { useOfflineSince } from '../../../server/connection.js';
import { Button } from '../../../ui/actions/button.js';
import { type ActForm, type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { MomentField } from '../../../ui/fields/moment-field.js';
import { TextAreaField } from '../../../ui/fields/text-area-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { ErrorSummary } from '../../../ui/messages/error-summary.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { BLANK_FIGURES, checkFigures, figuresOf, type TypedFigures } from '../../../ui/reading/figures.js';
import { FiguresFields } from '../../../ui/reading/figures-fields.js';
import {
  type CounterAnswer,
  type CounterReading,
  correctReading,
  readCounter,
  replaceCounter,
} from '../counting-data.js';
import { COUNTED } from '../void-dialog.js';

interface FormProps {
  readonly componentId: string;
  readonly onDone: (answer: CounterAnswer) => void;
}

const under = (path: string, faults: Faults): Faults =>
  Object.fromEntries(Object.entries(faults).map(([name, message]) => [`${path}.${name}`, message]));

function momentFaults(at: string): Faults {
  const moment = parseMoment(at);
  return moment.ok ? {} : { at: moment.reason };
}

const wireOf = (at: string): string => {
  const moment = parseMoment(at);
  return moment.ok ? wireMinute(moment.instant) : at;
};

const sourceFaults = (source: string): Faults =>
  source.trim() === '' ? { source: 'Enter the document the reading is written in' } : {};

function Submit({ busy, word }: { readonly busy: boolean; readonly word: string }) {
  const offline = useOfflineSince() !== null;
  return (
    <div>
      <Button type="submit" kind="primary" busy={busy} offBecause={offline ? OFF_WHILE_OFFLINE : null}>
        {busy ? 'Saving' : word}
      </Button>
    </div>
  );
}

function WhenRead<Typed extends { readonly at: string; readonly source: string }>({
  form,
}: {
  readonly form: ActForm<Typed>;
}) {
  return (
    <>
      <MomentField
        {...form.field('at')}
        label="Read at"
        value={form.typed.at}
        onTyped={(at) => form.change({ at } as Partial<Typed>)}
      />
      <TextField
        {...form.field('source')}
        label="Document"
        hint="The log page or work order it is written in"
        value={form.typed.source}
        maxLength={120}
        onChange={({ target }) => form.change({ source: target.value } as Partial<Typed>)}
      />
    </>
  );
}

/** What the counter shows between installation and removal. */
export function ReadingForm({ componentId, onDone }: FormProps) {
  const act = useAct({ perform: readCounter, refresh: COUNTED, onDone });
  const form = useActForm({
    start: { figures: BLANK_FIGURES, at: '', source: '' },
    check: ({ figures, at, source }) => ({
      ...checkFigures(figures),
      ...momentFaults(at),
      ...sourceFaults(source),
    }),
    words: ({ figures, at, source }) => ({
      ...{ id: componentId, ...figuresOf(figures) },
      ...{ at: wireOf(at), source: source.trim() },
    }),
    act,
  });
  return (
    <form className="stack" noValidate onSubmit={form.submit}>
      <ErrorSummary messages={form.messages} attempt={form.attempt} />
      <FiguresFields
        legend="The counter shows"
        value={form.typed.figures}
        onChange={(figures) => form.change({ figures })}
        field={(name) => form.field(name)}
      />
      <WhenRead form={form} />
      <Submit busy={form.busy} word="Record the reading" />
    </form>
  );
}

/** One counter taken out, another put in: where the one ended and the other begins. */
export function ReplacementForm({ componentId, onDone }: FormProps) {
  const act = useAct({ perform: replaceCounter, refresh: COUNTED, onDone });
  const form = useActForm({
    start: { last: BLANK_FIGURES, first: BLANK_FIGURES, at: '', source: '' },
    check: ({ last, first, at, source }) => ({
      ...under('last', checkFigures(last)),
      ...under('first', checkFigures(first)),
      ...momentFaults(at),
      ...sourceFaults(source),
    }),
    words: ({ last, first, at, source }) => ({
      ...{ id: componentId, last: figuresOf(last), first: figuresOf(first) },
      ...{ at: wireOf(at), source: source.trim() },
    }),
    act,
  });
  const figures = (side: 'last' | 'first', legend: string) => (
    <FiguresFields
      legend={legend}
      value={form.typed[side]}
      onChange={(value: TypedFigures) => form.change({ [side]: value })}
      field={(name) => form.field(`${side}.${name}`)}
    />
  );
  return (
    <form className="stack" noValidate onSubmit={form.submit}>
      <ErrorSummary messages={form.messages} attempt={form.attempt} />
      {figures('last', 'The old counter’s last reading')}
      {figures('first', 'The new counter’s first reading')}
      <WhenRead form={form} />
      <Submit busy={form.busy} word="Record the replacement" />
    </form>
  );
}

/** A reading as it was, in place of a wrong one. */
export function CorrectionForm({
  reading,
  onDone,
}: {
  readonly reading: CounterReading;
  readonly onDone: FormProps['onDone'];
}) {
  const act = useAct({ perform: correctReading, refresh: COUNTED, onDone });
  const form = useActForm({
    start: { figures: BLANK_FIGURES, reason: '' },
    check: ({ figures, reason }) => ({
      ...checkFigures(figures),
      ...(reason.trim() === '' ? { reason: 'Enter why the reading was wrong' } : {}),
    }),
    words: ({ figures, reason }) => ({ id: reading.id, ...figuresOf(figures), reason: reason.trim() }),
    act,
  });
  return (
    <form className="stack" noValidate onSubmit={form.submit}>
      <ErrorSummary messages={form.messages} attempt={form.attempt} />
      <FiguresFields
        legend="The counter showed"
        value={form.typed.figures}
        onChange={(figures) => form.change({ figures })}
        field={(name) => form.field(name)}
      />
      <TextAreaField
        {...form.field('reason')}
        label="Reason"
        hint="The wrong reading stays on record, struck through, with it"
        value={form.typed.reason}
        maxLength={200}
        onChange={({ target }) => form.change({ reason: target.value })}
      />
      <Submit busy={form.busy} word="Correct the reading" />
    </form>
  );
}
