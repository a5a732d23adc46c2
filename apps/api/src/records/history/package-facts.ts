import type { Tx } from '../../platform/database/database.js';
import { placedInWords, precisionOf, type RecordedRow } from './tellable.js';

/** What a history is of. */
export interface Subject {
  readonly kind: 'airframe' | 'component';
  readonly id: string;
}

/** The changes recorded in packages on an airframe, or that moved a component. */
export async function changeFacts(tx: Tx, operatorId: number, subject: Subject): Promise<RecordedRow[]> {
  const rows = await tx.packageChange.findMany({
    where: { operatorId, ...touching(subject) },
    include: {
      package: true,
      position: { include: { airframe: true } },
      slot: { include: { component: true } },
      outgoing: true,
      incoming: true,
    },
  });
  return rows.map((row) => {
    const moved = [
      row.outgoing === null ? null : `${row.outgoing.serialNumber} off`,
      row.incoming === null ? null : `${row.incoming.serialNumber} on`,
    ].filter((part) => part !== null);
    const where =
      row.position === null
        ? `${row.slot.name} of ${row.slot.component?.serialNumber ?? 'a component'}`
        : `position ${row.position.number} of ${row.position.airframe.registration}`;
    return {
      id: row.id,
      at: row.at,
      precision: precisionOf(row.boundaryKind),
      placed: placedInWords(row.boundaryKind, row.boundaryText),
      recordedSeq: row.recordedSeq,
      title: CHANGE_TITLES[row.package.kind] ?? 'Change',
      detail: `Package ${row.package.number}, ${where}: ${moved.join(', ')}; ${row.reason}`,
      event: {
        kind: 'engine-change',
        position: where,
        offSerial: row.outgoing?.serialNumber ?? null,
        onSerial: row.incoming?.serialNumber ?? null,
      },
      work: { packageId: row.packageId, number: row.package.number, stepId: null },
    };
  });
}

/** The releases of those packages. */
export async function releaseFacts(tx: Tx, operatorId: number, subject: Subject): Promise<RecordedRow[]> {
  const rows = await tx.release.findMany({
    where: { operatorId, package: packagesOf(subject) },
    include: { package: true, signature: true },
  });
  return rows.map(({ id, number, recordedSeq, package: work, signature }) => ({
    id,
    at: signature.signedAt,
    recordedSeq,
    title: 'Released to service',
    detail:
      `Release ${number} of package ${work.number}, signed by ${signature.personName}, certificate ${signature.licence ?? 'not told'}; ` +
      `content ${Buffer.from(signature.contentHash).toString('hex').slice(0, 16)}`,
    event: { kind: 'release', statement: signature.statement, signer: signature.personName },
    work: { packageId: work.id, number: work.number, stepId: null },
  }));
}

const CHANGE_TITLES: Readonly<Record<string, string>> = {
  'engine-change': 'Engine change',
  'pod-swap': 'Pod swap',
  'component-change': 'Component change',
};

/** The packages on an airframe; or those on a component, ordered for it, or that moved it. Total. */
export function packagesOf({ kind, id }: Subject) {
  const own = kind === 'airframe' ? { airframeId: id } : { componentId: id };
  const moving = kind === 'airframe' ? [] : [{ OR: [{ outgoingId: id }, { incomingId: id }] }];
  return {
    OR: [
      own,
      { packageChangeByPackage: { some: touching({ kind, id }) } },
      ...moving.map((some) => ({ orderedChangeByPackage: { some } })),
    ],
  };
}

function touching({ kind, id }: Subject) {
  return kind === 'airframe'
    ? { position: { airframeId: id } }
    : { OR: [{ outgoingId: id }, { incomingId: id }] };
}
