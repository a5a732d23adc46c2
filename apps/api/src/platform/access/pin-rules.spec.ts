import { describe, expect, it } from '@jest/globals';
import { RefusalError } from '../problems/refusal.error.js';
import { refuseTrivialPin } from './pin-rules.js';

const verdict = (pin: string): string => {
  try {
    refuseTrivialPin(pin, 'pin');
    return 'taken';
  } catch (error) {
    return error instanceof RefusalError ? error.refusal.code : 'fault';
  }
};

describe('a PIN', () => {
  it.each(['000000', '77777777', '123456', '654321', '890123', '321098765432'])('%s is too easy', (pin) => {
    expect(verdict(pin)).toBe('PASSWORD_TOO_WEAK');
  });

  it.each(['271828', '112233', '123457', '000001', '135790'])('%s is taken', (pin) => {
    expect(verdict(pin)).toBe('taken');
  });
});
