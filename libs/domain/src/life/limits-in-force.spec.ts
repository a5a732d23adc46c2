import { describe, expect, it } from '@jest/globals';
import { instant } from '../units/minutes.js';
import { type LifeLimit, limitsInForce } from './limits-in-force.js';

const row = (
  id: string,
  revisionId: string,
  effectiveAt: number,
  change: Partial<LifeLimit> = {},
): LifeLimit =>
  ({
    id,
    revisionId,
    effectiveAt: instant(effectiveAt),
    partNumber: 'P',
    modelId: 'M',
    ratingId: 'low',
    kind: 'limited',
    cycles: 10,
    minutes: null,
    ...change,
  }) as LifeLimit;
const limits = [
  row('1', 'rev 1', 0),
  row('1h', 'rev 1', 0, { ratingId: 'high' }),
  row('2', 'rev 2', 100),
  row('x', 'rev 3', 50, { partNumber: 'Q' }),
  row('y', 'rev 3', 50, { modelId: 'N' }),
];
const inForce = (at: number) =>
  limitsInForce(limits, { partNumber: 'P', modelId: 'M', at: instant(at) }).map((limit) => limit.id);

describe('limits in force', () => {
  it('are those of the newest revision effective by then', () => {
    expect(inForce(99)).toEqual(['1', '1h']);
    expect(inForce(100)).toEqual(['2']);
  });

  it('are none before the first', () => {
    expect(inForce(-1)).toEqual([]);
  });
});
