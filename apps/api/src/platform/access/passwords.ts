import { randomUUID } from 'node:crypto';
import { Injectable, type OnApplicationBootstrap } from '@nestjs/common';
import { hash, verify } from '@node-rs/argon2';
import { Database } from '../database/database.js';
import { refuse } from '../problems/refusal.error.js';
import type { Actor } from './actor.js';
import { AttemptThrottle } from './attempt-throttle.js';

/** Argon2id, 19 MiB, two passes. Source: OWASP Password Storage Cheat Sheet (from memory). */
export const PASSWORD_COST = { memoryCost: 19_456, timeCost: 2, parallelism: 1 };

/** Passwords: kept as Argon2id hashes, asked again before a signature. */
@Injectable()
export class Passwords implements OnApplicationBootstrap {
  /** A hash of no one's password, so that an unknown name takes as long as a wrong password. */
  private decoy = '';

  constructor(
    private readonly database: Database,
    private readonly throttle: AttemptThrottle,
  ) {}

  async onApplicationBootstrap(): Promise<void> {
    this.decoy = await this.hash(randomUUID());
  }

  hash(password: string): Promise<string> {
    return hash(password, PASSWORD_COST);
  }

  /** True when the password is the one of the hash; without a hash the same work is done and the answer is no. */
  async matches(passwordHash: string | null, password: string): Promise<boolean> {
    const isRight = await verify(passwordHash ?? this.decoy, password);
    return passwordHash !== null && isRight;
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
      tx.person.findUniqueOrThrow({
        where: { operatorId_id: { operatorId, id } },
        select: { passwordHash: true },
      }),
    );
    if (!(await this.matches(person.passwordHash, password))) refuse({ code: 'WRONG_PASSWORD', field });
    this.throttle.succeeded(name);
  }
}
