import type { Ref, SelectHTMLAttributes } from 'react';
import { FieldFrame, type FieldFrameProps } from './field-frame.js';

export interface SelectOption {
  readonly value: string;
  readonly label: string;
  readonly disabled?: boolean;
}

export interface SelectFieldProps
  extends FieldFrameProps,
    Omit<SelectHTMLAttributes<HTMLSelectElement>, 'className' | 'multiple'> {
  readonly options: readonly SelectOption[];
  /** Shown while nothing is chosen; choosing it counts as nothing. */
  readonly unchosen?: string | undefined;
  readonly ref?: Ref<HTMLSelectElement> | undefined;
}

/** One of a short list. The browser's own control: it fits the tablet's and the screen reader's ways. */
export function SelectField({
  label,
  hint,
  error,
  optional,
  className,
  id,
  options,
  unchosen,
  ...select
}: SelectFieldProps) {
  return (
    <FieldFrame {...{ id, label, hint, error, optional, className }}>
      {(wiring) => (
        <span className="field-select">
          <select {...select} {...wiring} className="field-input">
            {unchosen !== undefined && <option value="">{unchosen}</option>}
            {options.map((option) => (
              <option key={option.value} value={option.value} disabled={option.disabled}>
                {option.label}
              </option>
            ))}
          </select>
          <svg width="12" height="8" viewBox="0 0 12 8" aria-hidden="true">
            <path d="M1 1l5 5 5-5" fill="none" stroke="currentColor" strokeWidth="2" />
          </svg>
        </span>
      )}
    </FieldFrame>
  );
}
