import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { dayToWire } from '../../platform/http/instants.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { type DueCursor, readCursor, writeCursor } from './due-cursor.js';
import type { DuePageDto, DueQueryDto } from './due-list.dto.js';
import { DUE_PAGE_SQL, type DuePageRow } from './due-page.sql.js';
import { dueRow } from './due-row.js';

const ROWS = 50;

/** What falls due, the most urgent first, with what is over or not verified on top. */
@Injectable()
export class DueListService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** One page. Refuses: INVALID_FIELDS (after), NOT_FOUND (airframe). */
  page(actor: Actor, { after, limit = ROWS, airframeId }: DueQueryDto): Promise<DuePageDto> {
    const { operatorId } = actor;
    const cursor = after === undefined ? null : readCursor(after);
    const now = cursor?.now ?? this.clock.now();
    return this.database.inOperator(actor, async (tx) => {
      if (airframeId !== undefined)
        orNotFound(
          await tx.airframe.findUnique({
            where: { operatorId_id: { operatorId, id: airframeId } },
            select: { id: true },
          }),
          'airframe',
        );
      const rows = await tx.$queryRawUnsafe<DuePageRow[]>(
        DUE_PAGE_SQL,
        ...duePageValues({ operatorId, now, limit: limit + 1, airframeId, cursor }),
      );
      const shown = rows.slice(0, limit);
      const last = shown.at(-1);
      const more = rows.length > limit && last !== undefined;
      return {
        rows: shown.map((row) => dueRow(row, dayToWire(this.clock.now()))),
        next: more
          ? writeCursor({ now, rank: last.rank, urgency: last.urgency, dueAt: last.dueAt, id: last.id })
          : null,
      };
    });
  }
}

/** The statement's parameters, in order. */
export function duePageValues(ask: {
  readonly operatorId: number;
  readonly now: Date;
  readonly limit: number;
  readonly airframeId: string | undefined;
  readonly cursor: DueCursor | null;
}): unknown[] {
  const { operatorId, now, limit, airframeId, cursor } = ask;
  return [
    operatorId,
    now,
    limit,
    airframeId ?? null,
    cursor?.rank ?? null,
    cursor?.urgency ?? null,
    cursor?.dueAt ?? null,
    cursor?.id ?? null,
  ];
}
