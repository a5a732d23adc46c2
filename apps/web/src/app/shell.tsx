import { Outlet, useRouter } from '@tanstack/react-router';
import { lazy, Suspense, useEffect, useRef, useState } from 'react';
import { useOfflineSince } from '../server/connection.js';
import { useSession } from '../server/session.js';
import { useSessionEnded } from '../server/session-end.js';
import { BrokenNote } from '../ui/consequences/broken-note.js';
import { Announcements } from '../ui/messages/announcements.js';
import { OfflineBar } from '../ui/messages/offline-bar.js';
import { TopBar } from './top-bar.js';
import './shell.css';
import '../ui/page/page.css';

const FinderDialog = lazy(() =>
  import('./finder-dialog.js').then((module) => ({ default: module.FinderDialog })),
);
const SessionEndedDialog = lazy(() =>
  import('./session-ended-dialog.js').then((module) => ({ default: module.SessionEndedDialog })),
);

/** Ctrl+K or Cmd+K opens the finder from anywhere. */
function useFinderKey(open: () => void): void {
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      if (
        event.key.toLowerCase() !== 'k' ||
        !(event.ctrlKey || event.metaKey) ||
        event.shiftKey ||
        event.altKey
      )
        return;
      event.preventDefault();
      open();
    };
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, [open]);
}

/** A new page takes the focus, so that a screen reader and the Tab key start at its beginning. */
function useFocusOnPage(): React.RefObject<HTMLElement | null> {
  const main = useRef<HTMLElement>(null);
  const router = useRouter();
  useEffect(
    () =>
      router.subscribe('onRendered', ({ pathChanged, fromLocation }) => {
        if (pathChanged && fromLocation !== undefined) main.current?.focus();
      }),
    [router],
  );
  return main;
}

/** The frame around every page of a signed-in person. */
export function Shell() {
  const session = useSession();
  const offlineSince = useOfflineSince();
  const ended = useSessionEnded();
  const [finding, setFinding] = useState(false);
  const main = useFocusOnPage();
  useFinderKey(() => setFinding(true));
  return (
    <>
      <a className="skip-link" href="#main">
        Skip to the page
      </a>
      <TopBar session={session} onFind={() => setFinding(true)} />
      {offlineSince !== null && <OfflineBar since={offlineSince} />}
      <main id="main" className="page" ref={main} tabIndex={-1}>
        <BrokenNote />
        <Outlet />
      </main>
      <Announcements />
      <Suspense fallback={null}>
        {finding && <FinderDialog onClose={() => setFinding(false)} />}
        {ended && <SessionEndedDialog />}
      </Suspense>
    </>
  );
}
