import { useMutation, useQueryClient } from '@tanstack/react-query';
import { Link, useRouter } from '@tanstack/react-router';
import { choosePin, type PinWords, useSession } from '../../server/session.js';
import { Button } from '../../ui/actions/button.js';
import { type Faults, useActForm } from '../../ui/fields/act-form.js';
import { TextField } from '../../ui/fields/text-field.js';
import { announce } from '../../ui/messages/announcements.js';
import { ErrorSummary } from '../../ui/messages/error-summary.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import './session.css';

interface Typed extends PinWords {
  readonly again: string;
}

const START: Typed = { password: '', pin: '', again: '' };

const check = ({ password, pin, again }: Typed): Faults => ({
  ...(password === '' ? { password: 'Enter your password' } : {}),
  ...(/^\d{6,12}$/.test(pin) ? {} : { pin: 'Enter six to twelve digits' }),
  ...(pin === again ? {} : { again: 'The two are not the same. Enter the PIN again' }),
});

function PinForm({ onChosen }: { readonly onChosen: () => void }) {
  const queries = useQueryClient();
  const choosing = useMutation({
    networkMode: 'always',
    mutationFn: (words: PinWords) => choosePin(queries, words),
    onSuccess: onChosen,
  });
  const form = useActForm({
    start: START,
    check,
    words: ({ password, pin }) => ({ password, pin }),
    act: choosing,
  });
  const { typed, change, field } = form;
  return (
    <form className="stack" noValidate onSubmit={form.submit}>
      <ErrorSummary messages={form.messages} attempt={form.attempt} />
      <TextField
        {...field('password')}
        label="Your password"
        type="password"
        autoComplete="current-password"
        value={typed.password}
        onChange={({ target }) => change({ password: target.value })}
      />
      <TextField
        {...field('pin')}
        label="PIN"
        hint="Six to twelve digits, not one repeated and not in a row"
        type="password"
        inputMode="numeric"
        autoComplete="off"
        value={typed.pin}
        onChange={({ target }) => change({ pin: target.value })}
      />
      <TextField
        {...field('again')}
        label="PIN again"
        type="password"
        inputMode="numeric"
        autoComplete="off"
        value={typed.again}
        onChange={({ target }) => change({ again: target.value })}
      />
      <div>
        <Button type="submit" kind="primary" busy={form.busy}>
          Choose this PIN
        </Button>
      </div>
    </form>
  );
}

/** The number for signing: shorter than the password, for gloves and tablets. It does not sign in. */
export function PinPage() {
  const router = useRouter();
  const hasPin = useSession()?.hasPin === true;
  const chosen = () => {
    announce('The PIN was chosen. It signs from now on.');
    router.history.push('/my-authority');
  };
  return (
    <main className="door">
      <div className="door-sheet sheet sheet-heavy stack">
        <PageHeading title={hasPin ? 'Choose another PIN' : 'Choose a PIN'} />
        <p>
          The number you sign with at a tablet, also at somebody else’s. It does not sign you in, and nobody
          else may know it.
        </p>
        <PinForm onChosen={chosen} />
        <Link to="/my-authority">Back to What I may sign</Link>
      </div>
    </main>
  );
}
