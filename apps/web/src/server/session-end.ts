import { useSyncExternalStore } from 'react';

let ended = false;
const listeners = new Set<() => void>();

/** Says that the server no longer knows this session; the page stays as it is, with what was typed. */
export function markSessionEnded(next: boolean): void {
  if (next === ended) return;
  ended = next;
  for (const listener of listeners) listener();
}

/** Whether somebody must sign in again before anything can be saved. */
export function useSessionEnded(): boolean {
  return useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => ended,
  );
}
