import { type ButtonHTMLAttributes, type MouseEvent, type Ref, useId } from 'react';
import './button.css';

export type ButtonKind = 'primary' | 'secondary' | 'quiet';

export interface ButtonProps extends Omit<ButtonHTMLAttributes<HTMLButtonElement>, 'disabled'> {
  readonly kind?: ButtonKind;
  /** The ramp's size: 20 mm high. */
  readonly large?: boolean | undefined;
  /** Why it cannot be used now. It stays reachable by keyboard, and says so. */
  readonly offBecause?: string | null | undefined;
  /** The act is on its way; a second press does nothing. */
  readonly busy?: boolean | undefined;
  readonly ref?: Ref<HTMLButtonElement> | undefined;
}

/** An act. Works on release, so that sliding off cancels. */
export function Button({
  kind = 'secondary',
  large,
  offBecause,
  busy,
  className,
  onClick,
  children,
  type,
  ...rest
}: ButtonProps) {
  const reasonId = useId();
  const off = (offBecause ?? null) !== null;
  const press = (event: MouseEvent<HTMLButtonElement>) => {
    if (off || busy === true) event.preventDefault();
    else onClick?.(event);
  };
  const names = ['button', `button-${kind}`, large === true ? 'button-large' : '', className ?? ''];
  const button = (
    <button
      {...rest}
      type={type ?? 'button'}
      className={names.filter(Boolean).join(' ')}
      aria-disabled={off || busy === true ? true : undefined}
      aria-describedby={off ? reasonId : rest['aria-describedby']}
      aria-busy={busy === true ? true : undefined}
      onClick={press}
    >
      {children}
    </button>
  );
  if (!off) return button;
  return (
    <span className="button-with-reason">
      {button}
      <span className="button-reason" id={reasonId}>
        {offBecause}
      </span>
    </span>
  );
}
