import { refuse } from '../problems/refusal.error.js';

const FIX = 'Take six to twelve digits that are neither one digit repeated nor digits in a row.';

/**
 * Refuses a PIN that anyone would try first: one digit repeated, or digits in a row, up or down, 0 following 9.
 * Refuses: PASSWORD_TOO_WEAK about `field`.
 */
export function refuseTrivialPin(pin: string, field: string): void {
  const digits = [...pin].map(Number);
  const steps = new Set(digits.slice(1).map((digit, index) => (digit - (digits[index] ?? 0) + 10) % 10));
  const [step] = steps;
  if (steps.size > 1 || (step !== 0 && step !== 1 && step !== 9)) return;
  const reason = step === 0 ? 'It is one digit repeated.' : 'Its digits are in a row.';
  refuse({ code: 'PASSWORD_TOO_WEAK', field, reason, fix: FIX });
}
