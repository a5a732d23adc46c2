import { useId } from 'react';
import './choice-field.css';

interface ChoiceFieldProps<Value extends string> {
  /** The id of the first choice. */
  readonly id?: string;
  readonly legend: string;
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  readonly value: Value | null;
  readonly onChoose: (value: Value) => void;
}

/** One of two or three, all in sight, large enough for a glove. */
export function ChoiceField<Value extends string>({
  id,
  legend,
  options,
  value,
  onChoose,
}: ChoiceFieldProps<Value>) {
  const name = useId();
  return (
    <fieldset className="choice">
      <legend className="field-label">{legend}</legend>
      <div className="choice-options">
        {options.map((option, place) => (
          <label key={option.value} className="choice-option">
            <input
              id={place === 0 ? id : undefined}
              type="radio"
              name={name}
              checked={value === option.value}
              onChange={() => onChoose(option.value)}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
