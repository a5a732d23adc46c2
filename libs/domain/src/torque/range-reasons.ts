import { compare, divide, type Fraction, fraction } from '../units/fraction.js';
import type { EntryReason } from '../work/entry.js';
import { readDecimal } from './decimal.js';
import type { ToolFacts } from './tool-fitness.js';
import type { TorqueRange } from './torque.js';
import { rangeText, type TorqueScale, torqueText } from './torque-text.js';
import { settingWindow } from './window.js';

/** A torque outside its range, bounds included. Total. */
export function torqueReasons(
  torque: Fraction,
  { low, high }: TorqueRange,
  scale: TorqueScale,
): EntryReason[] {
  const about = { what: 'The torque at the fastener', value: torqueText(torque, scale, [low, high]) };
  if (compare(torque, low) < 0)
    return [{ code: 'BELOW_RANGE', detail: { ...about, low: torqueText(low, scale) } }];
  if (compare(torque, high) > 0)
    return [{ code: 'ABOVE_RANGE', detail: { ...about, high: torqueText(high, scale) } }];
  return [];
}

/** The window of a tool over a range; null where its deviation is not known or leaves none. Total. */
export function windowOf(required: TorqueRange, tool: ToolFacts | null): TorqueRange | null {
  const percent = tool?.deviation == null ? null : readDecimal(tool.deviation);
  return percent === null ? null : settingWindow(required, divide(percent, fraction(100)));
}

/** A torque outside the tool's window, a window that is empty, a deviation that is not known. Total. */
export function windowReasons(
  torque: Fraction | null,
  window: TorqueRange | null,
  tool: ToolFacts,
  scale: TorqueScale,
): EntryReason[] {
  if (tool.deviation === null || readDecimal(tool.deviation) === null)
    return [{ code: 'TOOL_RANGE_UNKNOWN', detail: { tool: tool.serial, what: 'deviation' } }];
  if (window !== null && torque === null) return [];
  if (window !== null && torque !== null && isWithin(torque, window)) return [];
  const value = torque === null ? null : torqueText(torque, scale, window ? [window.low, window.high] : []);
  const shown = window === null ? null : rangeText(window, scale);
  return [{ code: 'OUTSIDE_WINDOW', detail: { tool: tool.serial, value, window: shown } }];
}

const isWithin = (torque: Fraction, { low, high }: TorqueRange) =>
  compare(torque, low) >= 0 && compare(torque, high) <= 0;
