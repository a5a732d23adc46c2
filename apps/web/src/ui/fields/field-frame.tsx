import { type ReactNode, useId } from 'react';
import { StatusShape } from '../status/status-shape.js';
import './field.css';

export interface FieldFrameProps {
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  /** What to enter instead; the same words stand in the summary on top of the form. */
  readonly error?: string | null | undefined;
  readonly optional?: boolean | undefined;
  readonly className?: string | undefined;
}

export interface FieldWiring {
  readonly id: string;
  readonly 'aria-describedby': string | undefined;
  readonly 'aria-invalid': true | undefined;
}

interface FrameProps extends FieldFrameProps {
  readonly id?: string | undefined;
  readonly children: (wiring: FieldWiring) => ReactNode;
  readonly after?: ReactNode;
}

/** Label, hint and message around one control, tied to it for screen readers. */
export function FieldFrame({
  id: given,
  label,
  hint,
  error,
  optional,
  className,
  children,
  after,
}: FrameProps) {
  const made = useId();
  const id = given ?? made;
  const wrong = (error ?? '') !== '';
  const describedBy = [hint === undefined ? '' : `${id}-hint`, wrong ? `${id}-error` : '']
    .filter(Boolean)
    .join(' ');
  return (
    <div className={['field', wrong ? 'field-invalid' : '', className ?? ''].filter(Boolean).join(' ')}>
      <label className="field-label" htmlFor={id}>
        {label}
        {optional === true && <span className="field-optional"> (optional)</span>}
      </label>
      {hint !== undefined && (
        <span className="field-hint" id={`${id}-hint`}>
          {hint}
        </span>
      )}
      {wrong && (
        <span className="field-error" id={`${id}-error`}>
          <StatusShape status="over-limit" size={16} />
          <span>{error}</span>
        </span>
      )}
      {children({
        id,
        'aria-describedby': describedBy === '' ? undefined : describedBy,
        'aria-invalid': wrong ? true : undefined,
      })}
      {after}
    </div>
  );
}
