import { Injectable } from '@nestjs/common';
import { countsOf, openItems } from '@strutbook/domain/work/accounts.js';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { toWire } from '../../platform/http/instants.js';
import { stepFacts } from '../../records/work/kept-step.js';
import { ordersOf } from '../../records/work/orders.js';
import { type PackageHead, packageHead } from '../../records/work/package-head.js';
import { loadProcedure, type ProcedureOfPackage, partsOf } from '../../records/work/package-parts.js';
import { loadKeptSteps } from '../../records/work/step-records.js';
import { ordersToWire } from '../../records/work/wire/order.mapper.js';
import { stepsToWire } from '../../records/work/wire/step.mapper.js';
import type { WorkDto, WorkPackageDto } from './work.dto.js';

/** Packages with their steps as they stand. */
@Injectable()
export class WorkService {
  constructor(private readonly database: Database) {}

  /** A package with its steps. Refuses: NOT_FOUND. */
  get(actor: Actor, packageId: string): Promise<WorkDto> {
    return this.database.inOperator(actor, (tx) => readWork(tx, actor.operatorId, packageId));
  }
}

async function readWork(tx: Tx, operatorId: number, packageId: string): Promise<WorkDto> {
  const head = await packageHead(tx, operatorId, packageId);
  const procedure = head.procedureId === null ? null : await loadProcedure(tx, operatorId, head.procedureId);
  const kept = await loadKeptSteps(tx, operatorId, packageId);
  const [order] = await ordersToWire(tx, operatorId, await ordersOf(tx, operatorId, packageId));
  const { groups, items } = partsOf(procedure, kept);
  const facts = kept.map(stepFacts);
  return {
    package: headToWire(head, procedure),
    order: order ?? null,
    groups: groups.map((group) => ({ ...group })),
    items: items.map((item) => ({ ...item })),
    counts: countsOf(facts),
    openItems: openItems(items, facts).map(({ item, openedBy: { id, definition } }) => ({
      item: { ...item },
      openedBy: { stepId: id, number: definition.number, title: definition.title },
    })),
    steps: stepsToWire(kept),
  };
}

function headToWire(head: PackageHead, procedure: ProcedureOfPackage | null): WorkPackageDto {
  const { airframe } = head;
  return {
    id: head.id,
    number: head.number,
    kind: head.kind,
    title: head.title,
    status: head.status,
    reference: head.reference,
    ruleSet: head.ruleSet,
    openedAt: toWire(head.openedAt),
    version: head.version,
    airframe: airframe === null ? null : { id: airframe.id, registration: airframe.registration },
    component: head.component,
    procedure:
      procedure === null
        ? null
        : {
            id: procedure.id,
            code: procedure.code,
            revision: procedure.revision,
            title: procedure.title,
            document: procedure.document,
            documentRevision: procedure.documentRevision,
          },
  };
}
