import { thousands } from './hours.js';

/** Cycles as the server tells them, exact: whole units over a denominator. */
export interface ExactCycles {
  readonly units: number;
  readonly denominator: number;
}

const commonDivisor = (a: number, b: number): number => (b === 0 ? Math.abs(a) : commonDivisor(b, a % b));

/** The decimals of rest/denominator, or null when they do not end within three. */
function decimals(rest: number, denominator: number): string | null {
  const scaled = (rest * 1000) / denominator;
  return Number.isInteger(scaled) ? String(scaled).padStart(3, '0').replace(/0+$/, '') : null;
}

/** Exact, nothing rounded: 15963 halves -> '7,981.5', 3 thirds -> '1', 4 thirds -> '1 1/3'. */
export function exactCycles({ units, denominator }: ExactCycles): string {
  const whole = Math.trunc(units / denominator);
  const rest = Math.abs(units % denominator);
  const sign = units < 0 && whole === 0 ? '\u2212' : '';
  if (rest === 0) return thousands(whole);
  const ending = decimals(rest, denominator);
  if (ending !== null) return `${sign}${thousands(whole)}.${ending}`;
  const divisor = commonDivisor(rest, denominator);
  return `${sign}${thousands(whole)} ${rest / divisor}/${denominator / divisor}`;
}

/** 'Not known' where no record says. */
export const cyclesOrUnknown = (cycles: ExactCycles | null): string =>
  cycles === null ? 'Not known' : exactCycles(cycles);

/** A share of a life in percent, cut after one decimal, so that 100 is said only when all is used: '81.6 %'. */
export function sharePercent({ units, denominator }: ExactCycles): string {
  const tenths = Math.floor((units * 1000) / denominator);
  return `${thousands(Math.trunc(tenths / 10))}.${Math.abs(tenths % 10)} %`;
}
