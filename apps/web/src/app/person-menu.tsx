import { useMutation, useQueryClient } from '@tanstack/react-query';
import { Link, useRouter } from '@tanstack/react-router';
import { type FocusEvent, type KeyboardEvent, useRef, useState } from 'react';
import { roleWords } from '../server/authority.js';
import { type Session, signOut } from '../server/session.js';
import { Button } from '../ui/actions/button.js';
import { announce } from '../ui/messages/announcements.js';
import { ThemeSwitch } from './theme-switch.js';

/** The person signed in: name, role, theme, password, signing out. */
export function PersonMenu({ session }: { readonly session: Session }) {
  const [open, setOpen] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  const queries = useQueryClient();
  const router = useRouter();
  const leave = useMutation({
    mutationFn: () => signOut(queries),
    onSuccess: () => router.navigate({ to: '/sign-in' }),
    onError: () => announce('You are still signed in: the server did not answer. Try again.'),
  });
  const closeOnEscape = (event: KeyboardEvent) => {
    if (event.key !== 'Escape' || !open) return;
    setOpen(false);
    button.current?.focus();
  };
  const closeOnLeaving = (event: FocusEvent<HTMLElement>) => {
    // A press on plain text inside moves focus to nowhere; only going elsewhere closes.
    if (event.relatedTarget !== null && !event.currentTarget.contains(event.relatedTarget)) setOpen(false);
  };
  return (
    // The keys and focus of everything inside are heard here.
    <section className="person" aria-label="Signed in" onKeyDown={closeOnEscape} onBlur={closeOnLeaving}>
      <Button
        kind="quiet"
        ref={button}
        className="person-name"
        aria-expanded={open}
        aria-controls="person"
        onClick={() => setOpen(!open)}
      >
        {session.person.fullName}
      </Button>
      <div id="person" className="person-panel stack" hidden={!open}>
        <div>
          <strong>{session.person.fullName}</strong>
          <p className="quiet">{roleWords(session.person.roles)}</p>
          <p className="quiet">
            {session.operator.name} (<span className="serial">{session.operator.code}</span>)
          </p>
        </div>
        <ThemeSwitch />
        <Link to="/my-authority" onClick={() => setOpen(false)}>
          What I may sign
        </Link>
        <Link to="/pin">Number for signing (PIN)</Link>
        <Link to="/password">Change the password</Link>
        <Button busy={leave.isPending} onClick={() => leave.mutate()}>
          Sign out
        </Button>
      </div>
    </section>
  );
}
