/** A plain JSON value: what can be written in the canonical form. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/** Thrown for a value that has no canonical form, with where it stands. */
export class NotCanonicalError extends Error {
  constructor(reason: string, path: string) {
    super(`${reason} at ${path === '' ? 'the top' : path}`);
    this.name = 'NotCanonicalError';
  }
}

/**
 * The canonical form of a plain JSON value: one text for one meaning, so that it can be hashed and signed.
 *
 * Members sorted by UTF-16 units, no white space, numbers as ECMAScript prints them (−0 is 0).
 * Throws NotCanonicalError for NaN, Infinity, undefined, bigint, functions, symbols, lone surrogates, cycles,
 * holes in arrays, and objects that are not plain (a Map would silently become {}).
 *
 * Source: RFC 8785, JSON Canonicalization Scheme.
 */
export function canonical(value: Json): string {
  return write(value, '', new Set());
}

function write(value: unknown, path: string, above: Set<object>): string {
  if (value === null || value === true || value === false) return String(value);
  if (typeof value === 'number') return writeNumber(value, path);
  if (typeof value === 'string') return writeString(value, path);
  if (typeof value !== 'object') throw new NotCanonicalError(`a value of type ${typeof value}`, path);
  if (above.has(value)) throw new NotCanonicalError('a cycle', path);
  above.add(value);
  const text = Array.isArray(value) ? writeArray(value, path, above) : writeObject(value, path, above);
  above.delete(value);
  return text;
}

function writeNumber(value: number, path: string): string {
  if (!Number.isFinite(value)) throw new NotCanonicalError(`the number ${value}`, path);
  return JSON.stringify(value);
}

function writeString(value: string, path: string): string {
  if (/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/.test(value))
    throw new NotCanonicalError('a lone surrogate', path);
  return JSON.stringify(value);
}

function writeArray(value: readonly unknown[], path: string, above: Set<object>): string {
  // Array.from visits holes too, as undefined, which is then refused.
  return `[${Array.from(value, (element, index) => write(element, `${path}/${index}`, above)).join(',')}]`;
}

function writeObject(value: object, path: string, above: Set<object>): string {
  const prototype: unknown = Object.getPrototypeOf(value);
  // A plain object of another realm has a prototype that is not ours but has none itself.
  const plain = prototype === null || Object.getPrototypeOf(prototype) === null;
  if (!plain) throw new NotCanonicalError('an object that is not plain', path);
  const members = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  return `{${members
    .map(([key, member]) => `${writeString(key, path)}:${write(member, `${path}/${key}`, above)}`)
    .join(',')}}`;
}
