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
    basis: 'manual',
    document: 'manual',
    revisionId,
    effectiveAt: instant(effectiveAt),
    recorded: effectiveAt,
    partNumber: 'P',
    modelId: 'M',
    ratingId: 'low',
    kind: 'limited',
    cycles: 10,
    minutes: null,
    ...change,
  }) as LifeLimit;
const inForce = (limits: readonly LifeLimit[], at: number) =>
  limitsInForce(limits, { partNumber: 'P', modelId: 'M', at: instant(at) });
const directive = (id: string, effectiveAt: number, change: Partial<LifeLimit>): LifeLimit =>
  row(id, `AD ${id}`, effectiveAt, { basis: 'directive', document: `AD ${id}`, ...change });

describe('limits in force', () => {
  const limits = [
    row('1', 'rev 1', 0),
    row('1h', 'rev 1', 0, { ratingId: 'high' }),
    row('2', 'rev 2', 100),
    row('x', 'rev 3', 50, { partNumber: 'Q' }),
    row('y', 'rev 3', 50, { modelId: 'N' }),
  ];
  const ids = (at: number) => inForce(limits, at).map((limit) => limit.manual?.id);

  it('are those of the newest revision effective by then', () => {
    expect(ids(99)).toEqual(['1', '1h']);
    expect(ids(100)).toEqual(['2']);
  });

  it('are none before the first', () => {
    expect(ids(-1)).toEqual([]);
  });

  it('of two revisions effective on one day are those recorded last', () => {
    const again = row('again', 'rev 2a', 100, { recorded: 101 });
    expect(inForce([again, ...limits], 100).map((limit) => limit.manual?.id)).toEqual(['again']);
  });
});

describe('a directive', () => {
  const manual = [
    row('m', 'rev 1', 0, { cycles: 100, minutes: 6000 }),
    row('mh', 'rev 1', 0, { ratingId: 'high', cycles: 80 }),
  ];

  it('lowers the limit from its day on, and governs in what it lowers alone', () => {
    const all = [...manual, directive('d', 50, { cycles: 60, minutes: 9000 })];
    expect(inForce(all, 49)[0]).toMatchObject({ cycles: 100, directives: [] });
    const [low, high] = inForce(all, 50);
    expect(low).toMatchObject({ ratingId: 'low', cycles: 60, minutes: 6000 });
    expect([low?.governs.cycles?.id, low?.governs.minutes?.id]).toEqual(['d', 'm']);
    expect(low?.directives.map((each) => each.id)).toEqual(['d']);
    expect(high).toMatchObject({ ratingId: 'high', cycles: 80, directives: [] });
  });

  it('for any rating lowers each', () => {
    const all = [...manual, directive('d', 0, { ratingId: null, cycles: 70 })];
    expect(inForce(all, 0).map(({ ratingId, ...limit }) => [ratingId, limit])).toMatchObject([
      ['low', { cycles: 70 }],
      ['high', { cycles: 70 }],
      [null, { cycles: 70 }],
    ]);
  });

  it('never raises a limit, nor lifts one', () => {
    const higher = directive('d', 0, { cycles: 200 });
    const lifting = directive('e', 0, { kind: 'not-limited' });
    expect(inForce([...manual, higher, lifting], 0)[0]).toMatchObject({ cycles: 100, directives: [] });
  });

  it('outlasts a new revision of the manual, and several stand together: the lowest governs', () => {
    const all = [
      ...manual,
      row('m2', 'rev 2', 60, { cycles: 120 }),
      directive('d', 50, { cycles: 60 }),
      directive('e', 55, { cycles: 40 }),
    ];
    expect(inForce(all, 70)[0]).toMatchObject({ cycles: 40, governs: { cycles: { id: 'e' } } });
  });

  it('is replaced by its own next revision', () => {
    const all = [
      ...manual,
      directive('d', 50, { cycles: 60 }),
      directive('d', 60, { id: 'd2', revisionId: 'AD d 2', cycles: 70 }),
    ];
    expect(inForce(all, 60)[0]).toMatchObject({ cycles: 70, governs: { cycles: { id: 'd2' } } });
  });

  it('may limit what the manual does not, and forbid what it allows', () => {
    const free = row('n', 'rev 1', 0, { kind: 'not-limited' });
    expect(inForce([free, directive('d', 0, { cycles: 5 })], 0)[0]).toMatchObject({
      kind: 'limited',
      cycles: 5,
    });
    const forbids = directive('d', 0, { kind: 'not-authorised' });
    expect(inForce([...manual, forbids], 0)[0]).toMatchObject({
      kind: 'not-authorised',
      directives: [{ id: 'd' }],
    });
  });
});
