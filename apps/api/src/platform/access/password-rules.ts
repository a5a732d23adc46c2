import { refuse } from '../problems/refusal.error.js';

/** Fewest characters where the password is the only factor. Source: NIST SP 800-63B-4, 3.1.1.2. */
export const SHORTEST_PASSWORD = 15;
export const LONGEST_PASSWORD = 256;

/**
 * Refuses a password that is short or easy to guess; asks for no mixture of signs and no regular change.
 * Refuses: PASSWORD_TOO_WEAK about `field`.
 */
export function refuseWeakPassword(password: string, words: readonly string[], field: string): void {
  const length = [...password].length;
  if (length < SHORTEST_PASSWORD) {
    const reason = `It has ${length} characters; ${SHORTEST_PASSWORD} are the fewest.`;
    refuse({
      code: 'PASSWORD_TOO_WEAK',
      field,
      reason,
      fix: 'Use four or more words that only you would put together.',
    });
  }
  const plain = password.toLowerCase();
  const guessable =
    new Set(plain).size < 6 || words.some((word) => word.length > 3 && isMostly(plain, word.toLowerCase()));
  if (guessable) {
    const reason = 'It is made of few signs, or of your own or your operator’s name.';
    refuse({
      code: 'PASSWORD_TOO_WEAK',
      field,
      reason,
      fix: 'Use four or more words that only you would put together.',
    });
  }
}

/** True when the word, repeated, makes up more than half of the text. */
function isMostly(text: string, word: string): boolean {
  return text.replaceAll(word, '').length < text.length / 2;
}
