import { TextField } from '../../../ui/fields/text-field.js';
import { ChoiceField } from '../captures/choice-field.js';
import type { Method } from './signing-queries.js';

const METHODS = [
  { value: 'pin', label: 'PIN' },
  { value: 'password', label: 'Password' },
] as const;

interface SecretFieldsProps {
  readonly id: string;
  readonly method: Method;
  readonly secret: string;
  readonly error: string | null;
  /** Whose: 'Your'. */
  readonly whose: 'Your' | 'Their';
  readonly onMethod: (method: Method) => void;
  readonly onSecret: (secret: string) => void;
}

/** Password or PIN, typed anew for each signature. Both can be pasted or filled in. */
export function SecretFields({ id, method, secret, error, whose, onMethod, onSecret }: SecretFieldsProps) {
  return (
    <>
      <ChoiceField legend="Signed with" options={METHODS} value={method} onChoose={onMethod} />
      <TextField
        id={id}
        label={`${whose} ${method === 'pin' ? 'PIN' : 'password'}, again`}
        type="password"
        inputMode={method === 'pin' ? 'numeric' : 'text'}
        autoComplete={whose === 'Your' ? 'current-password' : 'off'}
        value={secret}
        error={error}
        onChange={({ target }) => onSecret(target.value)}
      />
    </>
  );
}
