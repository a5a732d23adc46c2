import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import { Requirements } from '../../records/requirements/requirements.js';
import { ordersOf } from '../../records/work/orders.js';
import { stepCounts } from '../../records/work/step-counts.js';
import { ordersToWire } from '../../records/work/wire/order.mapper.js';
import { changeToWire, FOR_ROW, packageRow, releaseToWire, WITH_CHANGES } from './package.mapper.js';
import type { PackageDto, PackagesPageDto, PackagesQueryDto } from './packages.dto.js';
import { withdrawalOf } from './withdrawal.js';

const ROWS = 50;

/** Work packages as they stand. */
@Injectable()
export class PackagesService {
  constructor(
    private readonly database: Database,
    private readonly requirements: Requirements,
  ) {}

  /** A page of packages, the newest first: their ids rise with time. */
  page(actor: Actor, { after, limit = ROWS, ...filters }: PackagesQueryDto): Promise<PackagesPageDto> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const found = await tx.workPackage.findMany({
        where: { operatorId, ...given(filters), ...(after === undefined ? {} : { id: { lt: after } }) },
        include: FOR_ROW,
        orderBy: { id: 'desc' },
        take: limit + 1,
      });
      const rows = found.slice(0, limit);
      const counts = await stepCounts(
        tx,
        operatorId,
        rows.map((row) => row.id),
      );
      return {
        rows: rows.map((row) => packageRow(row, counts, row.orderedChangeByPackage[0]?.slot)),
        next: found.length > limit ? (rows[limit - 1]?.id ?? null) : null,
      };
    });
  }

  /** One package. Refuses: NOT_FOUND. */
  get(actor: Actor, id: string): Promise<PackageDto> {
    return this.database.inOperator(actor, (tx) => this.read(tx, actor.operatorId, id));
  }

  /** One package, as an act that changed it answers it. Refuses: NOT_FOUND. */
  async read(tx: Tx, operatorId: number, id: string): Promise<PackageDto> {
    const where = { operatorId_id: { operatorId, id } };
    const row = orNotFound(await tx.workPackage.findUnique({ where, include: WITH_CHANGES }), 'package');
    const orders = await ordersOf(tx, operatorId, id);
    const [ordered] = orders.map(({ position, slot: { name } }) => ({ position, name }));
    const [order] = await ordersToWire(tx, operatorId, orders);
    return {
      ...packageRow(row, await stepCounts(tx, operatorId, [id]), ordered),
      ruleSet: row.airframe?.ruleSet ?? row.ruleSet ?? '',
      procedure: row.procedure,
      order: order ?? null,
      requirements: await this.requirements.ofPackage(tx, operatorId, id),
      changes: row.packageChangeByPackage.map(changeToWire),
      release: releaseToWire(row),
      withdrawal: row.status === 'withdrawn' ? await withdrawalOf(tx, operatorId, id) : null,
    };
  }
}

function given({
  airframeId,
  componentId,
  kind,
  status,
}: Omit<PackagesQueryDto, 'after' | 'limit'>): Readonly<Record<string, string>> {
  return {
    ...(airframeId === undefined ? {} : { airframeId }),
    ...(componentId === undefined ? {} : { componentId }),
    ...(kind === undefined ? {} : { kind }),
    ...(status === undefined ? {} : { status }),
  };
}
