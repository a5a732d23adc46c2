/** A decimal as a whole number of 10^-scale: 118.40 is { scaled: 11840n, scale: 2 }. Nothing is rounded. */
export interface Decimal {
  readonly scaled: bigint;
  readonly scale: number;
}

export type TypedReading =
  | { readonly ok: true; readonly value: Decimal; readonly text: string }
  | { readonly ok: false; readonly reason: string };

export interface ReadingRange {
  /** Decimal text as the procedure prints it, e.g. '105.0'. Both ends belong to the range. */
  readonly low: string;
  readonly high: string;
}

export type Verdict = { readonly kind: 'inside' } | { readonly kind: 'above' | 'below'; readonly by: string };

const READING = /^(-?)(\d{1,9})(?:[.,](\d{1,9}))?$/;

/** Typed text as an exact decimal. '.' and ',' both mark the decimals; no thousands marks, no exponents. */
export function parseReading(typed: string): TypedReading {
  const match = READING.exec(typed.trim());
  const [, sign = '', whole, decimals = ''] = match ?? [];
  if (whole === undefined) return { ok: false, reason: 'Enter digits with at most one decimal mark' };
  const scaled = BigInt(whole + decimals) * (sign === '-' ? -1n : 1n);
  const text = `${sign}${whole}${decimals === '' ? '' : `.${decimals}`}`;
  return { ok: true, value: { scaled, scale: decimals.length }, text };
}

const scaledTo = (value: Decimal, scale: number): bigint => value.scaled * 10n ** BigInt(scale - value.scale);

function decimalText(scaled: bigint, scale: number): string {
  const digits = String(scaled < 0n ? -scaled : scaled).padStart(scale + 1, '0');
  const cut = digits.length - scale;
  const decimals = digits.slice(cut).replace(/0+$/, '');
  return `${scaled < 0n ? '\u2212' : ''}${digits.slice(0, cut)}${decimals === '' ? '' : `.${decimals}`}`;
}

/** Where the reading lies. Both bounds are inside. Null when a bound itself cannot be read. */
export function verdictOf(reading: Decimal, range: ReadingRange): Verdict | null {
  const low = parseReading(range.low);
  const high = parseReading(range.high);
  if (!low.ok || !high.ok) return null;
  const scale = Math.max(reading.scale, low.value.scale, high.value.scale);
  const value = scaledTo(reading, scale);
  const floor = scaledTo(low.value, scale);
  const ceiling = scaledTo(high.value, scale);
  if (value > ceiling) return { kind: 'above', by: decimalText(value - ceiling, scale) };
  if (value < floor) return { kind: 'below', by: decimalText(floor - value, scale) };
  return { kind: 'inside' };
}

/** '88.0 to 92.5', 'at least 42', 'at most 865'; an end that is null is open. */
export function limitWords({
  low,
  high,
}: {
  readonly low: string | null;
  readonly high: string | null;
}): string {
  if (low !== null && high !== null) return `${low} to ${high}`;
  if (low !== null) return `at least ${low}`;
  return high === null ? 'none set' : `at most ${high}`;
}

/** A verdict in words: '3.4 N·m above the range'. */
export function verdictWords(verdict: Verdict, unit: string, range: ReadingRange): string {
  if (verdict.kind === 'inside') return `Inside the range, ${range.low} to ${range.high} ${unit}`;
  return `${verdict.by} ${unit} ${verdict.kind} the range`;
}
