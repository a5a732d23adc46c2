/** A range of serial numbers, both ends included; null: open at that end. */
export interface SerialRange {
  readonly from: string | null;
  readonly to: string | null;
}

interface Serial {
  readonly prefix: string;
  readonly number: bigint;
}

// The digits at its end are the number; all before them is the prefix.
function serialOf(text: string): Serial | null {
  const match = /^(.*?)(\d+)$/u.exec(text);
  return match === null ? null : { prefix: match[1] ?? '', number: BigInt(match[2] ?? '0') };
}

/** Whether the ends can be compared: each ends in a number, both begin alike, and the first is not the greater. Total. */
export function isSerialRange({ from, to }: SerialRange): boolean {
  const [first, last] = [from, to].map((end) => (end === null ? null : serialOf(end)));
  if ((from !== null && first == null) || (to !== null && last == null)) return false;
  if (first == null || last == null) return from !== null || to !== null;
  return first.prefix === last.prefix && first.number <= last.number;
}

/**
 * Whether a serial number lies in a range that can be compared: by its number, where it begins like the ends (2 before
 * 10). Another beginning lies outside. Null when it does not end in a number: nobody can tell. Total.
 */
export function inSerialRange(serial: string, { from, to }: SerialRange): boolean | null {
  const found = serialOf(serial);
  if (found === null) return null;
  const [first, last] = [from, to].map((end) => (end === null ? null : serialOf(end)));
  const prefix = first?.prefix ?? last?.prefix ?? found.prefix;
  if (found.prefix !== prefix) return false;
  return (first == null || found.number >= first.number) && (last == null || found.number <= last.number);
}
