import type { CheckCapture, CountCapture, TextCapture } from '@strutbook/domain/work/capture.js';
import { useId, useState } from 'react';
import { CheckField } from '../../../ui/fields/check-field.js';
import { TextAreaField } from '../../../ui/fields/text-area-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import { countedSoFar, soFarWords } from '../accounts/counted-so-far.js';
import { useDesk } from '../work/use-desk.js';
import type { Step } from '../work/work-shapes.js';
import { RecordForm } from './record-form.js';

interface FormProps<C> {
  readonly step: Step;
  readonly capture: C;
}

/** Words: a part number of software, a remark. */
export function TextForm({ step, capture }: FormProps<TextCapture>) {
  const id = useId();
  const [text, setText] = useState('');
  return (
    <RecordForm
      {...{ step, capture }}
      word="Record"
      ids={{ 'typed.text': id }}
      read={() =>
        text.trim() === ''
          ? [{ fieldId: id, message: `Enter: ${capture.label.toLowerCase()}` }]
          : { kind: 'text', text }
      }
      onRecorded={() => setText('')}
    >
      <TextAreaField
        id={id}
        label={capture.label}
        optional={!capture.required}
        value={text}
        onChange={({ target }) => setText(target.value)}
        rows={2}
      />
    </RecordForm>
  );
}

/** A condition seen. Not seen is recorded too: as rejected. */
export function CheckForm({ step, capture }: FormProps<CheckCapture>) {
  const [seen, setSeen] = useState(false);
  return (
    <RecordForm
      {...{ step, capture }}
      word={seen ? 'Record as seen' : 'Record as not so'}
      read={() => ({ kind: 'check', seen })}
      onRecorded={() => setSeen(false)}
    >
      <CheckField label={capture.label} checked={seen} onChange={({ target }) => setSeen(target.checked)} />
    </RecordForm>
  );
}

/** How many more would have come back than went out; 0 where that can't be told, or is not so. */
function tooMany(direction: CountCapture['direction'], out: number, back: number, typed: string): number {
  if (direction === 'out' || !/^\s*\d+\s*$/.test(typed)) return 0;
  return Math.max(0, back + Number(typed) - out);
}

/** How many went out or came back, with what was counted so far. */
export function CountForm({ step, capture }: FormProps<CountCapture>) {
  const id = useId();
  const { work } = useDesk();
  const [number, setNumber] = useState('');
  const out = countedSoFar(work.steps, capture.what, 'out');
  const back = countedSoFar(work.steps, capture.what, 'in');
  const more = tooMany(capture.direction, out.number, back.number, number);
  const direction = capture.direction === 'out' ? 'went out' : 'came back';
  return (
    <RecordForm
      {...{ step, capture }}
      word="Record the count"
      ids={{ 'typed.number': id }}
      read={() =>
        number.trim() === ''
          ? [{ fieldId: id, message: `Enter how many ${capture.what} ${direction}, for example 6` }]
          : { kind: 'count', number }
      }
      onRecorded={() => setNumber('')}
    >
      {out.toCome === out.asked && back.toCome === back.asked ? (
        <p>Nothing of it is counted in this package so far.</p>
      ) : (
        <p>
          In this package so far: out <strong>{soFarWords(out)}</strong>; in{' '}
          <strong>{soFarWords(back)}</strong>.
        </p>
      )}
      <TextField
        id={id}
        label={`How many ${capture.what} ${direction}`}
        className="field-short"
        inputMode="numeric"
        mono
        value={number}
        onChange={({ target }) => setNumber(target.value)}
      />
      {more > 0 && (
        <p role="status">
          <StatusMark
            status="rejected"
            word={`${more} more back than went out. Count again; look at what was counted out.`}
          />
        </p>
      )}
    </RecordForm>
  );
}
