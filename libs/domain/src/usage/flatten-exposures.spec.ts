import { describe, expect, it } from '@jest/globals';
import { type Instant, instant } from '../units/minutes.js';
import { type FlattenFacts, flattenExposures, type SlotPlace, type Stay } from './flatten-exposures.js';

let next = 0;
function stay(componentId: string, place: string, from: number, to: number | null = null): Stay {
  next += 1;
  const at = { from: instant(from), to: to === null ? null : instant(to) };
  return {
    id: `s${next}`,
    componentId,
    slotId: place.startsWith('store') ? null : place,
    locationId: place.startsWith('store') ? place : null,
    ...at,
  };
}

const position = (carrier: string): SlotPlace => ({
  kind: 'position',
  positionCarrierId: carrier,
  airframeId: 'air',
  airframeTypeId: 'type',
});
const slots = new Map<string, SlotPlace>([
  ['pos1', position('c1')],
  ['pos2', position('c2')],
  ['module place', { kind: 'component', componentId: 'engine' }],
  ['other module place', { kind: 'component', componentId: 'other engine' }],
  ['disk place', { kind: 'component', componentId: 'module' }],
  ['cell', { kind: 'test-cell', carrierId: 'cell' }],
]);

function facts(componentId: string, stays: readonly Stay[], more: Partial<FlattenFacts> = {}): FlattenFacts {
  return {
    componentId,
    stays,
    slots,
    ratingChanges: [{ componentId: 'engine', at: instant(0), ratingId: 'low' }],
    cycleRules: [
      { cycleRuleId: 'rule', modelId: 'm', airframeTypeId: 'type', from: null },
      { cycleRuleId: 'cell rule', modelId: 'm', airframeTypeId: null, from: null },
    ],
    modelOf: new Map([
      ['engine', 'm'],
      ['other engine', 'm'],
    ]),
    ...more,
  };
}

const brief = (spans: ReturnType<typeof flattenExposures>) =>
  spans.map(({ carrierId, from, to, ratingId, cycleRuleId }) => [carrierId, from, to, ratingId, cycleRuleId]);

describe('exposures', () => {
  it('of a part follow disk, module and engine to the position', () => {
    const stays = [
      stay('disk', 'disk place', 10),
      stay('module', 'module place', 20),
      stay('engine', 'pos1', 30),
    ];
    expect(brief(flattenExposures(facts('disk', stays)))).toEqual([['c1', 30, null, 'low', 'rule']]);
  });

  it('end and begin where any stay on the way up does', () => {
    const stays = [
      stay('disk', 'disk place', 0),
      stay('module', 'module place', 0, 50),
      stay('module', 'store', 50, 70),
      stay('module', 'other module place', 70),
      stay('engine', 'pos1', 10, 60),
      stay('other engine', 'pos2', 0),
    ];
    expect(brief(flattenExposures(facts('disk', stays)))).toEqual([
      ['c1', 10, 50, 'low', 'rule'],
      ['c2', 70, null, null, 'rule'],
    ]);
  });

  it('are split where the engine’s rating or the rule changes', () => {
    const more = {
      ratingChanges: [
        { componentId: 'engine', at: instant(40), ratingId: 'high' },
        { componentId: 'engine', at: instant(0), ratingId: 'low' },
        { componentId: 'disk', at: instant(35), ratingId: 'none of a disk' },
      ],
      cycleRules: [
        { cycleRuleId: 'old', modelId: 'm', airframeTypeId: 'type', from: null },
        { cycleRuleId: 'new', modelId: 'm', airframeTypeId: 'type', from: instant(60) },
        { cycleRuleId: 'other', modelId: 'm', airframeTypeId: 'other type', from: instant(61) },
      ],
    };
    const stays = [stay('disk', 'module place', 0), stay('engine', 'pos1', 10, 100)];
    expect(brief(flattenExposures(facts('disk', stays, more)))).toEqual([
      ['c1', 10, 40, 'low', 'old'],
      ['c1', 40, 60, 'high', 'old'],
      ['c1', 60, 100, 'high', 'new'],
    ]);
  });

  it('have no rating before the first is recorded, and no rule for an unknown model', () => {
    const more = {
      ratingChanges: [{ componentId: 'engine', at: instant(50), ratingId: 'low' }],
      modelOf: new Map<string, string>(),
    };
    expect(brief(flattenExposures(facts('engine', [stay('engine', 'pos1', 10)], more)))).toEqual([
      ['c1', 10, 50, null, null],
      ['c1', 50, null, 'low', null],
    ]);
  });

  it('run in a test cell under the cell’s rule', () => {
    expect(brief(flattenExposures(facts('engine', [stay('engine', 'cell', 5, 9)])))).toEqual([
      ['cell', 5, 9, 'low', 'cell rule'],
    ]);
  });

  it('are joined where nothing changes between two stays', () => {
    const stays = [
      stay('disk', 'module place', 0, 40),
      stay('disk', 'module place', 40),
      stay('engine', 'pos1', 10),
    ];
    expect(brief(flattenExposures(facts('disk', stays)))).toEqual([['c1', 10, null, 'low', 'rule']]);
  });

  it('are none in store', () => {
    expect(flattenExposures(facts('engine', [stay('engine', 'store', 0)]))).toEqual([]);
    expect(flattenExposures(facts('engine', [stay('engine', 'nobody’s slot', 0)]))).toEqual([]);
  });

  it('touching spans share their instant once', () => {
    const stays = [stay('engine', 'pos1', 0, 50), stay('engine', 'pos2', 50)];
    const spans = flattenExposures(facts('engine', stays));
    expect(spans.map((span): [Instant, Instant | null] => [span.from, span.to])).toEqual([
      [0, 50],
      [50, null],
    ]);
  });
});
