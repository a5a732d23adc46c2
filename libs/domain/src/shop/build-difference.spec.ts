import { describe, expect, it } from '@jest/globals';
import { buildDifference } from './build-difference.js';
import type { BuildStandard, BuiltComponent, BuiltRequirement } from './build-standard.js';
import { needsDisposition } from './disposition.js';

const counters = (minutes: number, cycles: number, denominator = 1) => ({
  minutes,
  cycles: { units: cycles, denominator },
});
const disk = (serialNumber: string, remainingCycles: number): BuiltComponent => ({
  componentId: serialNumber,
  kind: 'part',
  partNumber: 'PN-1',
  serialNumber,
  description: 'Disk',
  lifeLimited: true,
  sinceNew: counters(600, 10),
  life: { kind: 'limited', remainingCycles, remainingMinutes: null, remainingDays: null, reason: null },
});
const requirement = (change: Partial<BuiltRequirement> = {}): BuiltRequirement => ({
  requirementId: 'r',
  code: 'SB-1',
  title: 'T',
  kind: 'bulletin',
  revision: '1',
  componentId: 'e',
  subject: 'Engine E1',
  status: 'soon',
  remaining: 40,
  governing: 'cycles',
  lastDoneOn: null,
  ...change,
});
const build = (change: Partial<BuildStandard> = {}): BuildStandard => ({
  at: '2026-01-01T00:00Z',
  ratingCode: 'A',
  sinceNew: counters(60_000, 1_000),
  sinceOverhaul: null,
  sinceShopVisit: counters(6_000, 100),
  sinceRepair: null,
  life: null,
  slots: [
    { slotId: 's1', name: 'Stage 1', parentId: 'e', parentSerial: 'E1', depth: 1, component: disk('D1', 40) },
    {
      slotId: 's2',
      name: 'Stage 2',
      parentId: 'e',
      parentSerial: 'E1',
      depth: 1,
      component: disk('D2', 900),
    },
  ],
  requirements: [requirement()],
  ...change,
});

describe('the difference a shop visit makes', () => {
  it('is nothing where nothing was done, counters over other denominators included', () => {
    expect(buildDifference(build(), build({ sinceNew: counters(60_000, 2_000, 2) }))).toEqual({
      rating: null,
      slots: [],
      counters: [],
      requirements: [],
      tightestCycles: { before: 40, after: 40 },
    });
  });

  it('tells what went off and on, what was reset, the rating and what was embodied', () => {
    const after = build({
      ratingCode: 'B',
      sinceShopVisit: counters(0, 0),
      slots: build().slots.map((slot) =>
        slot.slotId === 's1' ? { ...slot, component: disk('D9', 20_000) } : slot,
      ),
      requirements: [
        requirement({ status: 'closed', remaining: null, governing: null, lastDoneOn: '2026-01-01' }),
      ],
    });
    const told = buildDifference(build(), after);
    expect(told.rating).toEqual({ before: 'A', after: 'B' });
    expect(told.slots).toMatchObject([
      { name: 'Stage 1', before: { serialNumber: 'D1' }, after: { serialNumber: 'D9' } },
    ]);
    expect(told.counters.map(({ counter }) => counter)).toEqual(['sinceShopVisit']);
    expect(told.requirements).toMatchObject([
      { code: 'SB-1', before: { status: 'soon' }, after: { status: 'closed', lastDoneOn: '2026-01-01' } },
    ]);
    expect(told.tightestCycles).toEqual({ before: 40, after: 900 });
  });

  it('tells places and requirements that are on one side alone', () => {
    const after = build({ slots: build().slots.slice(0, 1), requirements: [] });
    const told = buildDifference(build({ sinceOverhaul: null }), after);
    expect(told.slots).toMatchObject([{ slotId: 's2', before: { serialNumber: 'D2' }, after: null }]);
    expect(told.requirements).toMatchObject([{ code: 'SB-1', after: null }]);
    const back = buildDifference(after, build());
    expect(back.slots).toMatchObject([{ slotId: 's2', before: null, after: { serialNumber: 'D2' } }]);
  });

  it('has no tightest part where none is limited in cycles', () => {
    const bare = build({ slots: [] });
    expect(buildDifference(bare, bare).tightestCycles).toEqual({ before: null, after: null });
  });

  it('takes an unknown counter for no known one', () => {
    const unknown = build({ sinceNew: { minutes: 60_000, cycles: null } });
    expect(buildDifference(unknown, build()).counters).toHaveLength(1);
    expect(buildDifference(unknown, unknown).counters).toEqual([]);
  });
});

describe('the disposition of a removed life-limited part', () => {
  it('is needed unless it goes back to the same product with no time accrued', () => {
    expect(needsDisposition({ removedFromId: 'e', refittedToId: 'e', timeAccrued: false })).toBe(false);
    expect(needsDisposition({ removedFromId: 'e', refittedToId: 'e', timeAccrued: true })).toBe(true);
    expect(needsDisposition({ removedFromId: 'e', refittedToId: 'e', timeAccrued: null })).toBe(true);
    expect(needsDisposition({ removedFromId: 'e', refittedToId: 'f', timeAccrued: false })).toBe(true);
    expect(needsDisposition({ removedFromId: 'e', refittedToId: null, timeAccrued: false })).toBe(true);
  });
});
