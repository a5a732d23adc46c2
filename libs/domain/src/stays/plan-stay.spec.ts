import { describe, expect, it } from '@jest/globals';
import { instant } from '../units/minutes.js';
import type { Stay } from '../usage/flatten-exposures.js';
import { type Place, planEnd, planPlacement, type StayFacts } from './plan-stay.js';

const slot = (slotId: string): Place => ({ kind: 'slot', slotId });
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
const nothing: StayFacts = {
  componentStays: [],
  slotStays: [],
  ownSlotIds: new Set(),
  flights: [],
  offsetMinutes: 0,
  opening: null,
  manufacturedAt: null,
  scrappedAt: null,
};
const place = (facts: Partial<StayFacts>, at = 100, where = slot('pos1')) =>
  planPlacement(
    { componentId: 'part', place: where, boundary: { kind: 'instant', at: instant(at) } },
    { ...nothing, ...facts },
  );

describe('a placement', () => {
  it('is planned, and ends the stay in store', () => {
    const store = stay('old', 'part', { store: 'store' }, 10);
    expect(place({ componentStays: [stay('first', 'part', { slot: 'pos2' }, 0, 10), store] })).toEqual({
      ok: true,
      value: { componentId: 'part', place: slot('pos1'), from: 100, precision: 'minute', ends: 'old' },
    });
    expect(place({})).toMatchObject({ ok: true, value: { ends: null } });
  });

  it('may begin at the minute the slot became free', () => {
    expect(place({ slotStays: [stay('x', 'other', { slot: 'pos1' }, 0, 100)] }).ok).toBe(true);
    expect(place({ slotStays: [stay('x', 'other', { slot: 'pos1' }, 0, 101)] })).toMatchObject({
      refusal: { code: 'SLOT_OCCUPIED', stayId: 'x' },
    });
  });

  it('may begin at a take-off or landing, not between', () => {
    const flights = [{ id: 'f', page: '7', takeOffAt: instant(50), landingAt: instant(100) }];
    expect(place({ flights }, 100).ok).toBe(true);
    expect(place({ flights }, 50).ok).toBe(true);
    expect(place({ flights }, 99)).toMatchObject({
      refusal: { code: 'INSIDE_A_FLIGHT', flightId: 'f', page: '7' },
    });
  });

  it.each<[string, Partial<StayFacts>]>([
    ['BEFORE_OPENING', { opening: { at: instant(101), source: 'transfer papers' } }],
    ['BEFORE_MANUFACTURE', { manufacturedAt: instant(101) }],
    ['AFTER_SCRAP', { scrappedAt: instant(100) }],
    ['SAME_PLACE', { componentStays: [stay('s', 'part', { slot: 'pos1' }, 10)] }],
    ['ALREADY_INSTALLED', { componentStays: [stay('s', 'part', { slot: 'pos2' }, 10)] }],
    ['STAY_OVERLAP', { componentStays: [stay('s', 'part', { store: 'a' }, 10, 101)] }],
    ['STAY_OVERLAP', { componentStays: [stay('s', 'part', { slot: 'pos2' }, 150)] }],
    ['SLOT_OCCUPIED', { slotStays: [stay('s', 'other', { slot: 'pos1' }, 150, 160)] }],
    ['INSIDE_ITSELF', { ownSlotIds: new Set(['pos1']) }],
  ])('is refused as %s', (code, facts) => {
    expect(place(facts)).toMatchObject({ ok: false, refusal: { code } });
  });

  it('at the very instant of the opening or of manufacture is fine', () => {
    expect(
      place({
        opening: { at: instant(100), source: 's' },
        manufacturedAt: instant(100),
        scrappedAt: instant(101),
      }).ok,
    ).toBe(true);
  });

  it('at a location takes it out of the slot it is in where it may leave like that', () => {
    const store = { kind: 'location', locationId: 'store' } as const;
    const inside = (from: number) => ({ componentStays: [stay('s', 'part', { slot: 'hub' }, from)] });
    expect(place({ ...inside(10), leavesSlot: true }, 100, store)).toMatchObject({
      ok: true,
      value: { ends: 's' },
    });
    expect(place(inside(10), 100, store)).toMatchObject({ refusal: { code: 'ALREADY_INSTALLED' } });
    expect(place({ ...inside(100), leavesSlot: true }, 100, store)).toMatchObject({ ok: false });
    expect(place({ ...inside(10), leavesSlot: true })).toMatchObject({
      refusal: { code: 'ALREADY_INSTALLED' },
    });
  });

  it('at a location asks for no slot', () => {
    expect(
      place({ slotStays: [stay('s', 'other', { slot: 'pos1' }, 0)] }, 100, {
        kind: 'location',
        locationId: 'store',
      }).ok,
    ).toBe(true);
  });
});

describe('an end of a stay', () => {
  const open = stay('open', 'part', { slot: 'pos1' }, 50);
  const end = (at: number, which = open, facts: Partial<StayFacts> = {}) =>
    planEnd(which, { kind: 'instant', at: instant(at) }, { ...nothing, ...facts });

  it('is planned a minute after its beginning at the earliest', () => {
    expect(end(51)).toEqual({ ok: true, value: { stayId: 'open', at: 51, precision: 'minute' } });
    expect(end(50)).toMatchObject({ refusal: { code: 'ENDS_BEFORE_START' } });
  });

  it('is refused when the stay has ended, and inside a flight', () => {
    expect(end(80, { ...open, to: instant(70) })).toMatchObject({ refusal: { code: 'NOT_OPEN', to: 70 } });
    const flights = [{ id: 'f', page: null, takeOffAt: instant(60), landingAt: instant(90) }];
    expect(end(80, open, { flights })).toMatchObject({ refusal: { code: 'INSIDE_A_FLIGHT' } });
  });

  it('after a page that is not there is refused', () => {
    expect(planEnd(open, { kind: 'after-page', page: '1' }, nothing)).toMatchObject({
      refusal: { code: 'NO_SUCH_LOG_PAGE' },
    });
  });
});
