import { Injectable } from '@nestjs/common';
import type { Actor } from '../access/actor.js';
import { Database, type TransactionLimits, type Tx } from '../database/database.js';
import { refuse } from '../problems/refusal.error.js';
import type { ActRequest } from './act-key.js';

/** What an act did. */
export interface Done<T> {
  /** The HTTP status of the answer: 201 when something was made, 202 when work was begun, else 200. */
  readonly status: number;
  /** The answer's body, plain JSON; kept, and given again when the act is repeated. */
  readonly body: T;
  /** Address of what the act made or changed: '/api/flights/…'. */
  readonly resource: string;
  /** Its version after the act, which becomes the ETag. */
  readonly version?: number;
  /** The number of the act's entry in the journal. */
  readonly number?: bigint;
}

interface EarlierAct {
  readonly fingerprint: Uint8Array;
  readonly status: number | null;
  readonly body: string | null;
  readonly version: number | null;
}

/** Each act of a person happens once, however often its request arrives. */
@Injectable()
export class Acts {
  constructor(private readonly database: Database) {}

  /**
   * Does `work` and keeps its answer under the act's key, in one transaction; a repeat gets that answer and
   * does nothing. Of two requests at once with one key the second waits for the first. What is refused is
   * not kept: it may be corrected and sent again with the same key.
   * Refuses: KEY_REUSED for another request with this key, BUSY after two seconds of waiting.
   */
  async perform<T>(
    actor: Actor,
    act: ActRequest,
    work: (tx: Tx) => Promise<Done<T>>,
    limits: TransactionLimits = {},
  ): Promise<T> {
    const answer = await this.database.inOperator(
      actor,
      async (tx) => {
        const earlier = await open(tx, actor, act);
        if (earlier !== null) return replay<T>(earlier, act);
        const done = await work(tx);
        // The answer is given as it is kept, so that a repeat cannot differ from it.
        const body = JSON.stringify(done.body);
        await tx.act.update({
          where: {
            operatorId_personId_key: { operatorId: actor.operatorId, personId: actor.personId, key: act.key },
          },
          data: {
            status: done.status,
            resource: done.resource,
            version: done.version ?? null,
            number: done.number ?? null,
            body,
          },
          select: { key: true },
        });
        return { status: done.status, version: done.version ?? null, body: JSON.parse(body) as T };
      },
      limits,
    );
    act.answered(answer);
    return answer.body;
  }
}

/** Takes the key, or finds the act that took it before; the second statement sees what the first waited for. */
async function open(tx: Tx, actor: Actor, act: ActRequest): Promise<EarlierAct | null> {
  const taken = await tx.$executeRaw`INSERT INTO act (operator_id, person_id, key, fingerprint)
    VALUES (${actor.operatorId}::int, ${actor.personId}::uuid, ${act.key}, ${act.fingerprint}) ON CONFLICT DO NOTHING`;
  if (taken === 1) return null;
  return await tx.act.findUniqueOrThrow({
    where: {
      operatorId_personId_key: { operatorId: actor.operatorId, personId: actor.personId, key: act.key },
    },
    select: { fingerprint: true, status: true, body: true, version: true },
  });
}

function replay<T>({ fingerprint, status, body, version }: EarlierAct, act: ActRequest) {
  if (!Buffer.from(fingerprint).equals(act.fingerprint)) refuse({ code: 'KEY_REUSED' });
  return { status: status ?? 200, version, body: JSON.parse(body ?? 'null') as T };
}
