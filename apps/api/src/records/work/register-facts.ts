import type { RegisterFacts } from '@strutbook/domain/work/judge-entry.js';
import type { Tx } from '../../platform/database/database.js';
import { NOWHERE, wordsOfPlaces } from '../stays/place-words.js';

/** What the register has for a serial number, and the component it belongs to. */
export interface RegisteredSerial extends RegisterFacts {
  readonly componentId: string;
}

interface SerialRow {
  id: string;
  kind: string;
  partNumber: string;
  description: string;
  slotId: string | null;
  locationId: string | null;
  locationKind: string | null;
}

/**
 * What the register has for a serial number as it was typed, without spaces at its ends, also in capitals; null when
 * it has none. Of several with one serial the one of `kind` is meant, or the one with this part number.
 */
export async function registerFacts(
  tx: Tx,
  operatorId: number,
  typed: { readonly serialNumber: string; readonly partNumber: string | null },
  kind: string | null,
): Promise<RegisteredSerial | null> {
  const rows = await tx.$queryRaw<SerialRow[]>`
    SELECT c.id, c.kind, c.part_number AS "partNumber", c.description, st.slot_id AS "slotId", st.location_id AS "locationId",
           l.kind AS "locationKind"
      FROM component c
      LEFT JOIN stay st ON st.operator_id = c.operator_id AND st.component_id = c.id AND st.voided_seq IS NULL AND st.to_at IS NULL
      LEFT JOIN location l ON l.operator_id = st.operator_id AND l.id = st.location_id
     WHERE c.operator_id = ${operatorId}::int AND c.serial_number = ANY (${[typed.serialNumber.trim(), typed.serialNumber.trim().toUpperCase()]})
     ORDER BY c.kind = ${kind ?? ''} DESC, c.part_number = ${typed.partNumber?.trim() ?? ''} DESC, c.id LIMIT 1`;
  const [row] = rows;
  if (row === undefined) return null;
  const placeId = row.slotId ?? row.locationId;
  const words = await wordsOfPlaces(tx, operatorId, {
    slotIds: row.slotId === null ? [] : [row.slotId],
    locationIds: row.locationId === null ? [] : [row.locationId],
  });
  return {
    componentId: row.id,
    partNumber: row.partNumber,
    description: row.description,
    place: (words.get(placeId ?? '') ?? NOWHERE).label,
    serviceable:
      placeId === null ? null : row.locationKind !== 'quarantine' && row.locationKind !== 'scrapped',
  };
}
