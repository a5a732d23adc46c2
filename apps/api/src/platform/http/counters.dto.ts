import type { Fraction } from '@strutbook/domain/units/fraction.js';

/** Cycles, exact: whole units over a denominator. */
export class CyclesDto {
  /** Whole units. */
  units!: number;
  /** How many units make a cycle. */
  denominator!: number;
}

/** A pair of counters; null where something needed is not known. */
export class CountersDto {
  /** Whole minutes. */
  minutes!: number | null;
  /** Cycles, exact. */
  cycles!: CyclesDto | null;
}

/** Cycles on the wire. Throws beyond 2^53. */
export function toCycles(cycles: Fraction): CyclesDto {
  return { units: Number(cycles.num), denominator: Number(cycles.den) };
}

/** Counters on the wire. */
export function toCounters({
  minutes,
  cycles,
}: {
  readonly minutes: number | null;
  readonly cycles: Fraction | null;
}): CountersDto {
  return { minutes, cycles: cycles === null ? null : toCycles(cycles) };
}
