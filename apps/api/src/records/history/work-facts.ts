import type { Tx } from '../../platform/database/database.js';
import { packagesOf, type Subject } from './package-facts.js';
import { type PackageName, stepLines } from './step-lines.js';
import type { RecordedRow } from './tellable.js';

/** A line whose instant is that of its entry in the journal. */
export type UndatedRow = Omit<RecordedRow, 'at'>;

/**
 * What was done in packages worked by steps, on an airframe or with a component: opened, each step signed and inspected,
 * undone signatures, and what was captured without being accepted. A change logged as one act has no such lines.
 */
export async function workFacts(tx: Tx, operatorId: number, subject: Subject): Promise<RecordedRow[]> {
  const packages = await tx.workPackage.findMany({
    where: { operatorId, ...packagesOf(subject) },
    include: {
      packageChangeByPackage: { select: { recordedSeq: true } },
      procedure: { select: { code: true, revision: true } },
    },
  });
  const worked = packages.filter(
    ({ recordedSeq, packageChangeByPackage }) =>
      !packageChangeByPackage.some((change) => change.recordedSeq === recordedSeq),
  );
  const opened = worked.map(
    ({ id, number, title, reference, openedAt, recordedSeq, procedure }): RecordedRow => ({
      id,
      at: openedAt,
      recordedSeq,
      title: 'Package opened',
      detail: [
        `Package ${number}: ${title}`,
        ...(reference === null ? [] : [`order ${reference}`]),
        ...(procedure === null ? [] : [`procedure ${procedure.code}, revision ${procedure.revision}`]),
      ].join('; '),
      event: { kind: 'work', what: 'opened', package: number },
      work: { packageId: id, number, stepId: null },
    }),
  );
  const names: PackageName[] = worked.map(({ id, number }) => ({ id, number }));
  return [...opened, ...(await stepLines(tx, operatorId, names))];
}

/** Orders, those amended struck with the reason, and packages withdrawn: told when they were recorded. */
export async function orderFacts(tx: Tx, operatorId: number, subject: Subject): Promise<UndatedRow[]> {
  const orders = await tx.orderedChange.findMany({
    where: { operatorId, package: packagesOf(subject) },
    include: {
      package: true,
      slot: { include: { position: true, component: true } },
      outgoing: true,
      incoming: true,
      confirmedBy: { select: { fullName: true } },
    },
  });
  const told = orders.map((order): UndatedRow => {
    const { slot, outgoing, incoming } = order;
    const place =
      slot.position === null
        ? `${slot.name} of ${slot.component?.serialNumber ?? 'a component'}`
        : `${slot.kind} at position ${slot.position.number}`;
    return {
      id: order.id,
      recordedSeq: order.recordedSeq,
      voidedSeq: order.voidedSeq,
      voidReason: order.voidReason,
      title: order.confirmedBy === null ? 'Change ordered' : 'Order amended',
      detail: [
        `Package ${order.package.number}, ${place}: ${[
          ...(outgoing === null ? [] : [`${outgoing.serialNumber} off`]),
          ...(incoming === null ? [] : [`${incoming.serialNumber} on`]),
        ].join(', ')}`,
        order.reason,
        ...(order.confirmedBy === null ? [] : [`confirmed by ${order.confirmedBy.fullName}`]),
      ].join('; '),
      event: { kind: 'work', what: 'ordered', package: order.package.number },
      work: { packageId: order.packageId, number: order.package.number, stepId: null },
    };
  });
  return [...told, ...(await withdrawals(tx, operatorId, subject))];
}

async function withdrawals(tx: Tx, operatorId: number, subject: Subject): Promise<UndatedRow[]> {
  const packages = await tx.workPackage.findMany({
    where: { operatorId, status: 'withdrawn', ...packagesOf(subject) },
    select: { id: true, number: true, title: true },
  });
  if (packages.length === 0) return [];
  const entries = await tx.journalEntry.findMany({
    where: { operatorId, stream: { in: packages.map(({ id }) => id) }, kind: 'package-withdrawn' },
    select: { number: true, stream: true, body: true },
  });
  return entries.map((entry): UndatedRow => {
    const work = packages.find(({ id }) => id === entry.stream);
    const { done } = JSON.parse(entry.body) as { readonly done?: { readonly reason?: string } };
    return {
      id: `${entry.stream} withdrawn`,
      recordedSeq: entry.number,
      title: 'Package withdrawn',
      detail: `Package ${work?.number}: ${work?.title}; ${done?.reason ?? 'no reason recorded'}`,
      event: { kind: 'work', what: 'withdrawn', package: work?.number ?? '' },
      work: { packageId: entry.stream, number: work?.number ?? '', stepId: null },
    };
  });
}

/** Requirements that were met, of the airframe, its positions or the component itself. */
export async function requirementFacts(
  tx: Tx,
  operatorId: number,
  { kind, id }: Subject,
): Promise<RecordedRow[]> {
  const rows = await tx.accomplishment.findMany({
    where: {
      operatorId,
      ...(kind === 'airframe'
        ? { OR: [{ airframeId: id }, { position: { airframeId: id } }] }
        : { componentId: id }),
    },
    include: { requirement: true, position: true, package: { select: { id: true, number: true } } },
  });
  return rows.map((row) => ({
    id: row.id,
    at: row.at,
    recordedSeq: row.recordedSeq,
    voidedSeq: row.voidedSeq,
    voidReason: row.voidReason,
    title: 'Requirement met',
    detail: [
      `${row.requirement.code}, ${row.requirement.title}${row.position === null ? '' : `, position ${row.position.number}`}`,
      row.evidence,
    ].join('; '),
    event: { kind: 'work', what: 'requirement-met', package: row.package?.number ?? '' },
    ...(row.package === null
      ? {}
      : { work: { packageId: row.package.id, number: row.package.number, stepId: null } }),
  }));
}
