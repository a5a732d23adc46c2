import type { Boundary } from '@strutbook/domain/stays/boundary.js';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import { fromInstant } from '../../platform/http/instants.js';
import { refuseFuture } from '../../platform/time/refuse-future.js';

const DAY_MS = 24 * 60 * 60_000;

/**
 * Refuses IN_THE_FUTURE: a boundary that has not come is no fact. 'After the last flight' of a day may be told while
 * the day still lasts, though the instant it means is the day's end.
 */
export function refuseFutureBoundary(boundary: Boundary, at: Instant, now: Date, field = 'boundary'): void {
  if (boundary.kind !== 'after-last') refuseFuture(fromInstant(at), field, now);
  else refuseFuture(fromInstant(at), field, new Date(now.getTime() + DAY_MS));
}
