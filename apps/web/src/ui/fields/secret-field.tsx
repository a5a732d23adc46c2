import { ChoiceField } from './choice-field.js';
import { TextField } from './text-field.js';

/** How a person proves again who they are. */
export interface Secret {
  readonly method: 'password' | 'pin';
  readonly secret: string;
}

export const NO_SECRET: Secret = { method: 'password', secret: '' };

interface SecretFieldProps {
  readonly id: string;
  /** Whose: that of the person signed in, or of another one at this device. */
  readonly whose: 'Your' | 'Their';
  readonly value: Secret;
  readonly onChange: (next: Secret) => void;
  readonly hint?: string | undefined;
  readonly error?: string | null | undefined;
}

const METHODS = [
  { value: 'pin', label: 'PIN' },
  { value: 'password', label: 'Password' },
] as const;

/** The words of what is asked: 'Your password, again', 'Their PIN'. */
const secretLabel = (whose: 'Your' | 'Their', method: Secret['method']): string =>
  `${whose} ${method === 'pin' ? 'PIN' : 'password'}${whose === 'Your' ? ', again' : ''}`;

/** Password or PIN, typed anew for each signature. Pasting and password managers work. */
export function SecretField({ id, whose, value, onChange, hint, error }: SecretFieldProps) {
  const { method, secret } = value;
  return (
    <>
      <ChoiceField
        legend="Signed with"
        options={METHODS}
        value={method}
        onChoose={(next) => onChange({ method: next, secret: '' })}
      />
      <TextField
        // Another method is another field: a password manager must not fill a PIN.
        key={method}
        id={id}
        label={secretLabel(whose, method)}
        hint={hint}
        type="password"
        className={method === 'pin' ? 'field-short' : undefined}
        inputMode={method === 'pin' ? 'numeric' : undefined}
        autoComplete={whose === 'Your' && method === 'password' ? 'current-password' : 'off'}
        value={secret}
        onChange={({ target }) => onChange({ method, secret: target.value })}
        error={error}
      />
    </>
  );
}
