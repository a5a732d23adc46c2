import { type InputHTMLAttributes, type ReactNode, type Ref, useId } from 'react';
import './field.css';

export interface CheckFieldProps extends Omit<InputHTMLAttributes<HTMLInputElement>, 'type' | 'className'> {
  readonly label: ReactNode;
  readonly error?: string | null | undefined;
  readonly ref?: Ref<HTMLInputElement> | undefined;
}

/** One statement to agree to, or leave. */
export function CheckField({ label, error, id: given, ...input }: CheckFieldProps) {
  const made = useId();
  const id = given ?? made;
  const wrong = (error ?? '') !== '';
  return (
    <div className={wrong ? 'field field-invalid' : 'field'}>
      {wrong && (
        <span className="field-error" id={`${id}-error`}>
          {error}
        </span>
      )}
      <div className="field-check">
        <input
          {...input}
          id={id}
          type="checkbox"
          aria-invalid={wrong ? true : undefined}
          aria-describedby={wrong ? `${id}-error` : undefined}
        />
        <label htmlFor={id}>{label}</label>
      </div>
    </div>
  );
}
