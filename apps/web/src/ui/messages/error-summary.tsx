import { type MouseEvent, useEffect, useRef } from 'react';
import './messages.css';

export interface FieldMessage {
  /** The id of the control; null when the message belongs to no single field. */
  readonly fieldId: string | null;
  /** The same words that stand beside the field. */
  readonly message: string;
}

interface ErrorSummaryProps {
  readonly messages: readonly FieldMessage[];
  readonly title?: string;
  /** Changes with each attempt to send, so that a second failure moves focus here again. */
  readonly attempt?: number;
}

function focusField(event: MouseEvent, fieldId: string): void {
  const control = document.getElementById(fieldId);
  if (control === null) return;
  event.preventDefault();
  control.scrollIntoView({ block: 'center' });
  control.focus({ preventScroll: true });
}

/** All that is wrong with a form, on top of it, with links to the fields. Takes the focus. */
export function ErrorSummary({ messages, title = 'There is a problem', attempt = 0 }: ErrorSummaryProps) {
  const box = useRef<HTMLDivElement>(null);
  const any = messages.length > 0;
  // Each attempt counts as new, also when its messages are the same as before.
  // biome-ignore lint/correctness/useExhaustiveDependencies: attempt is the trigger
  useEffect(() => {
    if (any) box.current?.focus();
  }, [any, attempt]);
  if (!any) return null;
  return (
    <section className="error-summary" ref={box} tabIndex={-1} aria-label={title}>
      <h2>{title}</h2>
      <ul>
        {messages.map(({ fieldId, message }) => (
          <li key={`${fieldId ?? ''} ${message}`}>
            {fieldId === null ? (
              message
            ) : (
              <a href={`#${fieldId}`} onClick={(event) => focusField(event, fieldId)}>
                {message}
              </a>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
