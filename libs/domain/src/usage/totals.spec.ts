import { describe, expect, it } from '@jest/globals';
import { fraction } from '../units/fraction.js';
import { instant } from '../units/minutes.js';
import { zeroCounts } from './counts.js';
import type { CycleRule } from './cycle-rule.js';
import { type Opening, totals } from './totals.js';

const half: CycleRule = {
  id: 'half',
  perFlight: 2,
  perLanding: 0,
  perTouchAndGo: 1,
  perStart: 0,
  perAbortedTakeOff: 0,
  denominator: 2,
};
const cycleRules = new Map([['half', half]]);
const opening = (ratingId: string | null, minutes: number | null, cycles: number | null): Opening => ({
  at: instant(0),
  ratingId,
  minutes,
  cycles: cycles === null ? null : fraction(cycles),
});
const flown = { ...zeroCounts, minutes: 130, flights: 1, landings: 2, touchAndGoes: 1 };

describe('totals', () => {
  it('add openings and exposures, per rating and in all', () => {
    const result = totals({
      openings: [opening('low', 600, 10), opening('high', 60, 1)],
      exposures: [{ ratingId: 'high', cycleRuleId: 'half', counts: flown }],
      cycleRules,
    });
    expect(result).toEqual({
      minutes: 790,
      cycles: fraction(25, 2),
      byRating: [
        { ratingId: 'low', minutes: 600, cycles: fraction(10) },
        { ratingId: 'high', minutes: 190, cycles: fraction(5, 2) },
      ],
    });
  });

  it('are unknown where nothing is known from before', () => {
    const result = totals({
      openings: [],
      exposures: [{ ratingId: 'low', cycleRuleId: 'half', counts: flown }],
      cycleRules,
    });
    expect(result).toMatchObject({ minutes: null, cycles: null });
    expect(result.byRating).toContainEqual({ ratingId: null, minutes: null, cycles: null });
  });

  it('keep an unknown counter apart from a known one', () => {
    expect(totals({ openings: [opening('low', 600, null)], exposures: [], cycleRules })).toMatchObject({
      minutes: 600,
      cycles: null,
    });
    expect(totals({ openings: [opening('low', null, 10)], exposures: [], cycleRules })).toMatchObject({
      minutes: null,
      cycles: fraction(10),
    });
  });

  it('know no cycles of what ran without a rule, and zero of what did not run', () => {
    const openings = [opening('low', 0, 0)];
    const ran = totals({
      openings,
      exposures: [{ ratingId: 'low', cycleRuleId: null, counts: flown }],
      cycleRules,
    });
    expect(ran).toMatchObject({ minutes: 130, cycles: null });
    const stood = totals({
      openings,
      exposures: [{ ratingId: 'low', cycleRuleId: null, counts: zeroCounts }],
      cycleRules,
    });
    expect(stood).toMatchObject({ minutes: 0, cycles: fraction(0) });
  });
});
