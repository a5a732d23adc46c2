import { calibrationReasons, type ToolFacts } from '@strutbook/domain/torque/tool-fitness.js';
import { TORQUE_UNITS, type TorqueUnit } from '@strutbook/domain/torque/torque.js';
import { calendarDate } from '../../../format/utc-date.js';
import type { Tool } from '../../../server/tools.js';

/** A tool as the core judges it, by the calibration that governs. */
export const toolFacts = (tool: Tool): ToolFacts => ({
  serial: tool.serialNumber,
  unit: tool.unit,
  low: tool.rangeLow,
  high: tool.rangeHigh,
  deviation: tool.deviation,
  calibrations:
    tool.calibratedOn === null || tool.dueOn === null
      ? []
      : [{ calibratedOn: tool.calibratedOn, dueOn: tool.dueOn }],
});

/** Why a tool may not be used today, in words that come before its use; null when it may. */
export function toolOff(tool: Tool, on: string): string | null {
  if (calibrationReasons(toolFacts(tool), on).length === 0) return null;
  return tool.dueOn === null
    ? `${tool.serialNumber} has no calibration on record. Choose a tool in date.`
    : `The calibration of ${tool.serialNumber} was due on ${calendarDate(tool.dueOn)}. Choose a tool in date.`;
}

/** The unit a wrench shows; that of the data where the tool has none of torque. */
export const unitOf = (tool: Tool | null, otherwise: TorqueUnit): TorqueUnit =>
  TORQUE_UNITS.find((unit) => unit === tool?.unit) ?? otherwise;

/** '40 to 200 N·m, ±4 %; calibrated 3 Mar 2026, due 3 Mar 2027' */
export function toolWords({ rangeLow, rangeHigh, unit, deviation, calibratedOn, dueOn }: Tool): string {
  const range = rangeLow === null ? 'Range not recorded' : `${rangeLow} to ${rangeHigh} ${unit}`;
  const share = deviation === null ? '' : `, ±${deviation} %`;
  const dates =
    calibratedOn === null || dueOn === null
      ? 'never calibrated'
      : `calibrated ${calendarDate(calibratedOn)}, due ${calendarDate(dueOn)}`;
  return `${range}${share}; ${dates}`;
}
