import { describe, expect, it } from '@jest/globals';
import { isPreservationOver, unfitBecause } from './unfit.js';

describe('serviceability', () => {
  it('holds the newest tag against fitting, unless it says serviceable', () => {
    expect(unfitBecause({ tag: { status: 'unserviceable', tagNumber: 'T-1' }, openVisit: null })).toEqual({
      why: 'unserviceable',
      reference: 'T-1',
    });
    expect(unfitBecause({ tag: { status: 'quarantine', tagNumber: 'T-2' }, openVisit: 'RO-1' })).toEqual({
      why: 'quarantine',
      reference: 'T-2',
    });
    expect(unfitBecause({ tag: { status: 'serviceable', tagNumber: 'T-3' }, openVisit: null })).toBeNull();
  });

  it('holds a shop visit without return against fitting, whatever the tag', () => {
    const tag = { status: 'serviceable', tagNumber: 'T-3' } as const;
    expect(unfitBecause({ tag, openVisit: 'RO-1' })).toEqual({ why: 'in-shop', reference: 'RO-1' });
    expect(unfitBecause({ tag: null, openVisit: 'RO-1' })).toEqual({ why: 'in-shop', reference: 'RO-1' });
    expect(unfitBecause({ tag: null, openVisit: null })).toBeNull();
  });

  it('takes a preservation as good through its last day', () => {
    expect(isPreservationOver('2026-03-31', '2026-03-31')).toBe(false);
    expect(isPreservationOver('2026-03-31', '2026-04-01')).toBe(true);
  });
});
