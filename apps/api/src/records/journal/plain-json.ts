import type { Json } from '@strutbook/journal/canonical.js';

/** A value as plain JSON, as an entry's body keeps it: what JSON has no word for is left out. */
export function plainJson<T extends object>(value: T): Readonly<Record<string, Json>> {
  return JSON.parse(JSON.stringify(value)) as Readonly<Record<string, Json>>;
}
