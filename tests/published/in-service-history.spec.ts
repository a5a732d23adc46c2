import { describe, expect, it } from '@jest/globals';
import { lifeOf } from '@strutbook/domain/life/limited-life.js';
import { statusOf } from '@strutbook/domain/life/status.js';
import { objectionsToLife } from '@strutbook/domain/release/objections-to-life.js';
import { fraction } from '@strutbook/domain/units/fraction.js';

/**
 * Source: Regulation (EU) 1321/2014, M.A.305 (an in-service history record for each life-limited part, on which
 * its status is determined), and an older text of M.A.504 (a component is unserviceable where information to
 * determine its status is missing).
 */
describe('an in-service history with a gap (Reg. 1321/2014, M.A.305; older M.A.504)', () => {
  const gap = { id: 'g', description: '1 March to 1 June' };
  const life = lifeOf({
    used: [{ ratingId: 'r', minutes: 0, cycles: fraction(4000) }],
    limits: [{ ratingId: 'r', kind: 'limited', cycles: 20_000, minutes: null }],
    method: 'pro-rata',
    ratingNow: 'r',
    traceGaps: [gap],
    acceptance: null,
  });

  it('is unsubstantiated and has no remaining', () => {
    expect(life).toEqual({ kind: 'unsubstantiated', reasons: [{ code: 'TRACE_GAP', gap }] });
    expect(statusOf(null, { alert: 1, planning: 1, tolerance: 0 })).toBe('not-verified');
  });

  it('is held against fitting and release', () => {
    const held = objectionsToLife(
      life,
      (code, severity, detail = {}) => ({
        code,
        severity,
        positionNumber: 1,
        record: { kind: 'component', id: 'c' },
        detail,
      }),
      null,
    );
    expect(held).toMatchObject([{ code: 'LIMITED_PART_UNTRACED', severity: 'blocking' }]);
  });
});
