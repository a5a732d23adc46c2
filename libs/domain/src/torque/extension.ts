import { accepted, type Result, refused } from '../result.js';
import { add, compare, divide, type Fraction, fraction, multiply, ZERO } from '../units/fraction.js';
import { cosineOfDegrees } from './cosine.js';

/** An extension or adapter on a wrench; both lengths in one unit. */
export interface Extension {
  /** From the centre of the grip to the centre of the drive. */
  readonly wrenchLength: Fraction;
  /** From the centre of the drive to the centre of the fastener. */
  readonly length: Fraction;
  /** Between wrench and adapter: 0 straight out, 90 no effect, 180 pointing back to the grip. */
  readonly angleDegrees: Fraction;
}

/** A wrench and adapter that have no lever, or an angle that is none. */
export type ExtensionRefusal =
  | { readonly code: 'NO_EFFECTIVE_LENGTH' }
  | { readonly code: 'ANGLE_OUT_OF_RANGE' };

/** (L + E·cos a) / L: how much more arrives at the fastener than the wrench shows. */
function gain({ wrenchLength, length, angleDegrees }: Extension): Result<Fraction, ExtensionRefusal> {
  if (compare(angleDegrees, ZERO) < 0 || compare(angleDegrees, fraction(180)) > 0)
    return refused({ code: 'ANGLE_OUT_OF_RANGE' });
  if (compare(wrenchLength, ZERO) <= 0) return refused({ code: 'NO_EFFECTIVE_LENGTH' });
  const effective = add(wrenchLength, multiply(length, cosineOfDegrees(angleDegrees)));
  if (compare(effective, ZERO) <= 0) return refused({ code: 'NO_EFFECTIVE_LENGTH' });
  return accepted(divide(effective, wrenchLength));
}

/**
 * The torque at the fastener, T = Y·(L + E·cos a)/L, in the unit of the indication.
 *
 * Holds while the hand is at the grip and pulls in the plane of both; an extension along the drive axis does not
 * count. Exact but for the cosine, which is kept to twelve decimals. Refuses: NO_EFFECTIVE_LENGTH,
 * ANGLE_OUT_OF_RANGE.
 *
 * Source: FAA AC 43.13-1B, figure 7-2 (straight out, and back); US Army TM 9-254, figure 4-6 (at an angle).
 */
export function torqueAtFastener(
  indication: Fraction,
  extension: Extension,
): Result<Fraction, ExtensionRefusal> {
  const found = gain(extension);
  return found.ok ? accepted(multiply(indication, found.value)) : found;
}

/** What the wrench is set to for a torque at the fastener, Y = T·L/(L + E·cos a). As `torqueAtFastener`. */
export function wrenchSetting(torque: Fraction, extension: Extension): Result<Fraction, ExtensionRefusal> {
  const found = gain(extension);
  return found.ok ? accepted(divide(torque, found.value)) : found;
}
