import { describe, expect, it } from '@jest/globals';
import { instant } from '../units/minutes.js';
import { zeroCounts } from './counts.js';
import { adjustExposures, type KeptExposure } from './late-flight.js';

const counts = { ...zeroCounts, minutes: 90, flights: 1 };
const readBy = new Set(['airframe', 'pos1']);
const kept = (from: number, to: number | null, carrierId = 'pos1'): KeptExposure => ({
  id: 'x',
  carrierId,
  from: instant(from),
  to: to === null ? null : instant(to),
});
const changeBy = (exposure: KeptExposure, at: number) =>
  adjustExposures({ carrierId: 'airframe', at: instant(at), counts }, { readBy, exposures: [exposure] })[0]
    ?.change ?? null;

describe('a posting in the past', () => {
  it.each([
    [100, null],
    [101, 'amounts'],
    [200, 'amounts'],
    [201, null],
  ])('landing at %i leaves a closed exposure (100, 200] with a change of %s', (at, change) => {
    expect(changeBy(kept(100, 200), at)).toBe(change);
  });

  it.each([
    [99, 'base'],
    [100, 'base'],
    [101, null],
  ])('landing at %i leaves an open exposure from 100 with a change of %s', (at, change) => {
    expect(changeBy(kept(100, null), at)).toBe(change);
  });

  it('touches no exposure of another carrier', () => {
    expect(changeBy(kept(100, 200, 'pos of another'), 150)).toBeNull();
  });

  it('gives the posting’s own counts', () => {
    const [adjustment] = adjustExposures(
      { carrierId: 'airframe', at: instant(150), counts },
      { readBy, exposures: [kept(100, 200)] },
    );
    expect(adjustment).toEqual({ exposureId: 'x', change: 'amounts', add: counts });
  });
});
