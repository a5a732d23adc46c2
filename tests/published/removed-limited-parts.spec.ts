import { describe, expect, it } from '@jest/globals';
import { needsDisposition } from '@strutbook/domain/shop/disposition.js';

/**
 * Source: 14 CFR 43.10(b) and (c), disposition of life-limited aircraft parts: a part removed from a type-certificated
 * product is controlled by a record, a tag, a mark, segregation, mutilation or another accepted method; none is needed
 * for a part temporarily removed and reinstalled on the same serial-numbered product, its life status unchanged and the
 * product without time in service meanwhile. Serials invented.
 */
describe('a life-limited part that was removed (14 CFR 43.10)', () => {
  it('needs no disposition when it goes back to the same engine with no time accrued', () => {
    expect(needsDisposition({ removedFromId: 'E-22', refittedToId: 'E-22', timeAccrued: false })).toBe(false);
  });

  it('needs one when it goes to another engine', () => {
    expect(needsDisposition({ removedFromId: 'E-22', refittedToId: 'E-40', timeAccrued: false })).toBe(true);
  });

  it('needs one while it is fitted to none, and when time was accrued or nobody knows', () => {
    expect(needsDisposition({ removedFromId: 'E-22', refittedToId: null, timeAccrued: false })).toBe(true);
    expect(needsDisposition({ removedFromId: 'E-22', refittedToId: 'E-22', timeAccrued: true })).toBe(true);
    expect(needsDisposition({ removedFromId: 'E-22', refittedToId: 'E-22', timeAccrued: null })).toBe(true);
  });
});
