import type { Objection } from './objection.js';
import type { ObjectionText, Phrase } from './words/phrase.js';
import { RECORD_PHRASES } from './words/record-words.js';
import { WORK_PHRASES } from './words/work-words.js';

export type { ObjectionText } from './words/phrase.js';

const PHRASES: Readonly<Record<Objection['code'], Phrase>> = { ...RECORD_PHRASES, ...WORK_PHRASES };

/** The words for an objection: its record, the reason and the fix. Hours as h:mm, cycles whole. Total. */
export function objectionText({ code, detail }: Pick<Objection, 'code' | 'detail'>): ObjectionText {
  return PHRASES[code](detail);
}
