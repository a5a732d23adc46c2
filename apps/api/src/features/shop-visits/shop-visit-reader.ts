import { Injectable } from '@nestjs/common';
import type { Objection } from '@strutbook/domain/release/objection.js';
import { buildDifference } from '@strutbook/domain/shop/build-difference.js';
import type { BuildStandard } from '@strutbook/domain/shop/build-standard.js';
import type { Tx } from '../../platform/database/database.js';
import { toWire, toWirePrecise } from '../../platform/http/instants.js';
import { toObjection } from '../../platform/http/objection.dto.js';
import { type Entries, loadEntries } from '../../records/history/entries.js';
import type {
  BuildStandardDto,
  ShopReturnDto,
  ShopVisitDto,
  ShopVisitRowDto,
  VisitingComponentDto,
} from './shop-visit-view.dto.js';
import { findVisit, type ListedVisit, type VisitRow } from './visit-rows.js';

type ReturnRow = VisitRow['shopReturnByVisit'][number];

/** Puts one visit together: what went, what came back, and what changed between the two builds that were kept. */
@Injectable()
export class ShopVisitReader {
  /** The visit in full, in a constant number of statements. Refuses: NOT_FOUND. */
  async read(tx: Tx, operatorId: number, id: string): Promise<ShopVisitDto> {
    const row = await findVisit(tx, operatorId, id);
    const returned = row.shopReturnByVisit[0] ?? null;
    const entries = await loadEntries(tx, operatorId, [
      row.recordedSeq,
      ...(returned === null ? [] : [returned.recordedSeq]),
    ]);
    const before = keptBuild(row.build);
    const recorded = entries(row.recordedSeq);
    return {
      id,
      component: componentToWire(row.component),
      shop: row.location.name,
      orderReference: row.orderReference,
      workscope: row.workscope,
      sentAt: toWire(row.sentAt),
      status: statusOf(row),
      voidReason: row.voidReason,
      build: before,
      returned: returned === null ? null : returnToWire(row, returned, entries),
      difference: returned === null ? null : plain(buildDifference(before, keptBuild(returned.build))),
      recordedBy: recorded.by,
      recordedAt: toWirePrecise(recorded.recordedAt),
    };
  }
}

/** A visit in a list. Total. */
export function visitRowToWire(row: ListedVisit): ShopVisitRowDto {
  const returned = row.shopReturnByVisit[0] ?? null;
  return {
    id: row.id,
    component: componentToWire(row.component),
    shop: row.location.name,
    orderReference: row.orderReference,
    workscope: row.workscope,
    sentAt: toWire(row.sentAt),
    returnedAt: returned === null ? null : toWire(returned.returnedAt),
    report: returned?.report ?? null,
    certificate: returned?.certificate ?? null,
    status: statusOf(row),
  };
}

function statusOf({
  voidedSeq,
  shopReturnByVisit,
}: Pick<ListedVisit, 'voidedSeq' | 'shopReturnByVisit'>): ShopVisitRowDto['status'] {
  if (voidedSeq !== null) return 'voided';
  return shopReturnByVisit.length === 0 ? 'in-shop' : 'returned';
}

function returnToWire({ resetByShopVisit }: VisitRow, row: ReturnRow, entries: Entries): ShopReturnDto {
  const recorded = entries(row.recordedSeq);
  return {
    id: row.id,
    returnedAt: toWire(row.returnedAt),
    location: row.location.name,
    report: row.report,
    certificate: row.certificate,
    workDone: row.workDone,
    changes: row.shopChangeByReturn.map((change) => ({
      id: change.id,
      slotId: change.slotId,
      slotName: change.slot.name,
      parentSerial: change.slot.component?.serialNumber ?? '',
      outgoing: change.outgoing === null ? null : componentToWire(change.outgoing),
      incoming: change.incoming === null ? null : componentToWire(change.incoming),
      removedTo: change.removedTo?.name ?? null,
      at: toWire(change.at),
      reason: change.reason,
      certificate: change.certificate,
      disposition: change.disposition,
      dispositionText: change.dispositionText,
    })),
    resets: resetByShopVisit.map(({ id, componentId, kind, evidence, component }) => ({
      ...{ id, componentId, evidence, serialNumber: component.serialNumber },
      kind: kind as ShopReturnDto['resets'][number]['kind'],
    })),
    objections: (row.objections as unknown as readonly Objection[]).map(toObjection),
    build: keptBuild(row.build),
    recordedBy: recorded.by,
    recordedAt: toWirePrecise(recorded.recordedAt),
  };
}

function componentToWire(row: VisitRow['component']): VisitingComponentDto {
  const { id, kind, partNumber, serialNumber, description, engineModelId } = row;
  return {
    id,
    kind: kind as VisitingComponentDto['kind'],
    partNumber,
    serialNumber,
    description,
    engineModelId,
  };
}

/** A build as it was kept: written by this server alone, in this shape. */
function keptBuild(kept: unknown): BuildStandard & BuildStandardDto {
  return kept as BuildStandard & BuildStandardDto;
}

/** The same as plain JSON, whose members may be written to. */
function plain(difference: ReturnType<typeof buildDifference>): NonNullable<ShopVisitDto['difference']> {
  return JSON.parse(JSON.stringify(difference)) as NonNullable<ShopVisitDto['difference']>;
}
