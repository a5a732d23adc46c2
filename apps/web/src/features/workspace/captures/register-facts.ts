import type { RegisterFacts } from '@strutbook/domain/work/judge-entry.js';
import { useQuery } from '@tanstack/react-query';
import { type ComponentRow, componentChoiceQuery } from '../../../server/components.js';
import type { WorkOrder } from '../work/work-shapes.js';

export interface Looked {
  readonly facts: RegisterFacts | null;
  /** Where it is, in words; null while nothing is found. */
  readonly words: string | null;
  readonly asked: boolean;
}

const NOTHING: Looked = { facts: null, words: null, asked: false };

function found(row: ComponentRow): Looked {
  const { partNumber, description, place } = row;
  return {
    facts: { partNumber, description, place: place.label, serviceable: null },
    words: `${description}, part number ${partNumber}; now at: ${place.label}`,
    asked: true,
  };
}

/** What the register says of a serial, letter by letter the same; asked once the field is left. */
export function useRegister(serial: string, asked: boolean): Looked {
  const wanted = serial.trim();
  const query = useQuery({
    ...componentChoiceQuery({ search: wanted }),
    enabled: asked && wanted !== '',
  });
  if (!asked || wanted === '' || query.data === undefined) return NOTHING;
  const row = query.data.rows.find(({ serialNumber }) => serialNumber === wanted);
  return row === undefined ? { ...NOTHING, asked: true } : found(row);
}

/** The order as the core compares with it. */
export const orderedFacts = (order: WorkOrder | null) =>
  order === null
    ? null
    : {
        outgoingSerial: order.outgoing?.serialNumber ?? null,
        outgoingPartNumber: order.outgoing?.partNumber ?? null,
        incomingSerial: order.incoming?.serialNumber ?? null,
        incomingPartNumber: order.incoming?.partNumber ?? null,
        positionNumber: order.positionNumber,
      };
