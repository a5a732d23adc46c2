import { accepted, type Result, refused } from '../result.js';
import { fraction } from '../units/fraction.js';
import type { EntryReason, ExtensionTyped } from '../work/entry.js';
import { readDecimal } from './decimal.js';
import { type Extension, torqueAtFastener } from './extension.js';

/** The adapter as read, null where there is none; or what is held against it. */
export type ReadExtension = Result<Extension | null, EntryReason[]>;

/**
 * Reads the lengths and the angle of an adapter. Refuses with each that is no number, an angle beyond 180 degrees,
 * and a lever that has no effective length.
 */
export function readExtension(typed: ExtensionTyped | null): ReadExtension {
  if (typed === null) return accepted(null);
  const [wrenchLength, length, angleDegrees] = [typed.wrenchLength, typed.length, typed.angle].map(
    readDecimal,
  );
  if (!wrenchLength || !length || !angleDegrees)
    return refused([
      ...(wrenchLength ? [] : [notANumber('The length of the wrench', typed.wrenchLength)]),
      ...(length ? [] : [notANumber('The length of the adapter', typed.length)]),
      ...(angleDegrees ? [] : [badAngle(typed.angle)]),
    ]);
  const extension = { wrenchLength, length, angleDegrees };
  const tried = torqueAtFastener(fraction(1), extension);
  if (tried.ok) return accepted(extension);
  if (tried.refusal.code === 'ANGLE_OUT_OF_RANGE') return refused([badAngle(typed.angle)]);
  return refused([{ code: tried.refusal.code, detail: {} }]);
}

const badAngle = (typed: string) => notANumber('The angle', typed, 'from 0 to 180 degrees');

/** That something typed is no number, and what it must lie in. Total. */
export function notANumber(what: string, typed: string, within?: string): EntryReason {
  return { code: 'NOT_A_NUMBER', detail: { what, typed, ...(within === undefined ? {} : { within }) } };
}
