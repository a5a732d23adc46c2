import type { LeakCheckCapture } from '@strutbook/domain/work/capture.js';
import { useId, useState } from 'react';
import { ChoiceField } from '../../../ui/fields/choice-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import type { Step } from '../work/work-shapes.js';
import { RecordForm } from './record-form.js';

const FOUND = [
  { value: 'none', label: 'No leak' },
  { value: 'leak', label: 'A leak' },
] as const;

type Found = (typeof FOUND)[number]['value'];

const START = { minutes: '', power: '', found: null as Found | null };

/** A look for leaks: how long, at which power, what was found. */
export function LeakForm({ step, capture }: { readonly step: Step; readonly capture: LeakCheckCapture }) {
  const id = useId();
  const [typed, setTyped] = useState(START);
  const { minutes, power, found } = typed;
  const change = (next: Partial<typeof START>) => setTyped({ ...typed, ...next });
  return (
    <RecordForm
      {...{ step, capture }}
      word="Record the leak check"
      ids={{ 'typed.minutes': `${id}-minutes`, 'typed.power': `${id}-power` }}
      read={() => {
        if (minutes.trim() === '')
          return [{ fieldId: `${id}-minutes`, message: 'Enter how many minutes you looked, for example 5' }];
        if (power.trim() === '')
          return [{ fieldId: `${id}-power`, message: 'Enter the power it ran at, for example idle' }];
        return found === null
          ? [{ fieldId: `${id}-found`, message: 'Choose what was found' }]
          : { kind: 'leak-check', minutes, power, found };
      }}
      onRecorded={() => setTyped(START)}
    >
      <p>
        Asked for: at least <strong>{capture.minMinutes} minutes</strong> at <strong>{capture.power}</strong>.
      </p>
      <div className="field-row">
        <TextField
          id={`${id}-minutes`}
          label="Minutes looked"
          className="field-short"
          inputMode="numeric"
          mono
          value={minutes}
          onChange={({ target }) => change({ minutes: target.value })}
        />
        <TextField
          id={`${id}-power`}
          label="Power"
          className="field-short"
          value={power}
          onChange={({ target }) => change({ power: target.value })}
        />
      </div>
      <ChoiceField
        id={`${id}-found`}
        legend="Found"
        options={FOUND}
        value={found}
        onChoose={(next) => change({ found: next })}
      />
    </RecordForm>
  );
}
