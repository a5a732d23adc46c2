import { useSyncExternalStore } from 'react';
import { Button } from '../actions/button.js';
import './messages.css';

interface Announcement {
  readonly id: number;
  readonly words: string;
}

const SHOWN_FOR_MS = 8000;

let current: readonly Announcement[] = [];
let last = 0;
const listeners = new Set<() => void>();

function replace(next: readonly Announcement[]): void {
  current = next;
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

function dismiss(id: number): void {
  replace(current.filter((entry) => entry.id !== id));
}

/** Says what was done, aloud and on screen for 8 s or until the next. Never the only place where it can be read. */
export function announce(words: string): void {
  last += 1;
  const id = last;
  replace([{ id, words }]);
  setTimeout(() => dismiss(id), SHOWN_FOR_MS);
}

/** The live region. One in the page, there from the start. */
export function Announcements() {
  const shown = useSyncExternalStore(subscribe, () => current);
  return (
    <div className="announcements" role="status" aria-live="polite">
      {shown.map(({ id, words }) => (
        <div key={id} className="announcement">
          <span>{words}</span>
          <Button kind="quiet" onClick={() => dismiss(id)}>
            Close
          </Button>
        </div>
      ))}
    </div>
  );
}
