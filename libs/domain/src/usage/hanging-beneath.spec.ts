import { describe, expect, it } from '@jest/globals';
import { instant } from '../units/minutes.js';
import type { SlotPlace, Stay } from './flatten-exposures.js';
import { hangingBeneath } from './hanging-beneath.js';

const slots = new Map<string, SlotPlace>([
  ['in engine', { kind: 'component', componentId: 'engine' }],
  ['in module', { kind: 'component', componentId: 'module' }],
]);
const stay = (componentId: string, slotId: string, from: number, to: number | null): Stay => ({
  id: `${componentId} ${from}`,
  componentId,
  slotId,
  locationId: null,
  from: instant(from),
  to: to === null ? null : instant(to),
});
const stays = [
  stay('left', 'in engine', 0, 50),
  stay('module', 'in engine', 0, null),
  stay('disk', 'in module', 60, null),
];
const beneath = (from: number, to: number | null) =>
  [
    ...hangingBeneath({
      componentId: 'engine',
      span: { from: instant(from), to: to === null ? null : instant(to) },
      stays,
      slots,
    }),
  ].sort();

describe('what hung beneath a component', () => {
  it('is what was there during the span, at any depth', () => {
    expect(beneath(0, null)).toEqual(['disk', 'left', 'module']);
    expect(beneath(49, 60)).toEqual(['left', 'module']);
    expect(beneath(50, 61)).toEqual(['disk', 'module']);
    expect(beneath(50, 60)).toEqual(['module']);
  });
});
