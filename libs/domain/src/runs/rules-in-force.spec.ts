import { describe, expect, it } from '@jest/globals';
import { instant } from '../units/minutes.js';
import { flattenExposures } from '../usage/flatten-exposures.js';
import { type CycleRuleRevision, rulesInForce } from '../usage/rules-in-force.js';

const revision = (id: string, airframeTypeId: string | null, from: number | null): CycleRuleRevision => ({
  ...{ id, airframeTypeId, modelId: 'm' },
  from: from === null ? null : instant(from),
});

const idsFor = (revisions: readonly CycleRuleRevision[], typeId: string | null) =>
  rulesInForce(revisions, 'm', typeId).map(({ cycleRuleId }) => cycleRuleId);

describe('cycle rules in force', () => {
  it('are the type’s own, and before the first of them those for any type', () => {
    const revisions = [revision('any', null, null), revision('own', 't', 500), revision('later', null, 900)];
    expect(idsFor(revisions, 't')).toEqual(['any', 'own']);
    expect(idsFor(revisions, 'other')).toEqual(['any', 'later']);
    expect(idsFor(revisions, null)).toEqual(['any', 'later']);
    expect(rulesInForce(revisions, 'another model', 't')).toEqual([]);
  });

  it('split what ran at the revision’s first moment, also by an own counter, and nowhere else', () => {
    const revisions = [revision('first', null, null), revision('second', null, 500)];
    const spans = flattenExposures({
      ...{
        componentId: 'wheel',
        slots: new Map([['s', { kind: 'component', componentId: 'unit' } as const]]),
      },
      stays: [
        {
          id: '1',
          componentId: 'wheel',
          slotId: 's',
          locationId: null,
          from: instant(100),
          to: instant(900),
        },
      ],
      ratingChanges: [],
      cycleRules: rulesInForce(revisions, 'm', null),
      modelOf: new Map([['unit', 'm']]),
      countersOf: new Map([['unit', { carrierId: 'unit', from: instant(200) }]]),
    });
    expect(spans.map(({ carrierId, from, to, cycleRuleId }) => [carrierId, from, to, cycleRuleId])).toEqual([
      ['unit', 200, 500, 'first'],
      ['unit', 500, 900, 'second'],
    ]);
  });
});
