import { refuse } from '../../platform/problems/refusal.error.js';
import type { Sort } from './due-list.sql.js';

/** Where a page of the most urgent ended, and when its list was begun: later pages count use by the same days. */
export interface DueCursor {
  readonly now: Date;
  readonly rank: number;
  readonly urgency: number;
  readonly dueAt: number;
  readonly id: string;
}

/** Where a page in any order ended. */
export interface ListCursor {
  readonly now: Date;
  readonly sort: Sort;
  readonly descending: boolean;
  readonly numbers: readonly [number, number, number];
  readonly text: string;
  readonly id: string;
}

const packed = (parts: readonly unknown[]): string =>
  Buffer.from(JSON.stringify(parts)).toString('base64url');

/** The cursor as it travels. Total. */
export function writeCursor({ now, rank, urgency, dueAt, id }: DueCursor): string {
  return packed([now.getTime(), rank, urgency, dueAt, id]);
}

/** The cursor as it travels. Total. */
export function writeListCursor({ now, sort, descending, numbers, text, id }: ListCursor): string {
  return packed([now.getTime(), ...numbers, id, text, sort, descending]);
}

/** The cursor that was sent back. Refuses: INVALID_FIELDS. */
export function readCursor(text: string): DueCursor {
  const [now, rank, urgency, dueAt, id, ...more] = unpacked(text);
  if (!isKey([now, rank, urgency, dueAt], id) || more.length > 0) return refuseCursor();
  return {
    now: new Date(now as number),
    rank: rank as number,
    urgency: urgency as number,
    dueAt: dueAt as number,
    id,
  };
}

/** The cursor that was sent back for this order. Refuses: INVALID_FIELDS. */
export function readListCursor(
  sent: string,
  order: { readonly sort: Sort; readonly descending: boolean },
): ListCursor {
  const [now, n1, n2, n3, id, text, sort, descending] = unpacked(sent);
  if (
    !isKey([now, n1, n2, n3], id) ||
    typeof text !== 'string' ||
    sort !== order.sort ||
    descending !== order.descending
  )
    return refuseCursor();
  return {
    ...order,
    now: new Date(now as number),
    numbers: [n1 as number, n2 as number, n3 as number],
    text,
    id,
  };
}

function unpacked(text: string): unknown[] {
  try {
    const parts: unknown = JSON.parse(Buffer.from(text, 'base64url').toString());
    return Array.isArray(parts) ? parts : [];
  } catch {
    // Not one of ours: refused by who asked.
    return [];
  }
}

function isKey(numbers: readonly unknown[], id: unknown): id is string {
  return numbers.every(Number.isSafeInteger) && typeof id === 'string' && /^[0-9a-f-]{36}$/.test(id);
}

function refuseCursor(): never {
  return refuse({
    code: 'INVALID_FIELDS',
    fields: [
      {
        field: 'after',
        reason: 'This names no place in the list.',
        fix: "Send back the 'next' of the page before.",
      },
    ],
  });
}
