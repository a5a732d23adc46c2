import type { Ref, TextareaHTMLAttributes } from 'react';
import { FieldFrame, type FieldFrameProps } from './field-frame.js';

export interface TextAreaFieldProps
  extends FieldFrameProps,
    Omit<TextareaHTMLAttributes<HTMLTextAreaElement>, 'className'> {
  readonly ref?: Ref<HTMLTextAreaElement> | undefined;
}

/** Several lines: remarks, defects, reasons. */
export function TextAreaField({ label, hint, error, optional, className, id, ...area }: TextAreaFieldProps) {
  return (
    <FieldFrame {...{ id, label, hint, error, optional, className }}>
      {(wiring) => <textarea rows={3} {...area} {...wiring} className="field-input" />}
    </FieldFrame>
  );
}
