import { describe, expect, it } from '@jest/globals';
import type { Life } from '../life/life.js';
import { fraction } from '../units/fraction.js';
import { instant } from '../units/minutes.js';
import { checkRelease, mayBeReleased } from './check-release.js';
import { objectionText } from './objection-text.js';
import { type EngineSnapshot, type LimitedPartSlot, NOTHING_ELSE, type ReleaseSnapshot } from './snapshot.js';
import type { ReleaserSnapshot, RequirementSnapshot } from './work-snapshot.js';

const limited = (
  remaining: number | null,
  change: Partial<Extract<Life, { kind: 'limited' }>> = {},
): Life => ({
  kind: 'limited',
  used: fraction(1, 2),
  cyclesUsed: fraction(10),
  minutesUsed: 600,
  limit: 20_000,
  remaining,
  remainingExact: null,
  minutesLimit: null,
  remainingMinutes: null,
  calendar: null,
  goodThrough: null,
  remainingDays: null,
  flagged: false,
  ...change,
});
const disk = (life: Life, serviceable: boolean | null = true): LimitedPartSlot => ({
  slotId: 'slot-1',
  slotName: 'Stage 1 disk',
  part: { componentId: 'disk-1', partNumber: 'P-1', serial: 'D-1', serviceable, life },
});
const engine = (change: Partial<EngineSnapshot> = {}): EngineSnapshot => ({
  componentId: 'engine-1',
  serial: 'E-1',
  modelId: 'm',
  modelName: 'M-1',
  authorised: true,
  serviceable: true,
  ratingId: 'low',
  ratingName: 'Low',
  totals: { minutes: 600, cycles: 10 },
  limitedParts: [disk(limited(100))],
  ...change,
});
const snapshot = (change: Partial<ReleaseSnapshot> = {}): ReleaseSnapshot => ({
  package: { id: 'w', kind: 'engine-change', airframeId: 'a', registration: 'ZZ-AAA', ruleSet: 'us-121' },
  at: instant(1000),
  positions: [{ positionId: 'p1', number: 1, engine: engine() }],
  ...NOTHING_ELSE,
  ...change,
});
const withEngine = (change: Partial<EngineSnapshot>) =>
  snapshot({ positions: [{ positionId: 'p1', number: 1, engine: engine(change) }] });
const codes = (of: ReleaseSnapshot) =>
  checkRelease(of).map((objection) => [objection.code, objection.severity]);

describe('the release check', () => {
  it('holds nothing against an aircraft in order', () => {
    expect(checkRelease(snapshot())).toEqual([]);
    expect(mayBeReleased(checkRelease(snapshot()))).toBe(true);
  });

  it.each<[string, string, Partial<EngineSnapshot>]>([
    [
      'LIMITED_PART_MISSING',
      'blocking',
      { limitedParts: [{ slotId: 's', slotName: 'Stage 1 disk', part: null }] },
    ],
    [
      'LIMITED_PART_UNTRACED',
      'blocking',
      { limitedParts: [disk({ kind: 'unsubstantiated', reasons: [{ code: 'CYCLES_UNKNOWN' }] })] },
    ],
    [
      'NO_LIMIT_RECORDED',
      'blocking',
      {
        limitedParts: [
          disk({ kind: 'unsubstantiated', reasons: [{ code: 'NO_LIMIT_RECORDED', ratingId: null }] }),
        ],
      },
    ],
    ['NOT_AUTHORISED', 'blocking', { limitedParts: [disk({ kind: 'not-authorised' })] }],
    ['AT_LIMIT', 'blocking', { limitedParts: [disk(limited(0))] }],
    ['AT_LIMIT', 'blocking', { limitedParts: [disk(limited(5, { remainingMinutes: 0 }))] }],
    ['OVER_LIMIT', 'blocking', { limitedParts: [disk(limited(-1))] }],
    ['OVER_LIMIT', 'blocking', { limitedParts: [disk(limited(0, { remainingMinutes: -1 }))] }],
    ['WORST_CASE_ACCEPTED', 'advisory', { limitedParts: [disk(limited(5, { flagged: true }))] }],
    ['PART_UNSERVICEABLE', 'blocking', { limitedParts: [disk(limited(5), false)] }],
    ['PART_SERVICEABILITY_UNKNOWN', 'advisory', { serviceable: null }],
    ['COUNTERS_UNKNOWN', 'blocking', { totals: { minutes: null, cycles: 10 } }],
    ['COUNTERS_UNKNOWN', 'blocking', { totals: { minutes: 600, cycles: null } }],
    ['RATING_UNKNOWN', 'blocking', { ratingId: null, ratingName: null }],
    ['ENGINE_NOT_AUTHORISED', 'blocking', { authorised: false }],
  ])('holds %s (%s)', (code, severity, change) => {
    expect(codes(withEngine(change))).toEqual([[code, severity]]);
    expect(mayBeReleased(checkRelease(withEngine(change)))).toBe(severity === 'advisory');
  });

  it('holds an empty position and mixed models', () => {
    const positions = [1, 2, 3].map((number) => ({
      positionId: `p${number}`,
      number,
      engine: number === 3 ? null : engine({ modelName: `M-${number}` }),
    }));
    expect(codes(snapshot({ positions }))).toEqual([
      ['ENGINE_MISSING', 'blocking'],
      ['MIXED_MODELS', 'advisory'],
    ]);
  });

  it('holds a part with nothing left, not one with a cycle left, and tells one short of the planned stay', () => {
    expect(codes(withEngine({ limitedParts: [disk(limited(1))] }))).toEqual([]);
    const planned = { ...withEngine({ limitedParts: [disk(limited(99))] }), plannedStayCycles: 100 };
    expect(codes(planned)).toEqual([['SHORT_OF_PLANNED_STAY', 'advisory']]);
    expect(codes({ ...planned, plannedStayCycles: 99 })).toEqual([]);
  });

  it('holds a requirement that is over or not verified, unless this package meets it', () => {
    const requirement = (change: Partial<RequirementSnapshot>): RequirementSnapshot => ({
      id: 'r',
      name: 'R-1, fuel nozzles',
      on: 'engine E-1 at position 1',
      positionNumber: 1,
      verdict: 'in-order',
      why: '',
      closedHere: false,
      ...change,
    });
    const with_ = (change: Partial<RequirementSnapshot>) =>
      codes(snapshot({ requirements: [requirement(change)] }));
    expect(with_({ verdict: 'over' })).toEqual([['REQUIREMENT_OVER', 'blocking']]);
    expect(with_({ verdict: 'not-verified' })).toEqual([['REQUIREMENT_NOT_VERIFIED', 'blocking']]);
    expect(with_({})).toEqual([]);
    expect(with_({ verdict: 'over', closedHere: true })).toEqual([]);
    expect(with_({ verdict: 'not-verified', closedHere: true })).toEqual([]);
  });

  it('tells what planned flights would make over as advice, after all that blocks', () => {
    const planned = [
      {
        ...{ record: { kind: 'requirement' as const, id: 'r' }, name: 'R-1, fuel nozzles', on: 'Engine E-1' },
        ...{ positionNumber: 1, takeOffAt: instant(29_586_620) },
      },
    ];
    expect(codes({ ...snapshot({}), planned })).toEqual([['DUE_WITHIN_PLANNED_FLYING', 'advisory']]);
    const [objection] = checkRelease({ ...snapshot({}), planned });
    expect(objection?.detail).toEqual({
      ...{ name: 'R-1, fuel nozzles', on: 'Engine E-1', takeOff: '2026-04-03 06:20' },
    });
  });

  it('holds a releaser without authorisation today or without a certificate number', () => {
    const by = (change: Partial<ReleaserSnapshot>) =>
      codes(
        snapshot({
          releaser: { personId: 'p', name: 'A. Person', licence: 'L-1', authorised: true, ...change },
        }),
      );
    expect(by({})).toEqual([]);
    expect(by({ authorised: false })).toEqual([['RELEASER_NOT_AUTHORISED', 'blocking']]);
    // 14 CFR 43.9(a): the certificate number is part of the entry.
    expect(by({ licence: null })).toEqual([['RELEASER_WITHOUT_LICENCE', 'blocking']]);
    expect(by({ licence: ' ' })).toEqual([['RELEASER_WITHOUT_LICENCE', 'blocking']]);
  });

  it('judges an engine on no airframe by itself, and a module by the parts in it', () => {
    const as = engine({ ratingId: null, limitedParts: [disk(limited(0))] });
    const alone = { ...snapshot().package, airframeId: null, registration: null };
    const held = (kind: 'engine' | 'module') =>
      codes(snapshot({ package: alone, positions: [], component: { kind, as } })).map(([code]) => code);
    expect(held('engine')).toEqual(['AT_LIMIT', 'RATING_UNKNOWN']);
    expect(held('module')).toEqual(['AT_LIMIT']);
    const sound = engine({ limitedParts: [disk(limited(1))] });
    expect(
      codes(snapshot({ package: alone, positions: [], component: { kind: 'engine', as: sound } })),
    ).toEqual([]);
  });

  it('tells the worst first, by position', () => {
    const positions = [
      {
        positionId: 'p1',
        number: 1,
        engine: engine({ limitedParts: [disk(limited(5, { flagged: true })), disk(limited(0))] }),
      },
      { positionId: 'p2', number: 2, engine: engine({ limitedParts: [disk(limited(-4))] }) },
    ];
    expect(
      checkRelease(snapshot({ positions })).map(({ code, positionNumber }) => [code, positionNumber]),
    ).toEqual([
      ['OVER_LIMIT', 2],
      ['AT_LIMIT', 1],
      ['WORST_CASE_ACCEPTED', 1],
    ]);
  });

  it('has words for what it holds: record, reason and fix', () => {
    const [over] = checkRelease(withEngine({ limitedParts: [disk(limited(-4))] }));
    expect(over && objectionText(over)).toEqual({
      record: 'Part P-1 serial D-1 (Stage 1 disk, engine E-1)',
      reason: 'Its life limit is passed: 4 past 20000 cycles.',
      fix: 'Replace the part, and report the overrun.',
    });
    const [unknown] = checkRelease(withEngine({ totals: { minutes: null, cycles: null } }));
    expect(unknown && objectionText(unknown).reason).toBe('Its hours and cycles since new are not known.');
  });
});
