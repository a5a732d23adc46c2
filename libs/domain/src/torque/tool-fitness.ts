import { type Calibration, governingCalibration } from '../tools/calibration.js';
import type { CalendarDate } from '../units/calendar.js';
import { compare, type Fraction } from '../units/fraction.js';
import type { EntryReason } from '../work/entry.js';
import { readDecimal, shortText } from './decimal.js';
import { isTorqueUnit, type TorqueRange, type TorqueUnit } from './torque.js';
import { convertTorque } from './units.js';

export type { Calibration } from '../tools/calibration.js';

/** A tool as registered; range and deviation as typed, null where not known. */
export interface ToolFacts {
  readonly serial: string;
  readonly unit: string | null;
  readonly low: string | null;
  readonly high: string | null;
  /** The largest relative deviation its certificate allows, in percent. */
  readonly deviation: string | null;
  /** Those that are not voided, in any order. */
  readonly calibrations: readonly Calibration[];
}

/**
 * What is held against a tool's calibration on a day: none on or before it, or the last one out of date.
 *
 * The last one counts, though an earlier one were good for longer; of two of one day, the one listed last. Total.
 *
 * Source: 145.A.40 of Reg. (EU) 1321/2014 and FAA AC 43.13-1B, 7-40: tools are calibrated, at least yearly.
 */
export function calibrationReasons(tool: ToolFacts, on: CalendarDate): EntryReason[] {
  const last = governingCalibration(tool.calibrations, on);
  if (last === null) return [{ code: 'TOOL_NOT_CALIBRATED', detail: { tool: tool.serial, on } }];
  if (last.dueOn >= on) return [];
  return [{ code: 'TOOL_OUT_OF_DATE', detail: { tool: tool.serial, dueOn: last.dueOn, on } }];
}

/**
 * What is held against using a tool at a setting: its range, bounds included, is judged on what the wrench shows or
 * is set to, not on what arrives at the fastener. Total.
 *
 * Source: ISO 6789 (a tool's range), as a tool maker's manual restates it.
 */
export function rangeReasons(tool: ToolFacts, setting: Fraction, unit: TorqueUnit): EntryReason[] {
  const range = rangeOf(tool);
  if (range === null) return [{ code: 'TOOL_RANGE_UNKNOWN', detail: { tool: tool.serial, what: 'range' } }];
  const shown = convertTorque(setting, unit, range.unit);
  if (compare(shown, range.low) >= 0 && compare(shown, range.high) <= 0) return [];
  return [
    {
      code: 'TOOL_OUT_OF_RANGE',
      detail: {
        tool: tool.serial,
        setting: `${shortText(shown, 3)} ${range.unit}`,
        low: `${tool.low} ${range.unit}`,
        high: `${tool.high} ${range.unit}`,
      },
    },
  ];
}

function rangeOf({ unit, low, high }: ToolFacts): (TorqueRange & { readonly unit: TorqueUnit }) | null {
  if (unit === null || low === null || high === null || !isTorqueUnit(unit)) return null;
  const [from, to] = [readDecimal(low), readDecimal(high)];
  return from === null || to === null ? null : { low: from, high: to, unit };
}
