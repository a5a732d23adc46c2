import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { fromWire, toWire } from '../../platform/http/instants.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import type { ShopVisitsQueryDto } from './shop-visit.dto.js';
import { ShopVisitReader, visitRowToWire } from './shop-visit-reader.js';
import type { ShopVisitDto, ShopVisitsPageDto } from './shop-visit-view.dto.js';
import { IN_LIST } from './visit-rows.js';

const PAGE = 50;

/** Shop visits as they are read. */
@Injectable()
export class ShopVisitsService {
  constructor(
    private readonly database: Database,
    private readonly reader: ShopVisitReader,
  ) {}

  /** Visits, the last sent first, a page at a time; voided ones are left out. Refuses: INVALID_FIELDS (after). */
  page(
    actor: Actor,
    { status, componentId, after, limit = PAGE }: ShopVisitsQueryDto,
  ): Promise<ShopVisitsPageDto> {
    const { operatorId } = actor;
    const cursor = after === undefined ? null : readCursor(after);
    return this.database.inOperator(actor, async (tx) => {
      const rows = await tx.shopVisit.findMany({
        where: {
          ...{ operatorId, voidedSeq: null },
          ...(componentId === undefined ? {} : { componentId }),
          ...(status === 'in-shop' ? { shopReturnByVisit: { none: { voidedSeq: null } } } : {}),
          ...(status === 'returned' ? { shopReturnByVisit: { some: { voidedSeq: null } } } : {}),
          ...(cursor === null
            ? {}
            : { OR: [{ sentAt: { lt: cursor.sentAt } }, { sentAt: cursor.sentAt, id: { lt: cursor.id } }] }),
        },
        orderBy: [{ sentAt: 'desc' }, { id: 'desc' }],
        take: limit + 1,
        include: IN_LIST,
        omit: { build: true },
      });
      const shown = rows.slice(0, limit);
      const last = shown.at(-1);
      const more = rows.length > limit && last !== undefined;
      return {
        rows: shown.map(visitRowToWire),
        next: more ? Buffer.from(`${toWire(last.sentAt)} ${last.id}`).toString('base64url') : null,
      };
    });
  }

  /** One visit in full. Refuses: NOT_FOUND. */
  get(actor: Actor, id: string): Promise<ShopVisitDto> {
    return this.database.inOperator(actor, (tx) => this.reader.read(tx, actor.operatorId, id));
  }
}

function readCursor(text: string): { readonly sentAt: Date; readonly id: string } {
  const [at = '', id = ''] = Buffer.from(text, 'base64url').toString().split(' ');
  const sentAt = fromWire(at);
  if (sentAt !== null && /^[0-9a-f-]{36}$/.test(id)) return { sentAt, id };
  return refuse({
    code: 'INVALID_FIELDS',
    fields: [
      {
        field: 'after',
        reason: 'This names no place in the list.',
        fix: "Send back the 'next' of the page before.",
      },
    ],
  });
}
