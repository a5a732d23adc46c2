import type { Answer } from '../http-client.js';
import { inShort, problemOf } from './problem.js';
import { storedRows } from './stored-rows.js';

/** Something that can't have been so, and how it is told. */
export interface Impossible {
  readonly body: object;
  readonly status: number;
  readonly code: string;
  /** The field to blame; null where no field is. */
  readonly field: string | null;
}

/** Whether a path such as 'flights[0].landingAt' leads to a field of the request; the last may have been left out. */
function isIn(body: unknown, path: string): boolean {
  const steps = path.split(/[.[\]]+/).filter(Boolean);
  let at: unknown = body;
  for (const step of steps) {
    if (typeof at !== 'object' || at === null) return false;
    at = (at as Record<string, unknown>)[step];
  }
  return true;
}

/**
 * Sends it and answers all that is wrong with how it is refused: another status, code or field; a field that the
 * request doesn't have; a reason or a fix that is no sentence; anything changed in any table.
 */
export async function faultsOfRefusal(
  adminUrl: string,
  { body, ...expected }: Impossible,
  send: (body: object) => Promise<Answer>,
): Promise<readonly string[]> {
  const before = await storedRows(adminUrl);
  const answer = await send(body);
  const after = await storedRows(adminUrl);
  const faults = Object.keys(after).flatMap((table) =>
    after[table] === before[table] ? [] : [`${table} changed`],
  );
  if (answer.status < 300) return [...faults, `taken: ${inShort(answer)}`];
  const { code, fields = [] } = problemOf(answer);
  const told = [answer.status, code, fields[0]?.field ?? null].join(' ');
  const wanted = [expected.status, expected.code, expected.field].join(' ');
  if (told !== wanted) faults.push(`told ${told}, not ${wanted}: ${inShort(answer)}`);
  for (const { field, reason, fix } of fields) {
    if (!isIn(body, field)) faults.push(`the request has no ${field}`);
    for (const sentence of [reason, fix])
      if (!/^\S.{3,}[.!?]$/.test(sentence)) faults.push(`no sentence: ${sentence}`);
  }
  return faults;
}
