import { useSyncExternalStore } from 'react';

const COARSE = '(pointer: coarse)';

function subscribe(listener: () => void): () => void {
  const query = window.matchMedia(COARSE);
  query.addEventListener('change', listener);
  return () => query.removeEventListener('change', listener);
}

/** Whether fingers or gloves are at work here, rather than a mouse. */
export const useTouch = (): boolean =>
  useSyncExternalStore(
    subscribe,
    () => window.matchMedia(COARSE).matches || document.documentElement.dataset['touch'] === 'on',
  );
