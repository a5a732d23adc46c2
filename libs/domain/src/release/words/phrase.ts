import type { Objection } from '../objection.js';

/** An objection in words: the record it is about, the reason, and what would answer it. */
export interface ObjectionText {
  readonly record: string;
  readonly reason: string;
  readonly fix: string;
}

export type Detail = Objection['detail'];
export type Phrase = (detail: Detail) => ObjectionText;
