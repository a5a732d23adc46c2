import type { ComponentCapture } from '@strutbook/domain/work/capture.js';
import type { Typed } from '@strutbook/domain/work/entry.js';
import { reasonText } from '@strutbook/domain/work/entry-words.js';
import { judgeEntry } from '@strutbook/domain/work/judge-entry.js';
import { useId, useState } from 'react';
import { utcToday } from '../../../format/now.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { FactList } from '../../../ui/page/fact-list.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import { useDesk } from '../work/use-desk.js';
import type { Step, WorkOrder } from '../work/work-shapes.js';
import { RecordForm } from './record-form.js';
import { type Looked, orderedFacts, useRegister } from './register-facts.js';

const START = { serialNumber: '', partNumber: '', positionNumber: '' };

type TypedComponent = Extract<Typed, { kind: 'component-off' | 'component-on' }>;

const orNull = (text: string): string | null => (text.trim() === '' ? null : text);

interface VerdictProps {
  readonly capture: ComponentCapture;
  readonly typed: TypedComponent;
  readonly order: WorkOrder | null;
  readonly looked: Looked;
}

/** The plate against the order and the register, once the field is left. */
function Verdict({ capture, typed, order, looked }: VerdictProps) {
  if (!looked.asked) return null;
  const { verdict, reasons } = judgeEntry(capture, typed, {
    tool: null,
    entries: [],
    on: utcToday(),
    ordered: orderedFacts(order),
    register: looked.facts,
  });
  if (verdict === 'accepted') return <StatusMark status="signed" word="As ordered, and in the register" />;
  return (
    <div className="stack">
      <StatusMark status="rejected" word="Stop. Not as ordered, or not in the register." />
      <ul className="plain-list reasons">
        {reasons.map((reason) => (
          <li key={reason.code}>{reasonText(reason)}</li>
        ))}
      </ul>
    </div>
  );
}

/** What comes off or goes on, read from its plate. The order is shown; it is never copied into the field. */
export function ComponentForm({
  step,
  capture,
}: {
  readonly step: Step;
  readonly capture: ComponentCapture;
}) {
  const id = useId();
  const { work } = useDesk();
  const { order } = work;
  const [draft, setDraft] = useState(START);
  const [left, setLeft] = useState(false);
  const looked = useRegister(draft.serialNumber, left);
  const ordered = capture.kind === 'component-off' ? order?.outgoing : order?.incoming;
  const asksPosition = (order?.positionNumber ?? null) !== null;
  const typed: TypedComponent = {
    kind: capture.kind,
    serialNumber: draft.serialNumber,
    partNumber: orNull(draft.partNumber),
    positionNumber: asksPosition ? orNull(draft.positionNumber) : null,
  };
  const field = (key: keyof typeof START) => ({
    id: `${id}-${key}`,
    value: draft[key],
    mono: true,
    spellCheck: false,
    onBlur: () => setLeft(true),
    onChange: ({ target }: { readonly target: { readonly value: string } }) => {
      setLeft(false);
      setDraft({ ...draft, [key]: target.value });
    },
  });
  return (
    <RecordForm
      {...{ step, capture }}
      word="Record the serial"
      ids={{
        'typed.serialNumber': `${id}-serialNumber`,
        'typed.partNumber': `${id}-partNumber`,
        'typed.positionNumber': `${id}-positionNumber`,
      }}
      read={() => {
        if (draft.serialNumber.trim() === '')
          return [{ fieldId: `${id}-serialNumber`, message: 'Enter the serial from the data plate' }];
        return asksPosition && draft.positionNumber.trim() === ''
          ? [{ fieldId: `${id}-positionNumber`, message: 'Enter the position you stand at, for example 3' }]
          : typed;
      }}
      onRecorded={() => setDraft(START)}
    >
      <FactList
        className="figures"
        facts={[
          ['The order says', ordered?.serialNumber ?? 'nothing'],
          ...(asksPosition ? [['Position', order?.positionNumber] as const] : []),
        ]}
      />
      {asksPosition && (
        <TextField
          {...field('positionNumber')}
          label="Position you stand at"
          className="field-short"
          inputMode="numeric"
        />
      )}
      <TextField
        {...field('serialNumber')}
        label="Serial on the data plate"
        hint="Read it from the plate, letter by letter"
      />
      <TextField {...field('partNumber')} label="Part number on the data plate" optional />
      {looked.asked && (
        <p>
          <span className="quiet">In the register:</span>{' '}
          {looked.words ?? `no serial ${draft.serialNumber.trim()}`}
        </p>
      )}
      <div className="capture-verdict" role="status">
        <Verdict {...{ capture, typed, order, looked }} />
      </div>
    </RecordForm>
  );
}
