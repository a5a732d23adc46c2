import { accepted, type Result, refused } from '../result.js';
import type { CalendarDate } from '../units/calendar.js';
import type { Fraction } from '../units/fraction.js';
import type { TorqueCapture } from '../work/capture.js';
import type { EntryReason, Judgement, Typed } from '../work/entry.js';
import { judgement } from '../work/judgement.js';
import { readDecimal } from './decimal.js';
import { torqueAtFastener, wrenchSetting } from './extension.js';
import { judgeRunOn } from './judge-run-on.js';
import { torqueReasons, windowOf, windowReasons } from './range-reasons.js';
import { notANumber, type ReadExtension, readExtension } from './read-extension.js';
import { calibrationReasons, rangeReasons, type ToolFacts } from './tool-fitness.js';
import type { TorqueRange, TorqueUnit } from './torque.js';
import { rangeText, scaleOf, type TorqueScale, torqueText } from './torque-text.js';
import { convertTorque } from './units.js';

export type { ToolFacts } from './tool-fitness.js';

/** What was typed for a torque. */
export type TorqueTyped = Extract<Typed, { kind: 'torque' }>;

/**
 * Judges one torque as typed: the fastener's torque against the approved range with its run-on torque, bounds
 * included; the tool on its calibration that day and, by what it showed, on its range; the point on its order.
 *
 * Every reason is told, not the first alone. The unit typed may be another than the data's. The run-on torque is
 * the fastener's, in the unit typed. The window that allows for the tool's deviation is judged only where the data
 * says that it binds. `acceptedPoints` are the points of the group accepted so far; `on` is the day of use.
 *
 * Computed texts, null where unknown: 'atFastener', 'required' (the range with run-on), 'window' (at the fastener),
 * 'setting' (what this wrench shows over that range, in its own unit and with its adapter), 'binds'.
 *
 * Throws when the capture's own range is no number: such a procedure is not accepted.
 */
export function judgeTorque(
  capture: TorqueCapture,
  typed: TorqueTyped,
  tool: ToolFacts | null,
  acceptedPoints: readonly string[],
  on: CalendarDate,
): Judgement {
  const extension = readExtension(typed.extension);
  const fastener = torqueOf(typed, extension, capture.unit);
  const torque = fastener.ok ? fastener.value : null;
  const { range: required, reasons: runOnReasons } = judgeRunOn(capture, typed);
  const window = required && windowOf(required, tool);
  const scale = scaleOf(capture);
  const reasons = [
    ...orderReasons(capture, typed.point, acceptedPoints),
    ...(fastener.ok ? [] : fastener.refusal),
    ...runOnReasons,
    ...(torque && required ? torqueReasons(torque, required, scale) : []),
    ...toolReasons(typed, tool, on),
    ...(tool && required && capture.binds === 'window' ? windowReasons(torque, window, tool, scale) : []),
  ];
  return judgement(reasons, {
    atFastener: torque && torqueText(torque, scale, required ? [required.low, required.high] : []),
    required: required && rangeText(required, scale),
    window: window && rangeText(window, scale),
    setting: required && settingText(required, scale, extension, typed.unit),
    binds: capture.binds,
  });
}

function orderReasons(capture: TorqueCapture, point: string, done: readonly string[]): EntryReason[] {
  const place = capture.points.indexOf(point);
  if (place < 0) return [{ code: 'NO_SUCH_POINT', detail: { point, points: capture.points.join(', ') } }];
  const first = capture.points.slice(0, place).find((before) => !done.includes(before));
  return first === undefined ? [] : [{ code: 'OUT_OF_ORDER', detail: { point, first } }];
}

/** The fastener's torque in the data's unit, or all that keeps it from being known. */
function torqueOf(
  typed: TorqueTyped,
  extension: ReadExtension,
  unit: TorqueUnit,
): Result<Fraction, EntryReason[]> {
  const indication = readDecimal(typed.indication);
  const adapter = extension.ok ? extension.value : null;
  if (indication === null || !extension.ok)
    return refused([
      ...(indication === null ? [notANumber('The torque', typed.indication)] : []),
      ...(extension.ok ? [] : extension.refusal),
    ]);
  const arrives = adapter === null ? accepted(indication) : torqueAtFastener(indication, adapter);
  return arrives.ok
    ? accepted(convertTorque(arrives.value, typed.unit, unit))
    : refused([{ code: 'NO_EFFECTIVE_LENGTH', detail: {} }]);
}

function toolReasons(typed: TorqueTyped, tool: ToolFacts | null, on: CalendarDate): EntryReason[] {
  if (tool === null) return [{ code: 'TOOL_MISSING', detail: {} }];
  const indication = readDecimal(typed.indication);
  return [
    ...calibrationReasons(tool, on),
    ...(indication === null ? [] : rangeReasons(tool, indication, typed.unit)),
  ];
}

/** What the wrench shows over a range at the fastener, in the unit typed. */
function settingText(
  { low, high }: TorqueRange,
  { unit, decimals }: TorqueScale,
  extension: ReadExtension,
  shown: TorqueUnit,
): string | null {
  if (!extension.ok) return null;
  const adapter = extension.value;
  const set = (torque: Fraction) => (adapter === null ? accepted(torque) : wrenchSetting(torque, adapter));
  const [from, to] = [set(low), set(high)];
  if (!from.ok || !to.ok) return null;
  return rangeText(
    { low: convertTorque(from.value, unit, shown), high: convertTorque(to.value, unit, shown) },
    { unit: shown, decimals },
  );
}
