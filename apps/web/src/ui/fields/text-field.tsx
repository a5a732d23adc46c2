import type { InputHTMLAttributes, Ref } from 'react';
import { FieldFrame, type FieldFrameProps } from './field-frame.js';

export interface TextFieldProps
  extends FieldFrameProps,
    Omit<InputHTMLAttributes<HTMLInputElement>, 'className' | 'type'> {
  readonly type?: 'text' | 'password' | 'search' | 'email';
  /** Serials, part numbers and figures: letters that cannot be confused. */
  readonly mono?: boolean | undefined;
  readonly ref?: Ref<HTMLInputElement> | undefined;
}

/** One line of text, kept exactly as typed. Numbers are text too: see ReadingField for readings. */
export function TextField({
  label,
  hint,
  error,
  optional,
  className,
  mono,
  id,
  type = 'text',
  ...input
}: TextFieldProps) {
  return (
    <FieldFrame {...{ id, label, hint, error, optional, className }}>
      {(wiring) => (
        <input
          autoComplete="off"
          {...input}
          {...wiring}
          type={type}
          className={mono === true ? 'field-input field-mono' : 'field-input'}
        />
      )}
    </FieldFrame>
  );
}
