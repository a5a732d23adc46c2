import type { Faults } from '../../ui/fields/act-form.js';

/** A fault for each of the fields left empty. */
export function missing(typed: object, messages: Readonly<Record<string, string>>): Faults {
  const held = typed as Readonly<Record<string, unknown>>;
  const empty = Object.entries(messages).filter(([field]) => String(held[field] ?? '').trim() === '');
  return Object.fromEntries(empty);
}

/** Faults of a row inside a form, under its path: 'ratings.0.code'. */
export const under = (path: string, faults: Faults): Faults =>
  Object.fromEntries(Object.entries(faults).map(([field, message]) => [`${path}.${field}`, message]));

/** Faults of all rows of a kind. */
export const underRows = <Row>(path: string, rows: readonly Row[], check: (row: Row) => Faults): Faults =>
  Object.assign({}, ...rows.map((row, place) => under(`${path}.${place}`, check(row))));

const WHOLE = /^\d{1,9}$/;

/** A whole number as typed; null for anything else. */
export const whole = (typed: string): number | null =>
  WHOLE.test(typed.trim()) ? Number(typed.trim()) : null;

/** The member only when something was typed. */
export const filled = <Name extends string>(name: Name, typed: string): Partial<Record<Name, string>> =>
  (typed.trim() === '' ? {} : { [name]: typed.trim() }) as Partial<Record<Name, string>>;
