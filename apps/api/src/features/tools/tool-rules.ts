import { readDecimal } from '@strutbook/domain/torque/decimal.js';
import { TORQUE_UNITS } from '@strutbook/domain/torque/torque.js';
import { compare, type Fraction, fraction, ZERO } from '@strutbook/domain/units/fraction.js';
import type { FieldRefusal } from '../../platform/problems/api-refusals.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import type { NewCalibrationDto, NewToolDto } from './tool.dto.js';

const HUNDRED = fraction(100);

const read = (typed: string | null | undefined): Fraction | null =>
  typed == null ? null : readDecimal(typed);

/** Refuses INVALID_FIELDS: a unit that is none of torque, half a range or one upside down, no such percentage. */
export function refuseUnlikeTool(asked: NewToolDto): void {
  const fields = [...unitFaults(asked), ...rangeFaults(asked), ...deviationFaults(asked)];
  if (fields.length > 0) refuse({ code: 'INVALID_FIELDS', fields });
}

function unitFaults({ kind, unit, rangeLow, rangeHigh }: NewToolDto): FieldRefusal[] {
  const field = 'unit';
  const units = `${TORQUE_UNITS.slice(0, -1).join(', ')} or ${TORQUE_UNITS.at(-1)}`;
  if (kind === 'torque-wrench' && !TORQUE_UNITS.some((known) => known === unit))
    return [
      { field, reason: 'A torque wrench shows one of these units of torque.', fix: `Choose ${units}.` },
    ];
  if (unit == null && (rangeLow != null || rangeHigh != null))
    return [{ field, reason: 'A range needs its unit.', fix: 'Enter the unit, such as bar or mm.' }];
  return [];
}

function rangeFaults({ rangeLow, rangeHigh }: NewToolDto): FieldRefusal[] {
  if ((rangeLow == null) !== (rangeHigh == null))
    return [
      {
        field: rangeLow == null ? 'rangeLow' : 'rangeHigh',
        reason: 'A range has a lowest and a highest value.',
        fix: 'Enter both, or leave both empty.',
      },
    ];
  const [low, high] = [read(rangeLow), read(rangeHigh)];
  if (low === null || high === null || compare(low, high) <= 0) return [];
  return [
    {
      field: 'rangeHigh',
      reason: `The highest value, ${rangeHigh}, lies below the lowest, ${rangeLow}.`,
      fix: `Enter ${rangeLow} or more, or correct the lowest.`,
    },
  ];
}

function deviationFaults({ deviation }: NewToolDto): FieldRefusal[] {
  const share = read(deviation);
  if (share === null || (compare(share, ZERO) > 0 && compare(share, HUNDRED) < 0)) return [];
  return [
    {
      field: 'deviation',
      reason: 'A deviation is more than 0 and less than 100 percent.',
      fix: 'Enter the percentage of its certificate, or leave it empty.',
    },
  ];
}

/** Refuses INVALID_FIELDS: a calibration that has not been made yet on `today`, or is due before it was made. */
export function refuseUnlikeCalibration({ calibratedOn, dueOn }: NewCalibrationDto, today: string): void {
  const fields: FieldRefusal[] = [];
  if (calibratedOn > today)
    fields.push({
      field: 'calibratedOn',
      reason: `${calibratedOn} is in the future; today is ${today} in UTC.`,
      fix: 'Enter the day of the certificate.',
    });
  if (dueOn < calibratedOn)
    fields.push({
      field: 'dueOn',
      reason: `It would be due on ${dueOn}, before it was made on ${calibratedOn}.`,
      fix: `Enter ${calibratedOn} or a later day.`,
    });
  if (fields.length > 0) refuse({ code: 'INVALID_FIELDS', fields });
}
