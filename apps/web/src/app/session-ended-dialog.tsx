import { useQueryClient } from '@tanstack/react-query';
import { SignInForm } from '../features/session/sign-in-form.js';
import { type Session, useSession } from '../server/session.js';
import { markSessionEnded } from '../server/session-end.js';
import { SheetDialog } from '../ui/overlay/sheet-dialog.js';

/** Asks to sign in again above the page, which keeps what was typed. */
export function SessionEndedDialog() {
  const queries = useQueryClient();
  const before = useSession();
  const go = (session: Session) => {
    if (before !== null && before.person.id !== session.person.id) {
      // Another person must not find the first one's half-written form.
      window.location.assign('/');
      return;
    }
    markSessionEnded(false);
    void queries.invalidateQueries();
  };
  return (
    <SheetDialog title="Your session has ended" open mustAnswer onClose={() => undefined}>
      <p>Sign in again to go on. What you typed is still on this page.</p>
      <SignInForm onSignedIn={go} signInName={before?.person.signInName ?? ''} />
    </SheetDialog>
  );
}
