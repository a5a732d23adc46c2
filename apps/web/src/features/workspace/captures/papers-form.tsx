import type { PapersCapture } from '@strutbook/domain/work/capture.js';
import { useId, useState } from 'react';
import { ChoiceField } from '../../../ui/fields/choice-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import type { Step } from '../work/work-shapes.js';
import { RecordForm } from './record-form.js';

const TAGS = [
  { value: 'serviceable', label: 'Serviceable' },
  { value: 'unserviceable', label: 'Unserviceable' },
] as const;

type Tag = (typeof TAGS)[number]['value'];

const START = { plateSerial: '', documentSerial: '', documentNumber: '', tag: null as Tag | null };

/** The plate against the release document; both read, neither copied. */
export function PapersForm({ step, capture }: { readonly step: Step; readonly capture: PapersCapture }) {
  const id = useId();
  const [typed, setTyped] = useState(START);
  const [left, setLeft] = useState(false);
  const change = (next: Partial<typeof START>) => setTyped({ ...typed, ...next });
  const { tag, ...texts } = typed;
  const differ =
    left &&
    typed.plateSerial !== '' &&
    typed.documentSerial !== '' &&
    typed.plateSerial.trim() !== typed.documentSerial.trim();
  const field = (key: keyof typeof texts, label: string, hint: string) => (
    <TextField
      id={`${id}-${key}`}
      label={label}
      hint={hint}
      mono
      spellCheck={false}
      value={typed[key]}
      onBlur={() => setLeft(true)}
      onChange={({ target }) => {
        setLeft(false);
        change({ [key]: target.value });
      }}
    />
  );
  return (
    <RecordForm
      {...{ step, capture }}
      word="Record the papers"
      read={() =>
        tag === null
          ? [{ fieldId: `${id}-tag`, message: 'Choose what the tag says' }]
          : { kind: 'papers', ...texts, tag }
      }
      onRecorded={() => setTyped(START)}
    >
      {field('plateSerial', 'Serial on the data plate', 'As stamped, letter by letter')}
      {field('documentSerial', 'Serial on the release document', 'As printed there, not from the plate')}
      <p className="capture-verdict" role="status">
        {differ && (
          <StatusMark status="rejected" word="Plate and document differ. Stop, quarantine it, and ask." />
        )}
      </p>
      {field('documentNumber', 'Number of the release document', 'For example the tracking number')}
      <ChoiceField
        id={`${id}-tag`}
        legend="The tag says"
        options={TAGS}
        value={tag}
        onChoose={(next) => change({ tag: next })}
      />
    </RecordForm>
  );
}
