import { Link, useRouterState } from '@tanstack/react-router';
import { useEffect, useState } from 'react';
import { isReadOnly, type Session } from '../server/session.js';
import { Button } from '../ui/actions/button.js';
import { Mark } from '../ui/page/mark.js';
import { PersonMenu } from './person-menu.js';
import { belongsTo, PLACES } from './places.js';

interface TopBarProps {
  readonly session: Session | null;
  readonly onFind: () => void;
}

const apple = /Mac|iPhone|iPad/.test(navigator.platform);

/** Name, places, finder and person. On a narrow screen the places fold behind one button. */
export function TopBar({ session, onFind }: TopBarProps) {
  const [open, setOpen] = useState(false);
  const path = useRouterState({ select: (state) => state.location.pathname });
  // The list folds again once a place has been opened.
  // biome-ignore lint/correctness/useExhaustiveDependencies: path is the trigger
  useEffect(() => setOpen(false), [path]);
  return (
    <header className="top-bar">
      <Link to="/positions" className="top-name">
        <Mark />
        Strutbook
      </Link>
      <Button
        kind="quiet"
        className="top-fold"
        aria-expanded={open}
        aria-controls="places"
        onClick={() => setOpen(!open)}
      >
        Menu
      </Button>
      <nav id="places" className={open ? 'top-places top-places-open' : 'top-places'} aria-label="Places">
        <ul>
          {PLACES.map((place) => (
            <li key={place.path}>
              <Link
                to={place.path}
                className="top-place"
                aria-current={belongsTo(place, path) ? 'page' : undefined}
              >
                {place.name}
              </Link>
            </li>
          ))}
        </ul>
      </nav>
      <div className="top-end">
        <Button
          kind="quiet"
          className="top-find"
          onClick={onFind}
          aria-keyshortcuts={apple ? 'Meta+K' : 'Control+K'}
        >
          Find <kbd>{apple ? '⌘K' : 'Ctrl K'}</kbd>
        </Button>
        {session !== null && isReadOnly(session.person.roles) && (
          <span className="top-read-only">Read only</span>
        )}
        {session !== null && <PersonMenu session={session} />}
      </div>
    </header>
  );
}
