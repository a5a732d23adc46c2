import type { ActForm } from '../../../ui/fields/act-form.js';
import { TextField } from '../../../ui/fields/text-field.js';
import type { TypedInterval, TypedRequirement } from './typed-requirement.js';

interface IntervalFieldsProps {
  readonly form: ActForm<TypedRequirement>;
  readonly name: 'threshold' | 'repeat';
  readonly legend: string;
  readonly hint: string;
}

const FIELDS = [
  { dimension: 'minutes', label: 'Hours', hint: 'For example 500:00' },
  { dimension: 'cycles', label: 'Cycles', hint: undefined },
  { dimension: 'days', label: 'Days', hint: undefined },
  { dimension: 'months', label: 'Months', hint: undefined },
] as const satisfies readonly {
  readonly dimension: keyof TypedInterval;
  label: string;
  hint: string | undefined;
}[];

/** What is granted, in any of hours, cycles, days and months. */
export function IntervalFields({ form, name, legend, hint }: IntervalFieldsProps) {
  const interval = form.typed[name];
  return (
    <fieldset className="stack sub-rows">
      <legend>{legend}</legend>
      <p className="field-hint">{hint}</p>
      <div className="sub-row-fields">
        {FIELDS.map(({ dimension, label, hint: example }) => (
          <TextField
            key={dimension}
            {...form.field(`${name}.${dimension}`)}
            label={label}
            hint={example}
            mono
            inputMode={dimension === 'minutes' ? 'text' : 'numeric'}
            value={interval[dimension]}
            onChange={({ target }) => form.change({ [name]: { ...interval, [dimension]: target.value } })}
          />
        ))}
      </div>
    </fieldset>
  );
}
