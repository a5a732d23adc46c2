import type { Tx } from '../../platform/database/database.js';
import { dayToWire } from '../../platform/http/instants.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import type { ToldSubject } from './told-line.js';

/** The kinds of component in words. */
export const KIND_WORDS: Readonly<Record<string, string>> = {
  engine: 'Engine',
  apu: 'Auxiliary power unit',
  module: 'Module',
  part: 'Part',
  pod: 'Pod',
};

/** The subject of a history. Refuses: NOT_FOUND. */
export async function loadSubject(
  tx: Tx,
  operatorId: number,
  { kind, id }: { readonly kind: 'airframe' | 'component'; readonly id: string },
): Promise<ToldSubject> {
  return kind === 'airframe' ? airframe(tx, operatorId, id) : component(tx, operatorId, id);
}

async function airframe(tx: Tx, operatorId: number, id: string): Promise<ToldSubject> {
  const row = await tx.airframe.findUnique({
    where: { operatorId_id: { operatorId, id } },
    include: { airframeType: true },
  });
  if (row === null) return refuse({ code: 'NOT_FOUND', what: 'airframe' });
  return {
    kind: 'airframe',
    id,
    label: `Airframe ${row.registration}`,
    identity: [
      { name: 'Registration', value: row.registration },
      { name: 'Serial number', value: row.serialNumber },
      { name: 'Type', value: `${row.airframeType.maker} ${row.airframeType.designation}` },
      ...ownedBy(row),
      { name: 'Cycles', value: 'one a flight' },
    ],
  };
}

async function component(tx: Tx, operatorId: number, id: string): Promise<ToldSubject> {
  const row = await tx.component.findUnique({
    where: { operatorId_id: { operatorId, id } },
    include: { engineModel: true },
  });
  if (row === null) return refuse({ code: 'NOT_FOUND', what: 'component' });
  const model = row.engineModel;
  return {
    kind: 'component',
    id,
    label: `${KIND_WORDS[row.kind] ?? row.kind} ${row.serialNumber}`,
    identity: [
      { name: 'Serial number', value: row.serialNumber },
      { name: 'Part number', value: row.partNumber },
      { name: 'Description', value: row.description },
      { name: 'Maker', value: row.maker },
      ...(model === null ? [] : [{ name: 'Model', value: `${model.maker} ${model.designation}` }]),
      ...ownedBy(row),
    ],
  };
}

function ownedBy({
  owner,
  lessor,
  manufacturedOn,
}: {
  owner: string;
  lessor: string | null;
  manufacturedOn: Date | null;
}) {
  return [
    { name: 'Owner', value: owner },
    ...(lessor === null ? [] : [{ name: 'Lessor', value: lessor }]),
    ...(manufacturedOn === null ? [] : [{ name: 'Made on', value: dayToWire(manufacturedOn) }]),
  ];
}
