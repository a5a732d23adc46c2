import { parseHours } from '../../format/hours.js';
import type { Faults, FieldState } from '../fields/act-form.js';
import { TextField } from '../fields/text-field.js';
import './figures.css';

/** What a counter shows, as typed. */
export interface TypedFigures {
  readonly hours: string;
  readonly starts: string;
}

export const BLANK_FIGURES: TypedFigures = { hours: '', starts: '' };

const WHOLE = /^\d{1,8}$/;

/** What is plainly wrong with figures, by the server's names of the fields. */
export function checkFigures({ hours, starts }: TypedFigures): Faults {
  const time = parseHours(hours);
  return {
    ...(time.ok ? {} : { minutes: time.reason }),
    ...(WHOLE.test(starts.trim()) ? {} : { starts: 'Enter the starts as a whole number, for example 8226' }),
  };
}

/** The figures as they are sent; only of figures that are right. */
export function figuresOf({ hours, starts }: TypedFigures): {
  readonly minutes: number;
  readonly starts: number;
} {
  const time = parseHours(hours);
  return { minutes: time.ok ? time.minutes : 0, starts: Number(starts.trim()) };
}

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
