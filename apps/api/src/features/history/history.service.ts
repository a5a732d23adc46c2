import { PassThrough, type Readable } from 'node:stream';
import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { roomOrEnd } from '../../platform/http/room-or-end.js';
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
    out.write(`{"subject":${JSON.stringify(subject)},"lines":[`);
    for (let between = ''; ; ) {
      const next = await lines.next();
      if (next.done === true) {
        out.end(`],"totals":${JSON.stringify(next.value)}}`);
        return;
      }
      if (next.value.length === 0) continue;
      // Some lines as a list without its brackets: a piece of the one that is sent.
      const room = out.write(between + JSON.stringify(next.value).slice(1, -1));
      between = ',';
      if (out.destroyed) return;
      if (!room) await roomOrEnd(out);
    }
  }
}
