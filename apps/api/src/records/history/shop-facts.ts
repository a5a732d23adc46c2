import type { Tx } from '../../platform/database/database.js';
import { dayToWire } from '../../platform/http/instants.js';
import type { HistoryAsk } from './history.js';
import type { RecordedRow } from './tellable.js';

const DISPOSITIONS: Readonly<Record<string, string>> = {
  record: 'by record',
  tag: 'by tag',
  'temporary-mark': 'by a temporary mark',
  'permanent-mark': 'by a permanent mark',
  segregated: 'segregated',
  mutilated: 'mutilated',
  other: 'in another accepted way',
};

/** Shop visits and returns of a component, what shops did to it, its tags and preservations, voided ones included. */
export async function shopFacts(
  tx: Tx,
  operatorId: number,
  { kind, id }: HistoryAsk,
): Promise<RecordedRow[]> {
  if (kind !== 'component') return [];
  return [
    ...(await visits(tx, operatorId, id)),
    ...(await shopChanges(tx, operatorId, id)),
    ...(await keeping(tx, operatorId, id)),
  ];
}

async function visits(tx: Tx, operatorId: number, componentId: string): Promise<RecordedRow[]> {
  const name = { select: { name: true } };
  const serial = { select: { serialNumber: true } };
  const sent = await tx.shopVisit.findMany({
    where: { operatorId, componentId },
    omit: { build: true },
    include: { location: name },
  });
  const back = await tx.shopReturn.findMany({
    where: { operatorId, componentId },
    omit: { build: true, objections: true },
    include: {
      location: name,
      shopChangeByReturn: {
        include: { slot: name, outgoing: serial, incoming: serial },
        orderBy: { at: 'asc' },
      },
    },
  });
  return [
    ...sent.map(
      (row): RecordedRow => ({
        ...recorded(row),
        at: row.sentAt,
        title: 'Sent to shop',
        detail: `To ${row.location.name}, order ${row.orderReference}; workscope: ${row.workscope}`,
        event: { kind: 'shop', what: 'sent' },
      }),
    ),
    ...back.map((row): RecordedRow => {
      const changes = row.shopChangeByReturn.map(
        ({ slot, outgoing, incoming }) =>
          `${slot.name}: ${outgoing === null ? 'empty' : `${outgoing.serialNumber} off`}, ${incoming === null ? 'nothing on' : `${incoming.serialNumber} on`}`,
      );
      const papers = `report ${row.report}, ${row.certificate === null ? 'no certificate' : `certificate ${row.certificate}`}`;
      return {
        ...recorded(row),
        at: row.returnedAt,
        title: 'Returned from shop',
        detail: [`To ${row.location.name}`, papers, row.workDone, ...changes].join('; '),
        event: { kind: 'shop', what: 'returned' },
      };
    }),
  ];
}

/** What is told of a part alone: its stays tell already that it came off and went on. */
async function shopChanges(tx: Tx, operatorId: number, componentId: string): Promise<RecordedRow[]> {
  const rows = await tx.shopChange.findMany({
    where: { operatorId, OR: [{ outgoingId: componentId }, { incomingId: componentId }] },
    include: { slot: { select: { name: true } } },
  });
  return rows.flatMap((row): RecordedRow[] => {
    const { at, disposition, dispositionText, certificate, outgoingId, slot } = row;
    const base = { ...recorded(row), at, event: { kind: 'shop', what: 'changed' } as const };
    if (outgoingId === componentId)
      return disposition === null
        ? []
        : [
            {
              ...base,
              title: 'Controlled after removal',
              detail: `${DISPOSITIONS[disposition] ?? disposition}: ${dispositionText ?? ''}`,
            },
          ];
    return certificate === null
      ? []
      : [{ ...base, title: 'Fitted with its certificate', detail: `${certificate}, at ${slot.name}` }];
  });
}

async function keeping(tx: Tx, operatorId: number, componentId: string): Promise<RecordedRow[]> {
  const where = { operatorId, componentId };
  const tags = await tx.serviceabilityTag.findMany({ where });
  const preservations = await tx.preservation.findMany({ where });
  return [
    ...tags.map(
      (row): RecordedRow => ({
        ...recorded(row),
        at: row.at,
        title: row.status === 'quarantine' ? 'Tagged for quarantine' : `Tagged ${row.status}`,
        detail: `Tag ${row.tagNumber} by ${row.issuedBy}: ${row.reason}${row.certificate === null ? '' : `; certificate ${row.certificate}`}`,
        event: { kind: 'shop', what: 'tagged' },
      }),
    ),
    ...preservations.map(
      (row): RecordedRow => ({
        ...recorded(row),
        at: row.at,
        title: 'Preserved',
        detail: `${row.method}, good until ${dayToWire(row.goodUntil)}; ${row.document}`,
        event: { kind: 'shop', what: 'preserved' },
      }),
    ),
  ];
}

function recorded(row: {
  id: string;
  recordedSeq: bigint;
  voidedSeq: bigint | null;
  voidReason: string | null;
}) {
  const { id, recordedSeq, voidedSeq, voidReason } = row;
  return { id, recordedSeq, voidedSeq, voidReason };
}
