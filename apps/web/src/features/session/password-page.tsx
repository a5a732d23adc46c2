import { useMutation, useQueryClient } from '@tanstack/react-query';
import { Link, useRouter } from '@tanstack/react-router';
import { useId } from 'react';
import { useForm } from 'react-hook-form';
import { changePassword, useSession } from '../../server/session.js';
import { Button } from '../../ui/actions/button.js';
import { TextField } from '../../ui/fields/text-field.js';
import { announce } from '../../ui/messages/announcements.js';
import { ErrorSummary, type FieldMessage } from '../../ui/messages/error-summary.js';
import { fieldMessage, summaryOf } from '../../ui/messages/field-messages.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import './session.css';

interface Words {
  currentPassword: string;
  newPassword: string;
}

function PasswordForm({ onChanged }: { readonly onChanged: () => void }) {
  const queries = useQueryClient();
  const id = useId();
  const form = useForm<Words>({
    defaultValues: { currentPassword: '', newPassword: '' },
    shouldFocusError: false,
  });
  const changing = useMutation({
    mutationFn: (words: Words) => changePassword(queries, words),
    onSuccess: onChanged,
  });
  const ids = { currentPassword: `${id}-current`, newPassword: `${id}-new` };
  const missing = form.formState.errors;
  const said = (field: keyof Words): string | null =>
    missing[field]?.message ?? fieldMessage(changing.error, field);
  const ours: FieldMessage[] = (['currentPassword', 'newPassword'] as const).flatMap((field) => {
    const message = missing[field]?.message;
    return message === undefined ? [] : [{ fieldId: ids[field], message }];
  });
  return (
    <form
      className="stack"
      noValidate
      onSubmit={(event) =>
        void form.handleSubmit(
          (words) => changing.mutate(words),
          () => changing.reset(),
        )(event)
      }
    >
      <ErrorSummary
        messages={ours.length > 0 ? ours : summaryOf(changing.error, ids)}
        attempt={form.formState.submitCount + changing.failureCount}
      />
      <TextField
        {...form.register('currentPassword', { required: 'Enter the password you have now' })}
        id={ids.currentPassword}
        label="Password now"
        type="password"
        autoComplete="current-password"
        error={said('currentPassword')}
      />
      <TextField
        {...form.register('newPassword', { required: 'Enter a new password' })}
        id={ids.newPassword}
        label="New password"
        hint="Long is better than complicated. Pasting from a password manager works."
        type="password"
        autoComplete="new-password"
        error={said('newPassword')}
      />
      <div>
        <Button type="submit" kind="primary" busy={changing.isPending}>
          Change the password
        </Button>
      </div>
    </form>
  );
}

/** Changing the password: by choice, or because the first one was given by somebody else. */
export function PasswordPage() {
  const router = useRouter();
  const forced = useSession()?.mustChangePassword === true;
  const changed = () => {
    announce('The password was changed.');
    router.history.push('/positions');
  };
  return (
    <main className="door">
      <div className="door-sheet sheet sheet-heavy stack">
        <PageHeading title="Change the password" />
        {forced ? (
          <p>Your password was set by somebody else. Choose your own before going on.</p>
        ) : (
          <Link to="/positions">Back to Positions</Link>
        )}
        <PasswordForm onChanged={changed} />
      </div>
    </main>
  );
}
