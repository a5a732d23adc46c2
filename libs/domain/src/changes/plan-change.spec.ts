import { describe, expect, it } from '@jest/globals';
import { instant } from '../units/minutes.js';
import type { Stay } from '../usage/flatten-exposures.js';
import type { ChangeFacts, ChangeRequest, ChangingComponent } from './change.js';
import { planChange } from './plan-change.js';

const SLOT = 'pos 2 engine';
const stay = (
  id: string,
  componentId: string,
  place: { slot?: string; store?: string },
  from: number,
  to: number | null = null,
): Stay => ({
  id,
  componentId,
  slotId: place.slot ?? null,
  locationId: place.store ?? null,
  from: instant(from),
  to: to === null ? null : instant(to),
});
const there = stay('there', 'a', { slot: SLOT }, 10);
const component = (
  id: string,
  stays: readonly Stay[],
  more: Partial<ChangingComponent> = {},
): ChangingComponent => ({
  id,
  serial: `ESN-${id}`,
  kind: 'engine',
  modelId: 'm',
  serviceable: true,
  opening: null,
  manufacturedAt: null,
  scrappedAt: null,
  stays,
  ...more,
});
function facts(
  change: {
    readonly b?: ChangingComponent;
    readonly slot?: Partial<ChangeFacts['slot']>;
    readonly flights?: ChangeFacts['flights'];
  } = {},
): ChangeFacts {
  const a = component('a', [there]);
  const b = change.b ?? component('b', [stay('stored', 'b', { store: 'store' }, 0)]);
  return {
    slot: {
      id: SLOT,
      kind: 'engine',
      positionNumber: 2,
      authorisedModelIds: ['m'],
      stays: [there],
      ...change.slot,
    },
    components: new Map([a, b].map((each) => [each.id, each])),
    flights: change.flights ?? [],
    offsetMinutes: 0,
    lifeObjections: [],
  };
}
const off = (at: number, expectedSerial = 'ESN-a') =>
  ({ expectedSerial, boundary: { kind: 'instant', at: instant(at) }, toLocationId: 'shop' }) as const;
const on = (at: number, componentId = 'b') =>
  ({ componentId, boundary: { kind: 'instant', at: instant(at) } }) as const;
const plan = (request: Omit<ChangeRequest, 'slotId'>, around = facts()) =>
  planChange({ slotId: SLOT, ...request }, around);

describe('an engine change', () => {
  it('takes one off and puts one on as one act', () => {
    expect(plan({ off: off(100), on: on(160) })).toEqual({
      ok: true,
      value: {
        ends: [
          { stayId: 'there', at: 100, precision: 'minute' },
          { stayId: 'stored', at: 160, precision: 'minute' },
        ],
        opens: [
          { componentId: 'a', slotId: null, locationId: 'shop', from: 100, to: null, precision: 'minute' },
          { componentId: 'b', slotId: SLOT, locationId: null, from: 160, to: null, precision: 'minute' },
        ],
        objections: [],
      },
    });
  });

  it('may be only a removal, or only an installation in an empty slot', () => {
    expect(plan({ off: off(100), on: null })).toMatchObject({
      ok: true,
      value: { ends: [{ stayId: 'there' }] },
    });
    expect(plan({ off: null, on: on(100) }, facts({ slot: { stays: [] } }))).toMatchObject({
      ok: true,
      value: { ends: [{ stayId: 'stored' }] },
    });
  });

  it('may be both at one minute', () => {
    expect(plan({ off: off(100), on: on(100) }).ok).toBe(true);
  });

  it('puts the same engine on again, with its stay in the shop between', () => {
    expect(plan({ off: off(100), on: on(160, 'a') })).toMatchObject({
      ok: true,
      value: {
        ends: [{ stayId: 'there' }],
        opens: [
          { locationId: 'shop', from: 100, to: 160 },
          { slotId: SLOT, from: 160, to: null },
        ],
      },
    });
    expect(plan({ off: off(100), on: on(100, 'a') })).toMatchObject({ refusal: { code: 'SAME_PLACE' } });
  });

  it.each<[string, Omit<ChangeRequest, 'slotId'>, ChangeFacts]>([
    ['NOTHING_TO_CHANGE', { off: null, on: null }, facts()],
    ['NOT_INSTALLED_THERE', { off: off(100, 'ESN-x'), on: null }, facts()],
    ['NOT_INSTALLED_THERE', { off: off(9), on: null }, facts()],
    ['NOT_OPEN', { off: off(100), on: null }, facts({ slot: { stays: [{ ...there, to: instant(200) }] } })],
    ['ENDS_BEFORE_START', { off: off(10), on: null }, facts()],
    ['INSTALLED_BEFORE_REMOVED', { off: off(100), on: on(99) }, facts()],
    ['SLOT_OCCUPIED', { off: null, on: on(100) }, facts()],
    [
      'ALREADY_INSTALLED',
      { off: off(100), on: on(100) },
      facts({ b: component('b', [stay('else', 'b', { slot: 'pos 1 engine' }, 0)]) }),
    ],
    [
      'STAY_OVERLAP',
      { off: off(100), on: on(100) },
      facts({ b: component('b', [stay('later', 'b', { store: 's' }, 100)]) }),
    ],
    ['WRONG_KIND', { off: off(100), on: on(100) }, facts({ b: component('b', [], { kind: 'pod' }) })],
    [
      'AFTER_SCRAP',
      { off: off(100), on: on(100) },
      facts({ b: component('b', [], { scrappedAt: instant(90) }) }),
    ],
    [
      'BEFORE_OPENING',
      { off: off(100), on: on(100) },
      facts({ b: component('b', [], { opening: { at: instant(120), source: 's' } }) }),
    ],
    [
      'INSIDE_A_FLIGHT',
      { off: off(100), on: null },
      facts({ flights: [{ id: 'f', page: null, takeOffAt: instant(90), landingAt: instant(110) }] }),
    ],
    [
      'INSIDE_A_FLIGHT',
      { off: off(80), on: on(100) },
      facts({ flights: [{ id: 'f', page: null, takeOffAt: instant(90), landingAt: instant(110) }] }),
    ],
  ])('is refused as %s', (code, request, around) => {
    expect(plan(request, around)).toMatchObject({ ok: false, refusal: { code } });
  });

  it('names the serial number it found', () => {
    expect(plan({ off: off(100, 'ESN-x'), on: null })).toMatchObject({
      refusal: { expectedSerial: 'ESN-x', foundSerial: 'ESN-a' },
    });
  });

  it('is recorded with objections where it breaks a rule', () => {
    const b = component('b', [], { modelId: 'other', serviceable: false });
    const planned = plan({ off: off(100), on: on(100) }, { ...facts({ b }), lifeObjections: [] });
    expect(planned.ok && planned.value.objections.map((objection) => objection.code)).toEqual([
      'ENGINE_NOT_AUTHORISED',
      'PART_UNSERVICEABLE',
    ]);
  });

  it('takes an unlisted position as it is, and tells that serviceability is not recorded', () => {
    const b = component('b', [], { modelId: null, serviceable: null });
    const planned = plan({ off: off(100), on: on(100) }, facts({ b, slot: { authorisedModelIds: null } }));
    expect(planned.ok && planned.value.objections).toMatchObject([
      { code: 'PART_SERVICEABILITY_UNKNOWN', severity: 'advisory' },
    ]);
  });

  it('throws when the component to install is not among the facts', () => {
    expect(() => plan({ off: off(100), on: on(100, 'nobody') })).toThrow('nobody');
  });
});
