import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { dayToWire } from '../../platform/http/instants.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { Structure } from '../../records/stays/structure.js';
import { basisOfPage } from './due-basis.js';
import {
  type DueCursor,
  type ListCursor,
  readCursor,
  readListCursor,
  writeCursor,
  writeListCursor,
} from './due-cursor.js';
import { type DueConditions, dueConditions, isWholeList, refuseTwoScopes } from './due-filter.js';
import type { DueCountsDto, DuePageDto, DueTotalsDto } from './due-list.dto.js';
import {
  type DueListRow,
  type DueTotalsRow,
  dueListSql,
  dueTotalsSql,
  LIST_FIRST,
  WHOLE_FIRST,
  wholeDueListSql,
} from './due-list.sql.js';
import { DUE_PAGE_SQL } from './due-page.sql.js';
import type { DueExportQueryDto, DueFilterDto, DueQueryDto } from './due-query.dto.js';
import { dueRow, type Projecting } from './due-row.js';
import type { DuePageRow } from './sql/due-columns.sql.js';

const ROWS = 50;
const DAYS = 90;

/** What falls due, the most urgent first unless asked otherwise, with what is over or not verified on top. */
@Injectable()
export class DueListService {
  constructor(
    private readonly database: Database,
    private readonly structure: Structure,
    private readonly clock: Clock,
  ) {}

  /** One page. Refuses: INVALID_FIELDS (after, two scopes), NOT_FOUND (what it is of). */
  page(actor: Actor, ask: DueQueryDto): Promise<DuePageDto> {
    refuseTwoScopes(ask);
    const { operatorId } = actor;
    const { limit = ROWS, sort = 'urgency', direction = 'asc', after, ...filter } = ask;
    // Without filters the most urgent are found without looking at all.
    const whole = sort === 'urgency' && direction === 'asc' && isWholeList(filter);
    const order = { sort, descending: direction === 'desc' };
    const first = after === undefined || !whole ? null : readCursor(after);
    const listed = after === undefined || whole ? null : readListCursor(after, order);
    const now = first?.now ?? listed?.now ?? this.clock.now();
    const projecting = this.projecting(filter);
    return this.database.inOperator(actor, async (tx) => {
      const componentIds = await this.componentsOf(tx, operatorId, filter);
      if (whole) {
        const values = duePageValues({ operatorId, now, limit: limit + 1, ...filter, cursor: first });
        const rows = await tx.$queryRawUnsafe<DuePageRow[]>(DUE_PAGE_SQL, ...values);
        return pageOf(rows, { limit, projecting }, (last) => writeCursor({ now, ...last }));
      }
      const conditions = dueConditions(filter, { componentIds, first: LIST_FIRST });
      const values = listValues({ operatorId, now, limit: limit + 1, filter, conditions, cursor: listed });
      const rows = await tx.$queryRawUnsafe<DueListRow[]>(dueListSql(conditions, order), ...values);
      return pageOf(rows, { limit, projecting }, ({ n1, n2, n3, text, id }) =>
        writeListCursor({ now, ...order, numbers: [n1, n2, n3], text, id }),
      );
    });
  }

  /** How many there are of each status, and how many the filters leave out. Refuses: as the page. */
  totals(actor: Actor, filter: DueFilterDto): Promise<DueTotalsDto> {
    refuseTwoScopes(filter);
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const componentIds = await this.componentsOf(tx, operatorId, filter);
      const conditions = dueConditions(filter, { componentIds, first: WHOLE_FIRST });
      const rows = await tx.$queryRawUnsafe<DueTotalsRow[]>(
        dueTotalsSql(conditions),
        ...listBase({ operatorId, now: this.clock.now(), filter, airframeId: null }),
        ...conditions.values,
      );
      return {
        whole: countsOf(rows, 'whole'),
        scope: countsOf(rows, 'scope'),
        shown: countsOf(rows, 'shown'),
      };
    });
  }

  /** The statement of the whole list and its parameters, for what is written row by row. Refuses: as the page. */
  async whole(tx: Tx, operatorId: number, ask: DueExportQueryDto) {
    refuseTwoScopes(ask);
    const { sort = 'urgency', direction = 'asc', ...filter } = ask;
    const componentIds = await this.componentsOf(tx, operatorId, filter);
    const conditions = dueConditions(filter, { componentIds, first: WHOLE_FIRST });
    const airframeId = filter.airframeId ?? null;
    return {
      sql: wholeDueListSql(conditions, { sort, descending: direction === 'desc' }),
      values: [...listBase({ operatorId, now: this.clock.now(), filter, airframeId }), ...conditions.values],
      projecting: this.projecting(filter),
    };
  }

  private projecting({ basis = 'average', days = DAYS }: DueFilterDto): Projecting {
    return { today: dayToWire(this.clock.now()), basis, days };
  }

  /** The component asked for and all beneath it; null where none is. Refuses: NOT_FOUND (what the list is of). */
  private async componentsOf(
    tx: Tx,
    operatorId: number,
    { airframeId, positionId, componentId }: DueFilterDto,
  ): Promise<string[] | null> {
    const where = (id: string) => ({ where: { operatorId_id: { operatorId, id } }, select: { id: true } });
    if (airframeId !== undefined) orNotFound(await tx.airframe.findUnique(where(airframeId)), 'airframe');
    if (positionId !== undefined) orNotFound(await tx.position.findUnique(where(positionId)), 'position');
    if (componentId === undefined) return null;
    orNotFound(await tx.component.findUnique(where(componentId)), 'component');
    const beneath = await this.structure.beneath(tx, operatorId, [componentId], null);
    return [componentId, ...beneath.flatMap((slot) => slot.componentId ?? [])];
  }
}

function pageOf<Row extends DuePageRow>(
  rows: readonly Row[],
  { limit, projecting }: { readonly limit: number; readonly projecting: Projecting },
  cursorAfter: (last: Row) => string,
): DuePageDto {
  const shown = rows.slice(0, limit);
  const last = shown.at(-1);
  return {
    rows: shown.map((row) => dueRow(row, projecting)),
    next: rows.length > limit && last !== undefined ? cursorAfter(last) : null,
    basis: basisOfPage(shown, projecting),
  };
}

/** The page statement's parameters, in order. */
export function duePageValues(ask: {
  readonly operatorId: number;
  readonly now: Date;
  readonly limit: number;
  readonly airframeId?: string | undefined;
  readonly basis?: string | undefined;
  readonly days?: number | undefined;
  readonly cursor: DueCursor | null;
}): unknown[] {
  const { operatorId, now, limit, airframeId, basis = 'average', days = DAYS, cursor } = ask;
  return [
    ...[operatorId, now, limit, airframeId ?? null],
    ...[cursor?.rank ?? null, cursor?.urgency ?? null, cursor?.dueAt ?? null, cursor?.id ?? null],
    ...[basis, days],
  ];
}

function listBase({
  operatorId,
  now,
  filter: { basis = 'average', days = DAYS },
  airframeId,
}: {
  readonly operatorId: number;
  readonly now: Date;
  readonly filter: DueFilterDto;
  readonly airframeId: string | null;
}): unknown[] {
  return [operatorId, now, basis, days, airframeId];
}

function listValues(ask: {
  readonly operatorId: number;
  readonly now: Date;
  readonly limit: number;
  readonly filter: DueFilterDto;
  readonly conditions: DueConditions;
  readonly cursor: ListCursor | null;
}): unknown[] {
  const { limit, filter, conditions, cursor } = ask;
  return [
    ...listBase({ ...ask, airframeId: filter.airframeId ?? null }),
    ...[limit, ...(cursor?.numbers ?? [null, null, null]), cursor?.text ?? null, cursor?.id ?? null],
    ...conditions.values,
  ];
}

function countsOf(rows: readonly DueTotalsRow[], of: 'whole' | 'scope' | 'shown'): DueCountsDto {
  const count = (status: string) => rows.find((row) => row.status === status)?.[of] ?? 0;
  return {
    ...{ over: count('over'), inTolerance: count('in-tolerance'), soon: count('soon') },
    ...{ planned: count('planned'), later: count('later'), notVerified: count('not-verified') },
    total: rows.reduce((sum, row) => sum + row[of], 0),
  };
}
