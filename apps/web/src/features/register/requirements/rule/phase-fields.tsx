import { useState } from 'react';
import type { ActForm } from '../../../../ui/fields/act-form.js';
import { CheckField } from '../../../../ui/fields/check-field.js';
import { SelectField } from '../../../../ui/fields/select-field.js';
import { TextField } from '../../../../ui/fields/text-field.js';
import { EVENTS, howMany, NO_INTERVAL, type TypedInterval } from './typed-interval.js';
import type { TypedRequirement } from './typed-requirement.js';

interface IntervalFieldsProps {
  readonly form: ActForm<TypedRequirement>;
  /** 'threshold.notToExceed' */
  readonly path: string;
  readonly interval: TypedInterval;
  readonly put: (next: Partial<TypedInterval>) => void;
}

const FIELDS = [
  { dimension: 'minutes', label: 'Hours', hint: 'For example 500:00' },
  { dimension: 'cycles', label: 'Cycles', hint: undefined },
  { dimension: 'days', label: 'Days', hint: undefined },
  { dimension: 'months', label: 'Months', hint: undefined },
] as const;

/** Any of hours, cycles, days and months. */
function IntervalFields({ form, path, interval, put }: IntervalFieldsProps) {
  return (
    <div className="sub-row-fields">
      {FIELDS.map(({ dimension, label, hint }) => (
        <TextField
          key={dimension}
          {...form.field(`${path}.${dimension}`)}
          label={label}
          hint={hint}
          mono
          inputMode={dimension === 'minutes' ? 'text' : 'numeric'}
          value={interval[dimension]}
          onChange={({ target }) => put({ [dimension]: target.value })}
        />
      ))}
    </div>
  );
}

interface PhaseFieldsProps {
  readonly form: ActForm<TypedRequirement>;
  readonly name: 'threshold' | 'repeat';
  readonly legend: string;
  readonly hint: string;
}

/** When it is due: counters and calendar, an event, and the outer bound of all. */
export function PhaseFields({ form, name, legend, hint }: PhaseFieldsProps) {
  const phase = form.typed[name];
  const put = (next: Partial<typeof phase>) => form.change({ [name]: { ...phase, ...next } });
  const [bounded, setBounded] = useState(howMany(phase.notToExceed) > 0);
  return (
    <fieldset className="stack sub-rows">
      <legend>{legend}</legend>
      <p className="field-hint">{hint}</p>
      <IntervalFields form={form} path={name} interval={phase} put={put} />
      <SelectField
        {...form.field(`${name}.event`)}
        label="Or at an event"
        unchosen="No event"
        options={EVENTS}
        value={phase.event}
        onChange={({ target }) => put({ event: target.value })}
      />
      <CheckField
        label="With an outer bound that is never to be exceeded"
        checked={bounded}
        onChange={({ target }) => {
          setBounded(target.checked);
          if (!target.checked) put({ notToExceed: NO_INTERVAL });
        }}
      />
      {bounded && (
        <fieldset className="sub-row">
          <legend>Not beyond</legend>
          <IntervalFields
            form={form}
            path={`${name}.notToExceed`}
            interval={phase.notToExceed}
            put={(next) => put({ notToExceed: { ...phase.notToExceed, ...next } })}
          />
        </fieldset>
      )}
    </fieldset>
  );
}
