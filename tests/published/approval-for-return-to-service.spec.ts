import { describe, expect, it } from '@jest/globals';
import { mayBeReleased } from '@strutbook/domain/release/check-release.js';
import { heldAgainst } from './release-with.js';

/**
 * Source: 14 CFR 43.9(a)(4): the signature, certificate number and kind of certificate of who approves the work. Names
 * invented.
 */
describe('an approval for return to service (14 CFR 43.9)', () => {
  const by = (licence: string | null) =>
    heldAgainst({ releaser: { personId: 'ann', name: 'Ann Able', licence, authorised: true } });

  it('is rejected without a certificate number', () => {
    for (const none of [null, '', ' ']) {
      expect(by(none).map(({ code }) => code)).toEqual(['RELEASER_WITHOUT_LICENCE']);
      expect(mayBeReleased(by(none))).toBe(false);
    }
  });

  it('is given with one', () => {
    expect(by('1234567')).toEqual([]);
    expect(mayBeReleased(by('1234567'))).toBe(true);
  });
});
