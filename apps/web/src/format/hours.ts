const MINUTES_PER_HOUR = 60;

/** A whole number with a comma at each thousand: 21480 -> '21,480'. Total for whole numbers. */
export function thousands(count: number): string {
  const digits = String(Math.abs(count)).replace(/\B(?=(\d{3})+$)/g, ',');
  return count < 0 ? `\u2212${digits}` : digits;
}

/** Whole minutes as hours and minutes: 1288836 -> '21,480:36'. */
export function hoursMinutes(minutes: number): string {
  const size = Math.abs(minutes);
  const hours = Math.floor(size / MINUTES_PER_HOUR);
  const rest = String(size % MINUTES_PER_HOUR).padStart(2, '0');
  return `${minutes < 0 ? '\u2212' : ''}${thousands(hours)}:${rest}`;
}

/** Whole minutes as hours and tenths, a half tenth rounded up: 63 -> '1.1'. For display only. */
export function hoursTenths(minutes: number): string {
  const size = Math.abs(minutes);
  const tenths = Math.floor((size + 3) / 6);
  const sign = minutes < 0 && tenths > 0 ? '\u2212' : '';
  return `${sign}${thousands(Math.floor(tenths / 10))}.${tenths % 10}`;
}

export type HoursStyle = 'minutes' | 'tenths';

/** Hours as this person's setting shows them. */
export function hours(minutes: number, style: HoursStyle = 'minutes'): string {
  return style === 'tenths' ? hoursTenths(minutes) : hoursMinutes(minutes);
}

export type TypedMinutes =
  | { readonly ok: true; readonly minutes: number }
  | { readonly ok: false; readonly reason: string };

/** Typed hours, 'h:mm' with or without thousands commas, as whole minutes. */
export function parseHours(typed: string): TypedMinutes {
  const match = /^(\d{1,3}(?:,\d{3})+|\d{1,7}):([0-5]\d)$/.exec(typed.trim());
  const [, whole, rest] = match ?? [];
  if (whole === undefined || rest === undefined) {
    return { ok: false, reason: 'Enter hours and minutes with a colon, for example 3:42' };
  }
  return { ok: true, minutes: Number(whole.replaceAll(',', '')) * MINUTES_PER_HOUR + Number(rest) };
}
