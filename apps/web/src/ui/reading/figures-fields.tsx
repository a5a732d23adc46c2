import type { FieldState } from '../fields/act-form.js';
import { TextField } from '../fields/text-field.js';
import type { TypedFigures } from './figures.js';
import './figures.css';

interface FiguresFieldsProps {
  readonly legend: string;
  readonly hint?: string;
  readonly value: TypedFigures;
  readonly onChange: (value: TypedFigures) => void;
  /** The state of the fields 'minutes' and 'starts'. */
  readonly field: (name: 'minutes' | 'starts') => FieldState;
}

/** Hours and starts as the counter of an auxiliary power unit shows them. */
export function FiguresFields({ legend, hint, value, onChange, field }: FiguresFieldsProps) {
  return (
    <fieldset className="figures-fields">
      <legend>{legend}</legend>
      {hint !== undefined && <p className="quiet">{hint}</p>}
      <div className="figures-row">
        <TextField
          {...field('minutes')}
          label="Hours"
          hint="Hours and minutes, for example 7491:06"
          mono
          value={value.hours}
          onChange={({ target }) => onChange({ ...value, hours: target.value })}
        />
        <TextField
          {...field('starts')}
          label="Starts"
          hint="For example 12928"
          mono
          inputMode="numeric"
          value={value.starts}
          onChange={({ target }) => onChange({ ...value, starts: target.value })}
        />
      </div>
    </fieldset>
  );
}
