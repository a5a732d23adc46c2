import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { AttemptThrottle } from '../../platform/access/attempt-throttle.js';
import { refuseWeakPassword } from '../../platform/access/password-rules.js';
import { Passwords } from '../../platform/access/passwords.js';
import { refuseTrivialPin } from '../../platform/access/pin-rules.js';
import { Sessions, type SessionView } from '../../platform/access/sessions.js';
import { Database } from '../../platform/database/database.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { Journal } from '../../records/journal/journal.js';
import type { ChangePasswordDto, ChoosePinDto, SignInDto } from './session.dto.js';

export interface Begun {
  readonly token: string;
  readonly expiresAt: Date;
  readonly view: SessionView;
}

/** Signing in and out, and one's own password. */
@Injectable()
export class SessionService {
  constructor(
    private readonly database: Database,
    private readonly passwords: Passwords,
    private readonly sessions: Sessions,
    private readonly throttle: AttemptThrottle,
    private readonly journal: Journal,
  ) {}

  /** Begins a session. The answer and its time tell nothing of which part was wrong. Refuses: SIGN_IN_FAILED, TOO_MANY_ATTEMPTS. */
  async begin({ signInName, password, operatorCode }: SignInDto): Promise<Begun> {
    const name = signInName.trim().toLowerCase();
    const attempt = `name ${name}`;
    this.throttle.attempt(attempt);
    const operatorId = await this.operatorOf(operatorCode);
    const person = operatorId === null ? null : await this.personNamed(operatorId, name);
    const isRight = await this.passwords.matches(person?.password_hash ?? null, password);
    if (operatorId === null || person === null || !isRight || person.disabled_at !== null) {
      return refuse({ code: 'SIGN_IN_FAILED' });
    }
    this.throttle.succeeded(attempt);
    const begun = await this.database.inOperator({ operatorId }, (tx) =>
      this.sessions.begin(tx, { operatorId, personId: person.id }),
    );
    const view = await this.sessions.find(begun.token);
    return view === null ? refuse({ code: 'SIGN_IN_FAILED' }) : { ...begun, view };
  }

  /**
   * Takes a new password and ends the person's other sessions.
   * Refuses: WRONG_PASSWORD, TOO_MANY_ATTEMPTS, PASSWORD_TOO_WEAK.
   */
  async changePassword(actor: Actor, view: SessionView, change: ChangePasswordDto): Promise<void> {
    await this.passwords.verifyPassword(actor, change.currentPassword, 'currentPassword');
    refuseWeakPassword(
      change.newPassword,
      [view.signInName, view.fullName, view.operatorName],
      'newPassword',
    );
    if (change.newPassword === change.currentPassword) {
      const reason = 'It is the present password.';
      refuse({ code: 'PASSWORD_TOO_WEAK', field: 'newPassword', reason, fix: 'Choose another.' });
    }
    const passwordHash = await this.passwords.hash(change.newPassword);
    const { operatorId, personId: id, sessionId } = actor;
    await this.database.inOperator(actor, async (tx) => {
      await tx.person.update({
        where: { operatorId_id: { operatorId, id } },
        data: { passwordHash, mustChangePassword: false, version: { increment: 1 } },
      });
      await this.sessions.endAllOf(tx, operatorId, id, sessionId);
      const number = await this.journal.number(tx);
      await this.journal.append(tx, actor, {
        number,
        stream: id,
        kind: 'password-changed',
        body: {},
        about: [],
      });
    });
  }

  /**
   * Takes a PIN in place of the one before; it signs, and opens no session.
   * Refuses: WRONG_PASSWORD, TOO_MANY_ATTEMPTS, PASSWORD_TOO_WEAK.
   */
  async choosePin(actor: Actor, { password, pin }: ChoosePinDto): Promise<void> {
    await this.passwords.verifyPassword(actor, password);
    refuseTrivialPin(pin, 'pin');
    const pinHash = await this.passwords.hash(pin);
    const { operatorId, personId: id } = actor;
    await this.database.inOperator(actor, async (tx) => {
      await tx.person.update({
        where: { operatorId_id: { operatorId, id } },
        data: { pinHash, version: { increment: 1 } },
        select: { id: true },
      });
      const number = await this.journal.number(tx);
      await this.journal.append(tx, actor, { number, stream: id, kind: 'pin-chosen', body: {}, about: [] });
    });
  }

  /** Whether the person of the session has chosen a PIN. */
  hasPin({ operatorId, personId: id }: SessionView): Promise<boolean> {
    return this.database.inOperator({ operatorId }, async (tx) => {
      return (await tx.person.count({ where: { operatorId, id, pinHash: { not: null } } })) === 1;
    });
  }

  private async operatorOf(code: string | undefined): Promise<number | null> {
    const operators = await this.database.headline<{ id: number; code: string }>(
      'SELECT * FROM operators_for_sign_in()',
    );
    const fitting =
      code === undefined || code === '' ? operators : operators.filter((each) => each.code === code);
    // Without a code the name is one operator's only where there is just one.
    return fitting.length === 1 ? (fitting[0]?.id ?? null) : null;
  }

  private async personNamed(operatorId: number, name: string) {
    const [person] = await this.database.headline<{
      id: string;
      password_hash: string;
      disabled_at: Date | null;
    }>('SELECT * FROM person_for_sign_in($1, $2)', [operatorId, name]);
    return person ?? null;
  }
}
