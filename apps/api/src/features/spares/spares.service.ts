import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { dayToWire } from '../../platform/http/instants.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { fittingPlace } from './fitting-place.js';
import type { SparesPageDto, SparesQueryDto } from './spare.dto.js';
import { spareToWire } from './spare.mapper.js';
import { type SpareRow, sparesPage } from './spares.sql.js';

const PAGE = 50;

/** What is installed nowhere: fit to install, or why not, and what is left in it. */
@Injectable()
export class SparesService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** One page. Refuses: INVALID_FIELDS (after), NOT_FOUND (slot). */
  page(actor: Actor, query: SparesQueryDto): Promise<SparesPageDto> {
    const { operatorId } = actor;
    const { sort = 'serial', limit = PAGE, slotId, search } = query;
    const after = query.after === undefined ? null : readCursor(query.after);
    const today = dayToWire(this.clock.now());
    return this.database.inOperator(actor, async (tx) => {
      const place = slotId === undefined ? null : await fittingPlace(tx, operatorId, slotId);
      const rows = await tx.$queryRaw<SpareRow[]>(
        sparesPage({
          ...{ operatorId, today, sort, after, place },
          kind: query.kind ?? null,
          partNumber: query.partNumber ?? null,
          engineModelId: query.engineModelId ?? null,
          locationId: query.locationId ?? null,
          owner: query.owner ?? null,
          search: search === undefined ? null : `%${search.toLowerCase().replace(/[\\%_]/g, '\\$&')}%`,
          fit: query.fit ?? null,
          limit: limit + 1,
        }),
      );
      const shown = rows.slice(0, limit);
      const last = shown.at(-1);
      const more = rows.length > limit && last !== undefined;
      return {
        rows: shown.map((row) => spareToWire(row, today)),
        total: rows[0]?.total ?? 0,
        next: more
          ? Buffer.from(JSON.stringify([last.key, last.serialNumber, last.id])).toString('base64url')
          : null,
      };
    });
  }
}

function readCursor(text: string): { readonly key: number; readonly serial: string; readonly id: string } {
  try {
    const [key, serial, id] = JSON.parse(Buffer.from(text, 'base64url').toString()) as unknown[];
    if (
      typeof key === 'number' &&
      typeof serial === 'string' &&
      typeof id === 'string' &&
      /^[0-9a-f-]{36}$/.test(id)
    )
      return { key, serial, id };
  } catch {
    // not one of ours: refused below
  }
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
