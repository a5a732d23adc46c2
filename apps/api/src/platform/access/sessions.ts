import { createHash, randomBytes } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { Database, type Tx } from '../database/database.js';
import { newId } from '../database/uuid.js';
import { Clock } from '../time/clock.js';
import { isRole, type Role } from './roles.js';

/** A session as a request finds it. */
export interface SessionView {
  readonly operatorId: number;
  readonly operatorCode: string;
  readonly operatorName: string;
  readonly sessionId: string;
  readonly personId: string;
  readonly fullName: string;
  readonly signInName: string;
  readonly licence: string | null;
  readonly roles: readonly Role[];
  readonly csrfToken: string;
  readonly mustChangePassword: boolean;
}

interface SessionRow {
  readonly operator_id: number;
  readonly session_id: string;
  readonly person_id: string;
  readonly csrf_token: string;
  readonly roles: string[];
  readonly full_name: string;
  readonly sign_in_name: string;
  readonly licence: string | null;
  readonly must_change_password: boolean;
  readonly last_seen_at: Date;
  readonly expires_at: Date;
  readonly operator_code: string;
  readonly operator_name: string;
}

const HOUR_MS = 3_600_000;
/** Longest life of a session, used or not. Source: NIST SP 800-63B-4, AAL2 and AAL3, the tighter of both. */
const WHOLE_MS = 12 * HOUR_MS;
/** Longest time without a request. Source: NIST SP 800-63B-4, AAL2. */
const IDLE_MS = HOUR_MS;
/** Being seen is written at most this often. */
const SEEN_EVERY_MS = 60_000;

/** Sessions: the browser holds a random token, the table its hash alone. */
@Injectable()
export class Sessions {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** Begins a session and answers its token, which is kept nowhere else. */
  async begin(
    tx: Tx,
    { operatorId, personId }: { readonly operatorId: number; readonly personId: string },
  ): Promise<{ readonly token: string; readonly expiresAt: Date }> {
    const token = randomBytes(32).toString('base64url');
    const now = this.clock.now();
    const expiresAt = new Date(now.getTime() + WHOLE_MS);
    await tx.session.create({
      data: {
        operatorId,
        id: newId(),
        tokenHash: hashOf(token),
        csrfToken: randomBytes(32).toString('base64url'),
        personId,
        createdAt: now,
        lastSeenAt: now,
        expiresAt,
      },
    });
    return { token, expiresAt };
  }

  /** The session a token belongs to; null when there is none, it has ended, or its person was disabled. */
  async find(token: string): Promise<SessionView | null> {
    const [row] = await this.database.headline<SessionRow & Record<string, unknown>>(
      'SELECT * FROM session_by_token($1)',
      [hashOf(token)],
    );
    if (row === undefined) return null;
    const idle = this.clock.now().getTime() - row.last_seen_at.getTime();
    if (idle > IDLE_MS) {
      await this.end(row.operator_id, row.session_id);
      return null;
    }
    if (idle > SEEN_EVERY_MS) await this.seen(row.operator_id, row.session_id);
    return viewOf(row);
  }

  /** Ends one session. */
  async end(operatorId: number, sessionId: string): Promise<void> {
    await this.database.inOperator({ operatorId }, (tx) =>
      tx.session.updateMany({
        where: { operatorId, id: sessionId, endedAt: null },
        data: { endedAt: this.clock.now() },
      }),
    );
  }

  /** Ends every session of a person, but for one that goes on. */
  async endAllOf(tx: Tx, operatorId: number, personId: string, except: string | null): Promise<void> {
    await tx.session.updateMany({
      where: { operatorId, personId, endedAt: null, ...(except === null ? {} : { id: { not: except } }) },
      data: { endedAt: this.clock.now() },
    });
  }

  /** Of many requests at once the first writes, and the others find it written. */
  private async seen(operatorId: number, id: string): Promise<void> {
    const now = this.clock.now();
    const before = new Date(now.getTime() - SEEN_EVERY_MS);
    await this.database.inOperator({ operatorId }, (tx) =>
      tx.session.updateMany({
        where: { operatorId, id, lastSeenAt: { lt: before } },
        data: { lastSeenAt: now },
      }),
    );
  }
}

function viewOf(row: SessionRow): SessionView {
  return {
    operatorId: row.operator_id,
    operatorCode: row.operator_code,
    operatorName: row.operator_name,
    sessionId: row.session_id,
    personId: row.person_id,
    fullName: row.full_name,
    signInName: row.sign_in_name,
    licence: row.licence,
    roles: row.roles.filter(isRole),
    csrfToken: row.csrf_token,
    mustChangePassword: row.must_change_password,
  };
}

function hashOf(token: string): Uint8Array<ArrayBuffer> {
  return new Uint8Array(createHash('sha256').update(token).digest());
}
