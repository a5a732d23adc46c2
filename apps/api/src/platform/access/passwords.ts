import { Injectable } from '@nestjs/common';
import { hash, verify } from '@node-rs/argon2';
import { Database } from '../database/database.js';
import { refuse } from '../problems/refusal.error.js';
import type { Actor } from './actor.js';
import { AttemptThrottle } from './attempt-throttle.js';

/** Argon2id, 19 MiB, two passes. Source: OWASP Password Storage Cheat Sheet (from memory). */
export const PASSWORD_COST = { memoryCost: 19_456, timeCost: 2, parallelism: 1 };

/** Passwords: kept as Argon2id hashes, asked again before a signature. */
@Injectable()
export class Passwords {
  private decoy: Promise<string> | null = null;

  constructor(
    private readonly database: Database,
    private readonly throttle: AttemptThrottle,
  ) {}

  hash(password: string): Promise<string> {
    return hash(password, PASSWORD_COST);
  }

  /** True when the password is the one of the hash; without a hash the same work is done and the answer is no. */
  async matches(passwordHash: string | null, password: string): Promise<boolean> {
    if (passwordHash !== null) return await verify(passwordHash, password);
    this.decoy ??= this.hash('a password nobody has');
    await verify(await this.decoy, password);
    return false;
  }

  /**
   * Makes sure that whoever signs is the person of the session. Call it before the transaction of the act:
   * it takes some tens of milliseconds.
   * Refuses: WRONG_PASSWORD about `field`, TOO_MANY_ATTEMPTS.
   */
  async verifyPassword(actor: Actor, password: string, field = 'password'): Promise<void> {
    const name = `person ${actor.operatorId} ${actor.personId}`;
    this.throttle.attempt(name);
    const { operatorId, personId: id } = actor;
    const person = await this.database.inOperator(actor, (tx) =>
      tx.person.findUniqueOrThrow({ where: { operatorId_id: { operatorId, id } }, select: { passwordHash: true } }),
    );
    if (!(await this.matches(person.passwordHash, password))) refuse({ code: 'WRONG_PASSWORD', field });
    this.throttle.succeeded(name);
  }
}
