import type { Fraction } from '../units/fraction.js';

/** The units of torque that may be typed, the first for show. */
export const TORQUE_UNITS = ['N·m', 'lbf·ft', 'lbf·in', 'kgf·m'] as const;

/** A unit of torque. */
export type TorqueUnit = (typeof TORQUE_UNITS)[number];

/** The rules the approved data may set for run-on torque. */
export const RUN_ON_RULES = ['none', 'add', 'one-third'] as const;

/**
 * What run-on torque (the drag of a self-locking nut) does to the range: nothing, always added, or added from a
 * third of the recommended torque on. Two published rules differ, so it is a value of the task.
 */
export type RunOnRule = (typeof RUN_ON_RULES)[number];

/** A range of torque in one unit, bounds included. */
export interface TorqueRange {
  readonly low: Fraction;
  readonly high: Fraction;
}

/** Whether the text is a unit of torque. Total. */
export function isTorqueUnit(text: string): text is TorqueUnit {
  return (TORQUE_UNITS as readonly string[]).includes(text);
}
