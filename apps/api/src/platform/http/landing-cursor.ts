import { refuse } from '../problems/refusal.error.js';

/** The flight a page ended with. */
export interface LandingCursor {
  readonly landingAt: Date;
  readonly id: string;
}

/** The text that continues after a flight. Total. */
export function cursorAfter({ landingAt, id }: LandingCursor): string {
  return Buffer.from(`${landingAt.toISOString()} ${id}`).toString('base64url');
}

/** Reads such a text. Refuses: INVALID_FIELDS. */
export function readCursor(text: string): LandingCursor {
  const [moment = '', id = ''] = Buffer.from(text, 'base64url').toString().split(' ');
  const landingAt = new Date(moment);
  if (Number.isNaN(landingAt.getTime()) || !/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i.test(id)) {
    const reason = 'This is no place in the list.';
    refuse({
      code: 'INVALID_FIELDS',
      fields: [{ field: 'after', reason, fix: 'Send what the page before gave as `next`.' }],
    });
  }
  return { landingAt, id };
}
