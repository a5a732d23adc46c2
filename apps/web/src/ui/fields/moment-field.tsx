import { useState } from 'react';
import { utcMoment } from '../../format/utc-date.js';
import { parseMoment } from '../../format/utc-moment.js';
import { FieldFrame, type FieldFrameProps } from './field-frame.js';

export interface MomentFieldProps extends FieldFrameProps {
  readonly id?: string | undefined;
  readonly name?: string | undefined;
  /** What was typed, kept as typed. Read it with parseMoment(). */
  readonly value: string;
  readonly onTyped: (typed: string) => void;
  readonly disabled?: boolean | undefined;
}

/** Date and time in UTC, 24 hours, typed in one order. On leaving, it is read back in words. */
export function MomentField({
  id,
  name,
  label,
  hint,
  error,
  optional,
  className,
  value,
  onTyped,
  disabled,
}: MomentFieldProps) {
  const [left, setLeft] = useState(value !== '');
  const parsed = parseMoment(value);
  return (
    <FieldFrame
      {...{ id, label, error, optional }}
      hint={hint ?? 'UTC, 24 hours: year-month-day hour:minute, for example 2026-11-11 14:05'}
      className={['field-short', className ?? ''].filter(Boolean).join(' ')}
      after={
        // Its line is there from the start: a button below must not move away under the press that leaves the field.
        <span className="field-hint">
          {left && parsed.ok ? `Read as ${utcMoment(parsed.instant)}` : '\u00a0'}
        </span>
      }
    >
      {(wiring) => (
        <input
          {...wiring}
          type="text"
          name={name}
          className="field-input field-mono"
          autoComplete="off"
          spellCheck={false}
          value={value}
          disabled={disabled}
          onChange={(event) => onTyped(event.target.value)}
          onFocus={() => setLeft(false)}
          onBlur={() => setLeft(true)}
        />
      )}
    </FieldFrame>
  );
}
