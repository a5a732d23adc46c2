import type { Tx } from '../../platform/database/database.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import type { SlotChange } from '../../records/changes/load-slot-change.js';
import { componentOfSerial, locationOfRemoved } from '../../records/changes/named-rows.js';
import type { ChangeCommand } from './change-command.js';

/** A change as told, with the rows it names. */
export interface NamedChange {
  readonly airframe: { readonly id: string; readonly registration: string };
  readonly positionId: string;
  readonly change: SlotChange;
}

/** Finds what a change names: position, slot, component and location. Refuses: NOT_FOUND, INVALID_FIELDS, REFUSED_BY_FACTS. */
export async function nameChange(tx: Tx, operatorId: number, command: ChangeCommand): Promise<NamedChange> {
  const { airframeId, positionNumber, slotKind, outgoingSerial, incomingSerial } = command;
  const { boundary, ratingCode, reason } = command;
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
  const incoming =
    incomingSerial === null
      ? null
      : await componentOfSerial(
          tx,
          operatorId,
          { serialNumber: incomingSerial, kind: slotKind },
          'incomingSerial',
        );
  const outgoing =
    outgoingSerial === null
      ? null
      : {
          serial: outgoingSerial,
          toLocationId: await locationOfRemoved(
            tx,
            operatorId,
            command.removedToLocation,
            'removedToLocation',
          ),
        };
  return {
    airframe,
    positionId: position.id,
    change: {
      slotId: slot.id,
      outgoing,
      incomingId: incoming?.id ?? null,
      boundary,
      ratingCode,
      reason,
      readings: { outgoing: command.outgoingReading, incoming: command.incomingReading },
      readingFields: { outgoing: 'outgoingReading', incoming: 'incomingReading' },
    },
  };
}
