import { describe, expect, it } from '@jest/globals';
import { accepted, refused } from './result.js';

describe('a result', () => {
  it('carries a value when accepted', () => {
    expect(accepted(3)).toEqual({ ok: true, value: 3 });
  });

  it('carries the reason when refused', () => {
    expect(refused({ code: 'X' })).toEqual({ ok: false, refusal: { code: 'X' } });
  });
});
