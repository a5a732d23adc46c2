import { reasonInWords } from '../due-points/windows.js';

/** Why something is not verified, not applicable or closed: its code, and the sentence. */
export interface Reason {
  readonly code: string;
  readonly words: string;
}

/** A reason whose words hang on its code alone. Total. */
export function reasonOf(code: string): Reason {
  return { code, words: reasonInWords(code) ?? code };
}
