import { compare, type Fraction } from '../units/fraction.js';
import type { TorqueCapture } from '../work/capture.js';
import type { EntryReason, Typed } from '../work/entry.js';
import { readDecimal } from './decimal.js';
import { rangeWithRunOn } from './run-on.js';
import type { TorqueRange } from './torque.js';
import { scaleOf, torqueText } from './torque-text.js';
import { convertTorque } from './units.js';

/** What a run-on torque makes of the range, and what is held against it. */
export interface RunOnJudgement {
  /** The range with run-on torque, in the data's unit; null while it is not known. */
  readonly range: TorqueRange | null;
  readonly reasons: readonly EntryReason[];
}

/**
 * Judges the run-on torque of a fastener: asked for where the rule counts it or the data bounds it; itself within
 * its own bounds, both included. Throws when the capture's own figures are no numbers.
 *
 * Source: FAA AC 43.13-1B, 7-40 (measured before the nut seats); a nut's specification bounds its run-on torque.
 */
export function judgeRunOn(
  capture: TorqueCapture,
  typed: Pick<Extract<Typed, { kind: 'torque' }>, 'runOn' | 'unit'>,
): RunOnJudgement {
  const range = { low: figure(capture.low), high: figure(capture.high) };
  const { rule, low, high } = capture.runOn;
  if (rule === 'none' && low === null && high === null) return { range, reasons: [] };
  if (typed.runOn === null || typed.runOn.trim() === '')
    return { range: rule === 'none' ? range : null, reasons: [{ code: 'RUN_ON_MISSING', detail: {} }] };
  const read = readDecimal(typed.runOn);
  if (read === null) {
    const detail = { what: 'The run-on torque', typed: typed.runOn };
    return { range: rule === 'none' ? range : null, reasons: [{ code: 'NOT_A_NUMBER', detail }] };
  }
  const runOn = convertTorque(read, typed.unit, capture.unit);
  return { range: rangeWithRunOn(range, runOn, rule), reasons: boundReasons(runOn, capture) };
}

function boundReasons(runOn: Fraction, capture: TorqueCapture): EntryReason[] {
  const { unit } = capture;
  const { low, high } = capture.runOn;
  const bounds = [low, high].flatMap((bound) => (bound === null ? [] : [figure(bound)]));
  const value = torqueText(runOn, scaleOf(capture), bounds);
  return [
    ...(low !== null && compare(runOn, figure(low)) < 0
      ? [{ code: 'RUN_ON_BELOW' as const, detail: { value, low: `${low} ${unit}` } }]
      : []),
    ...(high !== null && compare(runOn, figure(high)) > 0
      ? [{ code: 'RUN_ON_ABOVE' as const, detail: { value, high: `${high} ${unit}` } }]
      : []),
  ];
}

function figure(text: string): Fraction {
  const read = readDecimal(text);
  if (read === null) throw new RangeError(`a figure of the data that is no number: ${text}`);
  return read;
}
