import crypto from 'node:crypto';

/** The id the filling made of a text, as md5(text)::uuid does. */
export function idOf(text) {
  const hex = crypto.createHash('md5').update(text).digest('hex');
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

/** The id the filling gave an airframe. */
export const airframe = (number) => idOf(`a${number}`);

export const PERSON = idOf('person');

/** The token of the session the filling made. */
export const TOKEN = 'bench-session-'.padEnd(43, 'x');
