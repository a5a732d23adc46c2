import { refuse } from '../../platform/problems/refusal.error.js';

/** Where a page ended, and when its list was begun: later pages count use by the same 90 days. */
export interface DueCursor {
  readonly now: Date;
  readonly rank: number;
  readonly urgency: number;
  readonly dueAt: number;
  readonly id: string;
}

/** The cursor as it travels. Total. */
export function writeCursor({ now, rank, urgency, dueAt, id }: DueCursor): string {
  return Buffer.from(JSON.stringify([now.getTime(), rank, urgency, dueAt, id])).toString('base64url');
}

/** The cursor that was sent back. Refuses: INVALID_FIELDS. */
export function readCursor(text: string): DueCursor {
  try {
    const [now, rank, urgency, dueAt, id] = JSON.parse(
      Buffer.from(text, 'base64url').toString(),
    ) as unknown[];
    if (
      [now, rank, urgency, dueAt].every(Number.isSafeInteger) &&
      typeof id === 'string' &&
      /^[0-9a-f-]{36}$/.test(id)
    )
      return {
        now: new Date(now as number),
        rank: rank as number,
        urgency: urgency as number,
        dueAt: dueAt as number,
        id,
      };
  } catch {
    // not one of ours: refused below
  }
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
