import { inSerialRange } from '@strutbook/domain/due/serial-range.js';
import type { Requirement } from '../../../platform/database/generated/client.js';
import { type Reason, reasonOf } from '../reasons.js';
import type { Subject } from '../subjects.js';

/** Whether a requirement follows things of this kind at all. Total. */
export function follows(row: Requirement, subject: Subject): boolean {
  switch (row.anchor) {
    case 'airframe':
      return subject.kind === 'airframe';
    case 'position':
      // Without a number it is for the places of engines.
      return subject.kind === 'position' && (row.positionNumber !== null || subject.number > 0);
    case 'engine':
      return (
        subject.kind === 'component' &&
        (subject.componentKind === 'engine' ||
          (row.engineModelId !== null && subject.componentKind === 'apu'))
      );
    default:
      return subject.kind === 'component';
  }
}

/** Why a requirement is for another type, model or part number; null when it is for this one. Total. */
export function ofAnother(row: Requirement, subject: Subject): Reason | null {
  if (subject.kind !== 'component')
    return row.airframeTypeId === null || row.airframeTypeId === subject.airframeTypeId
      ? null
      : reasonOf('OTHER_TYPE');
  if (row.anchor === 'part')
    return row.partNumber === subject.partNumber ? null : reasonOf('OTHER_PART_NUMBER');
  return row.engineModelId === null || row.engineModelId === subject.engineModelId
    ? null
    : reasonOf('OTHER_MODEL');
}

/** Why a requirement of this type or model is not for this one of them; null when it is. Total. */
export function outside(row: Requirement, subject: Subject, metCodes: ReadonlySet<string>): Reason | null {
  if (subject.kind === 'position' && row.positionNumber !== null && row.positionNumber !== subject.number)
    return { code: 'OTHER_POSITION', words: `It is for position ${row.positionNumber}` };
  if (isSerialInside(row, subject) === false)
    return { code: 'SERIAL_OUTSIDE', words: `Its serial number lies outside ${rangeInWords(row)}` };
  const lacking = row.onlyWith.filter((code) => !metCodes.has(code));
  if (lacking.length > 0)
    return { code: 'NOT_MODIFIED', words: `It is for those with ${lacking.join(', ')} accomplished alone` };
  const modified = row.unlessWith.filter((code) => metCodes.has(code));
  return modified.length === 0
    ? null
    : { code: 'MODIFIED', words: `It is not for those with ${modified.join(', ')} accomplished` };
}

/** Whether its serial number lies in the range; null when it cannot be compared: nobody can tell. Total. */
export function isSerialInside({ serialFrom, serialTo }: Requirement, subject: Subject): boolean | null {
  if (serialFrom === null && serialTo === null) return true;
  if (subject.kind === 'position') return true;
  return inSerialRange(subject.serialNumber, { from: serialFrom, to: serialTo });
}

function rangeInWords({ serialFrom, serialTo }: Requirement): string {
  if (serialFrom === null) return `those up to ${serialTo ?? ''}`;
  return serialTo === null ? `${serialFrom} and after` : `${serialFrom} to ${serialTo}`;
}
