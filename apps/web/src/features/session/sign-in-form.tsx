import { ProblemError } from '@strutbook/api-client/problem-error.js';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useId } from 'react';
import { useForm } from 'react-hook-form';
import { type Session, type SignInWords, signIn } from '../../server/session.js';
import { Button } from '../../ui/actions/button.js';
import { TextField } from '../../ui/fields/text-field.js';
import { ErrorSummary, type FieldMessage } from '../../ui/messages/error-summary.js';
import { fieldMessage, summaryOf } from '../../ui/messages/field-messages.js';

interface SignInFormProps {
  readonly onSignedIn: (session: Session) => void;
  /** Known already when a session has ended. */
  readonly signInName?: string;
}

interface Words {
  signInName: string;
  password: string;
  operatorCode: string;
}

const needsOperator = (error: unknown): boolean =>
  error instanceof ProblemError && error.fields.some((entry) => entry.field === 'operatorCode');

const sent = ({ signInName, password, operatorCode }: Words): SignInWords => ({
  signInName: signInName.trim(),
  password,
  ...(operatorCode.trim() === '' ? {} : { operatorCode: operatorCode.trim() }),
});

/** Name and password; the operator's code only once the server asks for it. */
export function SignInForm({ onSignedIn, signInName = '' }: SignInFormProps) {
  const queries = useQueryClient();
  const id = useId();
  const form = useForm<Words>({
    defaultValues: { signInName, password: '', operatorCode: '' },
    shouldFocusError: false,
  });
  const entering = useMutation({
    mutationFn: (words: Words) => signIn(queries, sent(words)),
    onSuccess: onSignedIn,
  });
  const asked = needsOperator(entering.error) || form.getValues('operatorCode') !== '';
  const missing = form.formState.errors;
  const ids = { signInName: `${id}-name`, password: `${id}-password`, operatorCode: `${id}-operator` };
  const said = (field: keyof Words): string | null =>
    missing[field]?.message ?? fieldMessage(entering.error, field);
  const ours: FieldMessage[] = (['signInName', 'password'] as const).flatMap((field) => {
    const message = missing[field]?.message;
    return message === undefined ? [] : [{ fieldId: ids[field], message }];
  });
  return (
    <form
      className="stack"
      noValidate
      onSubmit={(event) =>
        void form.handleSubmit(
          (words) => entering.mutate(words),
          () => entering.reset(),
        )(event)
      }
    >
      <ErrorSummary
        messages={ours.length > 0 ? ours : summaryOf(entering.error, ids)}
        attempt={form.formState.submitCount + entering.failureCount}
      />
      <TextField
        {...form.register('signInName', {
          validate: (typed) => typed.trim() !== '' || 'Enter your sign-in name',
        })}
        id={ids.signInName}
        label="Sign-in name"
        autoComplete="username"
        autoCapitalize="none"
        spellCheck={false}
        error={said('signInName')}
      />
      <TextField
        {...form.register('password', { required: 'Enter your password' })}
        id={ids.password}
        label="Password"
        type="password"
        autoComplete="current-password"
        error={said('password')}
      />
      {asked && (
        <TextField
          {...form.register('operatorCode')}
          id={ids.operatorCode}
          label="Operator code"
          mono
          autoComplete="organization"
          spellCheck={false}
          error={said('operatorCode')}
        />
      )}
      <div>
        <Button type="submit" kind="primary" busy={entering.isPending}>
          {entering.isPending ? 'Signing in' : 'Sign in'}
        </Button>
      </div>
    </form>
  );
}
