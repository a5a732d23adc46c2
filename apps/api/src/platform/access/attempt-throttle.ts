import { Injectable } from '@nestjs/common';
import { refuse } from '../problems/refusal.error.js';
import { Clock } from '../time/clock.js';

interface Failures {
  readonly count: number;
  readonly lastAt: number;
}

const FREE_FAILURES = 5;
const FIRST_WAIT_MS = 5_000;
const LONGEST_WAIT_MS = 15 * 60_000;
const FORGOTTEN_AFTER_MS = 60 * 60_000;
const MOST_NAMES = 10_000;

/**
 * Slows guessing: after five wrong passwords for a name each further try waits, twice as long each time, up to
 * a quarter of an hour. Counted in this process; a name is only ever slowed, never locked for good.
 */
@Injectable()
export class AttemptThrottle {
  private readonly failures = new Map<string, Failures>();

  constructor(private readonly clock: Clock) {}

  /** Counts one try as failed until `succeeded` says otherwise. Refuses: TOO_MANY_ATTEMPTS while the name has to wait. */
  attempt(name: string): void {
    this.refuseWhileWaiting(name);
    // Counted before the password is looked at, so that many tries at once are not all free.
    this.failed(name);
  }

  succeeded(name: string): void {
    this.failures.delete(name);
  }

  private refuseWhileWaiting(name: string): void {
    const known = this.failures.get(name);
    if (known === undefined || known.count < FREE_FAILURES) return;
    const wait = Math.min(FIRST_WAIT_MS * 2 ** (known.count - FREE_FAILURES), LONGEST_WAIT_MS);
    const left = known.lastAt + wait - this.clock.now().getTime();
    if (left > 0) refuse({ code: 'TOO_MANY_ATTEMPTS', retryAfterSeconds: Math.ceil(left / 1000) });
  }

  private failed(name: string): void {
    const now = this.clock.now().getTime();
    const known = this.failures.get(name);
    const count = known !== undefined && now - known.lastAt < FORGOTTEN_AFTER_MS ? known.count + 1 : 1;
    // Put last again, so that the names forgotten first are those not tried for longest.
    this.failures.delete(name);
    this.failures.set(name, { count, lastAt: now });
    const [oldest] = this.failures.keys();
    if (this.failures.size > MOST_NAMES && oldest !== undefined) this.failures.delete(oldest);
  }
}
