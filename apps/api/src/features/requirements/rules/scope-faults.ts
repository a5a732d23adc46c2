import { isSerialRange } from '@strutbook/domain/due/serial-range.js';
import type { FieldRefusal } from '../../../platform/problems/api-refusals.js';
import type { NewRequirementDto } from '../requirement.dto.js';

/** What is wrong with a range of serial numbers. Total. */
export function serialFaults({
  anchor,
  serialFrom = null,
  serialTo = null,
}: NewRequirementDto): FieldRefusal[] {
  if (serialFrom === null && serialTo === null) return [];
  const field = serialTo === null ? 'serialFrom' : 'serialTo';
  if (anchor === 'position')
    return [
      {
        field,
        reason: 'A position has no serial number.',
        fix: 'Leave the serial numbers out, or follow the airframe, the engine or the part.',
      },
    ];
  if (isSerialRange({ from: serialFrom, to: serialTo })) return [];
  return [
    {
      field,
      reason:
        'These serial numbers do not make a range: both must begin alike and end in a number, the first not the greater.',
      fix: 'Enter the first and the last of one series, such as KT-100 and KT-480; record another requirement for another series.',
    },
  ];
}

/** What is wrong with what it hangs on: codes asked and forbidden at once, its own, and who must assess. Total. */
export function linkFaults({
  code,
  kind,
  mandatory = false,
  onlyWith = [],
  unlessWith = [],
}: NewRequirementDto): FieldRefusal[] {
  const faults: FieldRefusal[] = [];
  const both = onlyWith.find((each) => unlessWith.includes(each));
  if (both !== undefined)
    faults.push({
      field: 'unlessWith',
      reason: `${both} is asked for and forbidden at once: it would be for nothing.`,
      fix: 'Name it in one of the two.',
    });
  if ([...onlyWith, ...unlessWith].includes(code))
    faults.push({
      field: onlyWith.includes(code) ? 'onlyWith' : 'unlessWith',
      reason: 'It hangs on its own code.',
      fix: 'Name another bulletin or directive. What is met once closes by itself.',
    });
  if (mandatory && kind !== 'bulletin')
    faults.push({
      field: 'mandatory',
      reason: 'A bulletin alone is marked mandatory; a directive always is.',
      fix: 'Leave it out, or record it as a bulletin.',
    });
  return faults;
}
