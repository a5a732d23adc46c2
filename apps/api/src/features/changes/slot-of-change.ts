import type { Tx } from '../../platform/database/database.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import type { SlotChange } from '../../records/changes/load-slot-change.js';
import type { ChangeCommand } from './change-command.js';

/** A change as told, with the rows it names. */
export interface NamedChange {
  readonly airframe: { readonly id: string; readonly registration: string };
  readonly positionId: string;
  readonly change: SlotChange;
}

/** Finds what a change names: position, slot, component and location. Refuses: NOT_FOUND, INVALID_FIELDS, REFUSED_BY_FACTS. */
export async function nameChange(tx: Tx, operatorId: number, command: ChangeCommand): Promise<NamedChange> {
  const { airframeId, positionNumber, slotKind, boundary, ratingCode, reason } = command;
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
  const incomingId = await findIncoming(tx, operatorId, command);
  const toLocationId = await findLocation(tx, operatorId, command);
  return {
    airframe,
    positionId: position.id,
    change: {
      slotId: slot.id,
      outgoing:
        command.outgoingSerial === null || toLocationId === null
          ? null
          : { serial: command.outgoingSerial, toLocationId },
      incomingId,
      boundary,
      ratingCode,
      reason,
    },
  };
}

async function findIncoming(
  tx: Tx,
  operatorId: number,
  { incomingSerial, slotKind }: ChangeCommand,
): Promise<string | null> {
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
  return only.id;
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
