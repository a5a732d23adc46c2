/** Cycles as they are sent: whole units over a denominator. */
export interface TypedCycles {
  readonly units: number;
  readonly denominator: number;
}

// A comma or point before three digits parts thousands to one reader and decimals to another: only '8,226' passes.
const FORM = /^(\d{1,3}(?:,\d{3})+|\d{1,9})(?:\.(\d{1,2})|\s+(\d{1,3})\/(\d{1,3}))?$/;

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));

function lowest(units: number, denominator: number): TypedCycles {
  const divisor = commonDivisor(units, denominator) || 1;
  return { units: units / divisor, denominator: denominator / divisor };
}

/** '8226' -> 8226 over 1, '8226.5' -> 16453 over 2, '8226 1/3' -> 24679 over 3. Null for anything else. */
export function readCycles(typed: string): TypedCycles | null {
  const match = FORM.exec(typed.trim());
  if (match === null) return null;
  const [, grouped = '0', decimals, numerator, denominator] = match;
  const whole = grouped.replaceAll(',', '');
  if (decimals !== undefined) {
    const scale = 10 ** decimals.length;
    return lowest(Number(whole) * scale + Number(decimals), scale);
  }
  if (numerator === undefined || denominator === undefined) return { units: Number(whole), denominator: 1 };
  const parts = Number(denominator);
  return parts === 0 ? null : lowest(Number(whole) * parts + Number(numerator), parts);
}
