import type { Writable } from 'node:stream';

/** Waits until the reader has taken what was written, or has gone; leaves no listener behind. */
export function roomOrEnd(out: Writable): Promise<void> {
  return new Promise((resolve) => {
    const go = () => {
      for (const event of ['drain', 'close', 'error']) out.off(event, go);
      resolve();
    };
    for (const event of ['drain', 'close', 'error']) out.once(event, go);
  });
}
