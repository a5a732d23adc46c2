import { Injectable } from '@nestjs/common';
import { openItems } from '@strutbook/domain/work/accounts.js';
import type { Actor } from '../../platform/access/actor.js';
import type { Tx } from '../../platform/database/database.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { Journal } from '../../records/journal/journal.js';
import { lockPackageAlone, type PackageHead, packageHead } from '../../records/work/package-head.js';
import { loadProcedure } from '../../records/work/package-parts.js';
import { loadSteps } from '../../records/work/step-records.js';
import type { PackageDto } from './packages.dto.js';
import { PackagesService } from './packages.service.js';

/** Gives up packages in which nothing was moved. */
@Injectable()
export class WithdrawPackageService {
  constructor(
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly packages: PackagesService,
  ) {}

  /** Refuses: NOT_FOUND, WRONG_STATE, REFUSED_BY_FACTS once something was moved in it or is open in it. */
  withdraw(
    actor: Actor,
    act: ActRequest,
    { id, reason }: { readonly id: string; readonly reason: string },
  ): Promise<PackageDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      await lockPackageAlone(tx, operatorId, id);
      const head = await packageHead(tx, operatorId, id);
      await refuseMoved(tx, operatorId, id);
      await refuseOpen(tx, operatorId, head);
      const number = await this.journal.number(tx);
      await tx.workPackage.update({
        where: { operatorId_id: { operatorId, id } },
        data: { status: 'withdrawn', version: { increment: 1 } },
        select: { id: true },
      });
      await this.journal.append(tx, actor, {
        number,
        stream: id,
        kind: 'package-withdrawn',
        body: { packageId: id, packageNumber: head.number, reason },
        about: [id, head.airframe?.id, head.component?.id].filter((each) => each !== undefined),
        key: act.key,
      });
      const body = await this.packages.read(tx, operatorId, id);
      return { status: 200, body, version: body.version, resource: `/api/packages/${id}`, number };
    });
  }
}

async function refuseMoved(tx: Tx, operatorId: number, packageId: string): Promise<void> {
  const moved =
    (await tx.packageChange.count({ where: { operatorId, packageId } })) +
    (await tx.stay.count({
      where: { operatorId, voidedSeq: null, OR: [{ packageId }, { endPackageId: packageId }] },
    }));
  if (moved > 0)
    refuse({
      code: 'REFUSED_BY_FACTS',
      reason: 'Something was moved in this package.',
      fix: 'Finish the work and release it; what was done is not withdrawn.',
    });
}

/** A cowl that stands open is not forgotten with its package. */
async function refuseOpen(tx: Tx, operatorId: number, { id, procedureId }: PackageHead): Promise<void> {
  if (procedureId === null) return;
  const { content } = await loadProcedure(tx, operatorId, procedureId);
  const open = openItems(content.items, await loadSteps(tx, operatorId, id));
  if (open.length === 0) return;
  const names = open.map(({ item }) => (item.side === null ? item.name : `${item.name}, ${item.side}`));
  refuse({
    code: 'REFUSED_BY_FACTS',
    reason: `Opened in this package and not closed: ${names.join('; ')}.`,
    fix: 'Sign the steps that close them, or undo the signatures of the steps that opened them.',
  });
}
