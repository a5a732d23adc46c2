import { once } from 'node:events';
import { PassThrough, type Readable } from 'node:stream';
import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { History, type HistoryAsk } from '../../records/history/history.js';
import type { ToldSubject } from '../../records/history/told-line.js';

const CHUNK = 1 << 16;
const LONGEST_MS = 120_000;

/** Histories as data, streamed: however long one is, some chunks of it are in memory. */
@Injectable()
export class HistoryService {
  constructor(
    private readonly database: Database,
    private readonly history: History,
  ) {}

  /** The history as JSON text. Refuses: NOT_FOUND, before anything is sent. */
  async stream(actor: Actor, ask: HistoryAsk): Promise<Readable> {
    const subject = await this.database.inOperator(actor, (tx) =>
      this.history.subject(tx, actor.operatorId, ask),
    );
    const out = new PassThrough({ highWaterMark: CHUNK });
    this.database
      .inOperator(actor, (tx) => this.write(tx, actor.operatorId, { ask, subject, out }), {
        wholeMs: LONGEST_MS,
        statementMs: LONGEST_MS,
      })
      // What has been sent can't be taken back: the answer breaks off, and no reader takes it for whole.
      .catch((error: unknown) => out.destroy(error instanceof Error ? error : new Error(String(error))));
    return out;
  }

  private async write(
    tx: Tx,
    operatorId: number,
    {
      ask,
      subject,
      out,
    }: { readonly ask: HistoryAsk; readonly subject: ToldSubject; readonly out: PassThrough },
  ): Promise<void> {
    const lines = this.history.tell(tx, operatorId, ask);
    let chunk = `{"subject":${JSON.stringify(subject)},"lines":[`;
    for (let between = ''; ; between = ',') {
      const next = await lines.next();
      if (next.done === true) {
        out.end(`${chunk}],"totals":${JSON.stringify(next.value)}}`);
        return;
      }
      chunk += between + JSON.stringify(next.value);
      if (chunk.length < CHUNK) continue;
      const room = out.write(chunk);
      chunk = '';
      if (out.destroyed) return;
      if (!room) await Promise.race([once(out, 'drain'), once(out, 'close')]);
    }
  }
}
