import { onlineManager } from '@tanstack/react-query';
import { useSyncExternalStore } from 'react';
import { minuteNow } from '../format/now.js';

let offlineSince: number | null = null;

/** Tells the query library the truth before the first render: it assumes a connection. */
export function startConnectionWatch(): void {
  onlineManager.setOnline(navigator.onLine);
  offlineSince = navigator.onLine ? null : minuteNow();
  onlineManager.subscribe((online) => {
    offlineSince = online ? null : (offlineSince ?? minuteNow());
  });
}

/** Since which instant there is no connection, in minutes; null while there is one. */
export function useOfflineSince(): number | null {
  return useSyncExternalStore(
    (listener) => onlineManager.subscribe(listener),
    () => offlineSince,
  );
}
