import type { Tx } from '../../platform/database/database.js';
import type { Component } from '../../platform/database/generated/client.js';
import { refuse } from '../../platform/problems/refusal.error.js';

/** The component of a serial number; where several have it, the one of the kind. Refuses: NOT_FOUND, REFUSED_BY_FACTS, about `field`. */
export async function componentOfSerial(
  tx: Tx,
  operatorId: number,
  { serialNumber, kind }: { readonly serialNumber: string; readonly kind: string },
  field: string,
): Promise<Component> {
  const found = await tx.component.findMany({ where: { operatorId, serialNumber } });
  const ofKind = found.filter((component) => component.kind === kind);
  const [only, ...more] = ofKind.length > 0 ? ofKind : found;
  if (only === undefined) refuse({ code: 'NOT_FOUND', what: `serial ${serialNumber}`, field });
  if (more.length > 0)
    refuse({
      code: 'REFUSED_BY_FACTS',
      field,
      reason: `More than one component has the serial ${serialNumber}.`,
      fix: 'Give one of them its full serial number, then name that.',
    });
  return only;
}

/** The location that what comes off goes to. Refuses: INVALID_FIELDS when none is named, NOT_FOUND, about `field`. */
export async function locationOfRemoved(
  tx: Tx,
  operatorId: number,
  name: string | null,
  field: string,
): Promise<string> {
  if (name === null)
    refuse({
      code: 'INVALID_FIELDS',
      fields: [
        {
          field,
          reason: 'What comes off must go somewhere.',
          fix: 'Name the store, shop or quarantine it goes to.',
        },
      ],
    });
  const location = await tx.location.findFirst({ where: { operatorId, name }, select: { id: true } });
  if (location === null) refuse({ code: 'NOT_FOUND', what: `location ${name}`, field });
  return location.id;
}
