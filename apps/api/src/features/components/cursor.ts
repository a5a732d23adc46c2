import { refuse } from '../../platform/problems/refusal.error.js';

/** The row a page ended with. */
export interface ComponentCursor {
  readonly serialNumber: string;
  readonly id: string;
}

/** The text that continues after a row. Total. */
export function cursorAfter({ serialNumber, id }: ComponentCursor): string {
  return Buffer.from(JSON.stringify([serialNumber, id])).toString('base64url');
}

/** Reads such a text. Refuses: INVALID_FIELDS. */
export function readCursor(text: string): ComponentCursor {
  const fields = [
    {
      field: 'after',
      reason: 'This is no place in the list.',
      fix: 'Send what the page before gave as `next`.',
    },
  ];
  try {
    const [serialNumber, id] = JSON.parse(Buffer.from(text, 'base64url').toString()) as [unknown, unknown];
    if (typeof serialNumber === 'string' && typeof id === 'string' && /^[0-9a-f-]{36}$/i.test(id))
      return { serialNumber, id };
  } catch {
    // falls through to the refusal
  }
  return refuse({ code: 'INVALID_FIELDS', fields });
}
