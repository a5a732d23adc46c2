import { randomUUID } from 'node:crypto';
import type { Answer, HttpClient } from '../http-client.js';
import { asRequest, atMinute, type ChangeToRecord, onTheWire, previewChange } from './acts.js';
import { inShort } from './problem.js';

/** An act under its key, as it was or will be sent. */
export interface KeyedAct {
  readonly kind: 'flight' | 'change';
  readonly key: string;
  readonly path: string;
  readonly body: object;
}

/** How a request ended: with an answer, or with the connection, so that nobody knows. */
export type Ending = { readonly answer: Answer } | { readonly lost: unknown };

/** Sends the act with its key. */
export async function send(client: HttpClient, { key, path, body }: KeyedAct): Promise<Ending> {
  try {
    return {
      answer: await client.post(path, body, { idempotencyKey: key, signal: AbortSignal.timeout(20_000) }),
    };
  } catch (lost) {
    return { lost };
  }
}

/** One airframe's days: flights, and after each the engine at a position changed for the spare one. */
export class Lane {
  readonly sent: KeyedAct[] = [];
  readonly acknowledged = new Map<string, string>();
  /** How often an act ended without an answer. */
  lost = 0;
  private minute = 10_000;
  private flights = 0;
  /** What was sent and not answered: the next thing to be sent, again. */
  private open: KeyedAct | null = null;

  constructor(
    private readonly airframeId: string,
    /** Their serials: the one at position 1, and the spare. */
    private engines: readonly [string, string],
  ) {}

  /** Sends acts one after the other until the connection is lost or `stop` is true. */
  async run(client: HttpClient, stop: () => boolean): Promise<void> {
    while (!stop()) {
      const act = this.open ?? (await this.next(client));
      if (act === null) return;
      this.open = act;
      const ending = await send(client, act);
      if ('lost' in ending) {
        this.lost += 1;
        return;
      }
      this.settle(act, ending.answer);
    }
  }

  /** Whether an act's outcome is not known. */
  get isOpen(): boolean {
    return this.open !== null;
  }

  private settle(act: KeyedAct, answer: Answer): void {
    if (answer.status === 503) return; // it was stopping: the outcome is not known either
    if (answer.status !== 201) throw new Error(`${act.kind} was refused: ${inShort(answer)}`);
    this.open = null;
    this.acknowledged.set(act.key, JSON.stringify([answer.status, answer.etag, answer.body]));
    if (act.kind === 'change') this.engines = [this.engines[1], this.engines[0]];
  }

  private async next(client: HttpClient): Promise<KeyedAct | null> {
    this.minute += 100;
    const isFlight = this.flights <= this.acknowledged.size / 2;
    const act = isFlight ? this.flight() : await this.change(client);
    if (act !== null) this.sent.push(act);
    return act;
  }

  private flight(): KeyedAct {
    this.flights += 1;
    const flight = onTheWire({
      page: `lane-${this.flights}`,
      takeOff: this.minute,
      landing: this.minute + 60,
    });
    return {
      kind: 'flight',
      key: randomUUID(),
      path: `/api/airframes/${this.airframeId}/flights`,
      body: { flights: [flight] },
    };
  }

  private async change(client: HttpClient): Promise<KeyedAct | null> {
    const [outgoingSerial, incomingSerial] = this.engines;
    const change: ChangeToRecord = {
      airframeId: this.airframeId,
      positionNumber: 1,
      slot: 'engine',
      outgoingSerial,
      incomingSerial,
      boundary: atMinute(this.minute),
    };
    try {
      const preview = await previewChange(client, change);
      if (preview.status === 503) return null;
      if (preview.status !== 200) throw new Error(`a change was refused: ${inShort(preview)}`);
      return {
        kind: 'change',
        key: randomUUID(),
        path: '/api/changes',
        body: { ...asRequest(change), confirmDigest: preview.body.digest },
      };
    } catch (error) {
      if (error instanceof Error && error.message.startsWith('a change was refused')) throw error;
      return null; // the server went away while it was asked: nothing was sent
    }
  }
}
