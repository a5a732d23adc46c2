import type { DuePageRow } from './due-columns.sql.js';

const TOLD = {
  id: true,
  kind: true,
  componentId: true,
  description: true,
  partNumber: true,
  serialNumber: true,
  engineId: true,
  engineSerial: true,
  airframeId: true,
  registration: true,
  positionNumber: true,
  verdict: true,
  dimension: true,
  flagged: true,
  reason: true,
  rank: true,
  remaining: true,
  daysLeft: true,
  dueOn: true,
  limit: true,
  document: true,
  revision: true,
  requirementId: true,
  requirementCode: true,
  requirementTitle: true,
  requirementKind: true,
  combine: true,
  dues: true,
} as const satisfies Partial<Record<keyof DuePageRow, true>>;

/** What is told of a row; not the key it is sorted by, nor what its airframe uses. */
export type ToldRow = Pick<DuePageRow, keyof typeof TOLD>;

const NAMES = Object.keys(TOLD);

/** The rows of a statement as one text each, which is far quicker to send and to read than columns by the dozen. */
export const toldText = (statement: string): string =>
  `SELECT json_build_array(${NAMES.map((name) => `told."${name}"`).join(', ')})::text AS told FROM (${statement}) AS told`;

/** A row from its text. Total for those. */
export function readTold(text: string): ToldRow {
  const values: unknown[] = JSON.parse(text);
  const row: Record<string, unknown> = {};
  for (let at = 0; at < NAMES.length; at += 1) row[NAMES[at] as string] = values[at];
  return row as unknown as ToldRow;
}
