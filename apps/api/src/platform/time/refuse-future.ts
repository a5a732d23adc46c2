import { toWire } from '../http/instants.js';
import { refuse } from '../problems/refusal.error.js';

const GRACE_MS = 5 * 60_000;

/** Refuses IN_THE_FUTURE: what has not happened is no fact. A clock a little off is forgiven. */
export function refuseFuture(at: Date, field: string, now: Date): void {
  if (at.getTime() > now.getTime() + GRACE_MS) refuse({ code: 'IN_THE_FUTURE', field, at: toWire(at) });
}
