import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import { FOR_ROW, packageRow, packageToWire, WITH_CHANGES } from './package.mapper.js';
import type { PackageDto, PackagesPageDto, PackagesQueryDto } from './packages.dto.js';

const ROWS = 50;

/** Work packages as they stand. Changes make them, releases close them. */
@Injectable()
export class PackagesService {
  constructor(private readonly database: Database) {}

  /** A page of packages, the newest first: their ids rise with time. */
  page(
    actor: Actor,
    { airframeId, status, after, limit = ROWS }: PackagesQueryDto,
  ): Promise<PackagesPageDto> {
    return this.database.inOperator(actor, async (tx) => {
      const rows = await tx.workPackage.findMany({
        where: {
          operatorId: actor.operatorId,
          ...(airframeId === undefined ? {} : { airframeId }),
          ...(status === undefined ? {} : { status }),
          ...(after === undefined ? {} : { id: { lt: after } }),
        },
        include: FOR_ROW,
        orderBy: { id: 'desc' },
        take: limit + 1,
      });
      return {
        rows: rows.slice(0, limit).map(packageRow),
        next: rows.length > limit ? (rows[limit - 1]?.id ?? null) : null,
      };
    });
  }

  /** One package. Refuses: NOT_FOUND. */
  get(actor: Actor, id: string): Promise<PackageDto> {
    return this.database.inOperator(actor, async (tx) => {
      const where = { operatorId_id: { operatorId: actor.operatorId, id } };
      return packageToWire(
        orNotFound(await tx.workPackage.findUnique({ where, include: WITH_CHANGES }), 'package'),
      );
    });
  }
}
