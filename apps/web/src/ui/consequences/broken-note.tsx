import { useEffect, useRef, useSyncExternalStore } from 'react';
import { Button } from '../actions/button.js';
import { type Broken, isNothing } from './broken.js';
import { Consequences } from './consequences.js';

interface Told {
  readonly what: string;
  readonly broken: Broken;
}

let told: Told | null = null;
const listeners = new Set<() => void>();

function replace(next: Told | null): void {
  told = next;
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Keeps in sight what an act newly broke, on whatever page its form leads to. What broke nothing is not told. */
export function tellBroken(what: string, broken: Broken): void {
  if (!isNothing(broken)) replace({ what, broken });
}

function Note({ what, broken }: Told) {
  const box = useRef<HTMLElement>(null);
  useEffect(() => box.current?.focus(), []);
  return (
    <section className="panel broken-note" ref={box} tabIndex={-1} aria-label={what}>
      <h2>{what}</h2>
      <Consequences broken={broken} />
      <Button onClick={() => replace(null)}>Close this message</Button>
    </section>
  );
}

/** What the last act newly broke, until it is closed. One in the page. */
export function BrokenNote() {
  const shown = useSyncExternalStore(subscribe, () => told);
  return shown === null ? null : <Note key={shown.what} {...shown} />;
}
