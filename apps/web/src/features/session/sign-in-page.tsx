import { useRouter, useSearch } from '@tanstack/react-router';
import { AircraftOutline } from '../../ui/aircraft/aircraft-outline.js';
import { Mark } from '../../ui/page/mark.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import '../../ui/aircraft/position-diagram.css';
import { SignInForm } from './sign-in-form.js';
import './session.css';

/** The door. */
export function SignInPage() {
  const router = useRouter();
  const { to } = useSearch({ from: '/sign-in' });
  return (
    <main className="door">
      <svg className="door-drawing" viewBox="40 0 920 452" aria-hidden="true">
        <AircraftOutline />
      </svg>
      <div className="door-sheet sheet sheet-heavy stack">
        <p className="door-name">
          <Mark size={28} />
          Strutbook
        </p>
        <PageHeading title="Sign in" />
        <SignInForm onSignedIn={() => router.history.push(to ?? '/positions')} />
      </div>
    </main>
  );
}
