import { TextField } from './text-field.js';
import './secret-field.css';

/** How a person proves again who they are. */
export interface Secret {
  readonly method: 'password' | 'pin';
  readonly secret: string;
}

export const NO_SECRET: Secret = { method: 'password', secret: '' };

interface SecretFieldProps {
  readonly id: string;
  /** Whose: 'Your', 'Their'. */
  readonly whose: 'Your' | 'Their';
  readonly value: Secret;
  readonly onChange: (next: Secret) => void;
  readonly hint?: string | undefined;
  readonly error?: string | null | undefined;
}

const METHODS = [
  { method: 'password', word: 'Password' },
  { method: 'pin', word: 'PIN' },
] as const;

/** The words of what is asked: 'Your password, again', 'Their PIN'. */
export const secretLabel = (whose: 'Your' | 'Their', method: Secret['method']): string =>
  `${whose} ${method === 'pin' ? 'PIN' : 'password'}${whose === 'Your' ? ', again' : ''}`;

/** Password or PIN, for a signature. Pasting and password managers work. */
export function SecretField({ id, whose, value, onChange, hint, error }: SecretFieldProps) {
  const { method, secret } = value;
  return (
    <div className="secret-field">
      <fieldset className="secret-methods">
        <legend className="visually-hidden">{whose === 'Your' ? 'Sign' : 'They sign'} with</legend>
        {METHODS.map((entry) => (
          <label key={entry.method}>
            <input
              type="radio"
              name={`${id}-method`}
              checked={method === entry.method}
              onChange={() => onChange({ method: entry.method, secret: '' })}
            />
            {entry.word}
          </label>
        ))}
      </fieldset>
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
    </div>
  );
}
