import type { ChangeFacts, ChangeRequest, ChangingComponent } from '@strutbook/domain/changes/plan-change.js';
import type { Tx } from '../../platform/database/database.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { loadBoundaryFacts } from '../../records/stays/boundary-facts.js';
import { loadComponentFacts, loadSlotStays, lockForStays } from '../../records/stays/stay-facts.js';
import type { ChangeCommand } from './change-command.js';

/** What a change is planned from, and the rows it will name. */
export interface LoadedChange {
  readonly request: ChangeRequest;
  readonly facts: ChangeFacts;
  readonly airframe: { readonly id: string; readonly registration: string };
  readonly positionId: string;
  readonly incomingId: string | null;
  readonly modelId: string | null;
}

/** Loads what the plan needs; to record, it locks the airframe's head and the components first. Refuses: NOT_FOUND, INVALID_FIELDS. */
export async function loadChange(
  tx: Tx,
  operatorId: number,
  command: ChangeCommand,
  { lock }: { readonly lock: boolean },
): Promise<LoadedChange> {
  const { airframeId, positionNumber, slotKind, boundary } = command;
  const airframe = orNotFound(
    await tx.airframe.findUnique({ where: { operatorId_id: { operatorId, id: airframeId } } }),
    'airframe',
  );
  const position = await tx.position.findFirst({ where: { operatorId, airframeId, number: positionNumber } });
  if (position === null)
    refuse({
      code: 'NOT_FOUND',
      what: `position ${positionNumber} of ${airframe.registration}`,
      field: 'positionNumber',
    });
  const slot = await tx.slot.findFirst({ where: { operatorId, positionId: position.id, kind: slotKind } });
  if (slot === null)
    refuse({ code: 'NOT_FOUND', what: `${slotKind} slot at position ${positionNumber}`, field: 'slot' });
  const incoming = await findIncoming(tx, operatorId, command);
  if (lock)
    await lockChange(tx, operatorId, { airframeId, slotId: slot.id, incomingId: incoming?.id ?? null });
  const slotStays = await loadSlotStays(tx, operatorId, slot.id);
  const ids = new Set([
    ...slotStays.map((stay) => stay.componentId),
    ...(incoming === null ? [] : [incoming.id]),
  ]);
  const components = await loadComponentFacts(tx, operatorId, [...ids]);
  const flights = await loadBoundaryFacts(tx, operatorId, [airframeId], boundary);
  const toLocationId = await findLocation(tx, operatorId, command);
  return {
    airframe,
    positionId: position.id,
    incomingId: incoming?.id ?? null,
    modelId: incoming?.engineModelId ?? null,
    request: {
      slotId: slot.id,
      off:
        command.outgoingSerial === null
          ? null
          : { expectedSerial: command.outgoingSerial, boundary, toLocationId: toLocationId ?? '' },
      on: incoming === null ? null : { componentId: incoming.id, boundary },
    },
    facts: {
      ...flights,
      slot: { id: slot.id, kind: slot.kind, positionNumber, authorisedModelIds: null, stays: slotStays },
      components: new Map(
        [...components].map(([id, facts]): [string, ChangingComponent] => [
          id,
          { ...facts, serviceable: !facts.inQuarantine },
        ]),
      ),
      lifeObjections: [],
    },
  };
}

async function lockChange(
  tx: Tx,
  operatorId: number,
  { airframeId, slotId, incomingId }: { airframeId: string; slotId: string; incomingId: string | null },
): Promise<void> {
  const there = await tx.stay.findMany({
    where: { operatorId, slotId, voidedSeq: null, toAt: null },
    select: { componentId: true },
  });
  await lockForStays(tx, operatorId, {
    airframeIds: [airframeId],
    componentIds: [...there.map((stay) => stay.componentId), ...(incomingId === null ? [] : [incomingId])],
  });
}

async function findIncoming(tx: Tx, operatorId: number, { incomingSerial, slotKind }: ChangeCommand) {
  if (incomingSerial === null) return null;
  const found = await tx.component.findMany({ where: { operatorId, serialNumber: incomingSerial } });
  const ofKind = found.filter((component) => component.kind === slotKind);
  const [only, ...more] = ofKind.length > 0 ? ofKind : found;
  if (only === undefined)
    refuse({ code: 'NOT_FOUND', what: `serial ${incomingSerial}`, field: 'incomingSerial' });
  if (more.length > 0)
    refuse({
      code: 'REFUSED_BY_FACTS',
      field: 'incomingSerial',
      reason: `More than one component has the serial ${incomingSerial}.`,
      fix: 'Give one of them its full serial number, then name that.',
    });
  return only;
}

async function findLocation(
  tx: Tx,
  operatorId: number,
  { removedToLocation, outgoingSerial }: ChangeCommand,
): Promise<string | null> {
  if (outgoingSerial === null) return null;
  if (removedToLocation === null)
    refuse({
      code: 'INVALID_FIELDS',
      fields: [
        {
          field: 'removedToLocation',
          reason: 'What comes off must go somewhere.',
          fix: 'Name the store, shop or quarantine it goes to.',
        },
      ],
    });
  const location = await tx.location.findFirst({ where: { operatorId, name: removedToLocation } });
  if (location === null)
    refuse({ code: 'NOT_FOUND', what: `location ${removedToLocation}`, field: 'removedToLocation' });
  return location.id;
}
