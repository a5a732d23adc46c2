import { Injectable } from '@nestjs/common';
import { Database } from '../database/database.js';
import { refuse } from '../problems/refusal.error.js';
import type { Actor } from './actor.js';
import { AttemptThrottle } from './attempt-throttle.js';
import { Passwords } from './passwords.js';
import { isRole } from './roles.js';

/** By what a signer shows who they are. */
export const METHODS = ['password', 'pin'] as const;

export type Method = (typeof METHODS)[number];

/** What a signer enters: the secret, and whose it is where it is not the person of the session. */
export interface Proof {
  readonly method: Method;
  readonly secret: string;
  readonly signInName?: string | undefined;
}

/** The signer, as the person is recorded now. */
export interface Signer extends Actor {
  readonly method: Method;
}

/** Whoever signs shows it again, by password or PIN: the person of the session, or another one at the same tablet. */
@Injectable()
export class Signers {
  constructor(
    private readonly database: Database,
    private readonly passwords: Passwords,
    private readonly throttle: AttemptThrottle,
  ) {}

  /**
   * Who signs. Call it before the transaction of the act: it takes some tens of milliseconds. The session stays who
   * it was. Nothing tells whether a name, its person or its secret was wrong, but to oneself.
   * Refuses: WRONG_PASSWORD, WRONG_PIN, SIGNER_NOT_PROVEN, TOO_MANY_ATTEMPTS, PASSWORD_CHANGE_NEEDED.
   */
  async prove(actor: Actor, { method, secret, signInName }: Proof, field = 'secret'): Promise<Signer> {
    const { operatorId, sessionId } = actor;
    const name = signInName?.trim().toLowerCase();
    const person = await this.database.inOperator(actor, (tx) =>
      tx.person.findFirst({
        where: { operatorId, ...(name === undefined ? { id: actor.personId } : { signInName: name }) },
      }),
    );
    const attempt = `person ${operatorId} ${person?.id ?? `named ${name}`}`;
    this.throttle.attempt(attempt);
    const kept = method === 'pin' ? person?.pinHash : person?.passwordHash;
    const isRight = await this.passwords.matches(kept ?? null, secret);
    if (person === null || !isRight || person.disabledAt !== null) {
      if (person !== null && person.id === actor.personId)
        refuse({ code: method === 'pin' ? 'WRONG_PIN' : 'WRONG_PASSWORD', field });
      refuse({ code: 'SIGNER_NOT_PROVEN', field, method });
    }
    this.throttle.succeeded(attempt);
    // A password that someone else set is not in this person's sole control.
    if (person.mustChangePassword && method === 'password') refuse({ code: 'PASSWORD_CHANGE_NEEDED' });
    return {
      operatorId,
      sessionId,
      personId: person.id,
      fullName: person.fullName,
      licence: person.licence,
      roles: person.roles.filter(isRole),
      method,
    };
  }
}
