import { Injectable } from '@nestjs/common';
import type { Json } from '@strutbook/journal/canonical.js';
import type { Actor } from '../../platform/access/actor.js';
import type { Tx } from '../../platform/database/database.js';
import { entryBody } from './entry-body.js';

export interface NewEntry {
  /** The act's number, from `Journal.number`, which every fact of the act keeps too. */
  readonly number: bigint;
  /** What was acted on: an airframe, component, package, import, person. One chain each. */
  readonly stream: string;
  readonly kind: string;
  /** What was done, as plain JSON. No bigint, no undefined, no Date: write them as text first. */
  readonly body: Readonly<Record<string, Json>>;
  /** Everything else the act concerns; histories read by it. */
  readonly about: readonly string[];
  /** The act's key, when a request brought one. */
  readonly key?: string;
}

/** The append-only record of every change, written in the same transaction as the change. */
@Injectable()
export class Journal {
  /** The number of the act under way. Draw it after the act's locks are held, so that numbers follow the order of acts. */
  async number(tx: Tx): Promise<bigint> {
    const [row] = await tx.$queryRaw<[{ number: bigint }]>`SELECT next_journal_number() AS number`;
    return row.number;
  }

  /** Adds the act's one entry to the chain of its stream. */
  async append(tx: Tx, actor: Actor, entry: NewEntry): Promise<void> {
    const { number, stream, kind, about, key } = entry;
    const body = entryBody(actor, entry);
    await tx.$queryRaw`SELECT journal_append(${actor.operatorId}::int, ${number}::bigint, ${stream}::uuid, ${kind},
      ${actor.personId}::uuid, ${key ?? null}, ${body}, ${[...about]}::uuid[])::text AS number`;
  }
}
