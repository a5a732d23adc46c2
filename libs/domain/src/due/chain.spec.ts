import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { fraction } from '../units/fraction.js';
import { counterFrom, dayFrom } from './chain.js';
import { REBASE } from './rebase.js';
import type { Interval, Mark, RequirementRule } from './requirement.js';

const INTERVAL: Interval = { minutes: 100, cycles: null, days: null, months: 6 };
const rule = (more: Partial<RequirementRule> = {}): RequirementRule => ({
  ...{ threshold: null, repeat: INTERVAL, combine: 'first', monthRule: 'same-day' },
  ...more,
});
const mark = (minutes: number | null, on: string | null = null): Mark => ({ minutes, cycles: null, on });
const ALL_FROM_DUE = {
  early: 'from-due',
  within: 'from-due',
  varied: 'from-due',
  beyond: 'from-due',
} as const;

describe('a chain of accomplishments', () => {
  it('counts from what was done last where nothing is granted', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(10_000), { minLength: 1, maxLength: 8 }), (given) => {
        const done = given.sort((a, b) => a - b).map((minutes) => mark(minutes));
        const facts = { rule: rule(), base: mark(0), done, variations: [] };
        const last = fraction(done.at(-1)?.minutes ?? 0);
        expect(counterFrom('minutes', facts)).toEqual(last);
      }),
    );
  });

  it('counts by whole intervals from its base where every next counts from what was due', () => {
    fc.assert(
      fc.property(fc.nat(999), fc.array(fc.nat(10_000), { maxLength: 8 }), (base, given) => {
        const done = given.map((minutes) => mark(minutes));
        const facts = { rule: rule({ rebase: ALL_FROM_DUE }), base: mark(base), done, variations: [] };
        expect(counterFrom('minutes', facts)).toEqual(fraction(base + 100 * done.length));
      }),
    );
  });

  it('is counted anew through all that follows when one is entered late', () => {
    const window = {
      early: {},
      late: { minutes: [{ upTo: null, percent: null, atMost: 20, atMostDays: null }] },
    };
    const of = (...done: number[]) =>
      counterFrom('minutes', {
        rule: rule({ window }),
        base: mark(0),
        done: done.map((minutes) => mark(minutes)),
        variations: [],
      });
    // 215 without the one before is past 100 and its window, and counts from itself; with it, from 200.
    expect(of(215)).toEqual(fraction(215));
    expect(of(110, 215)).toEqual(fraction(200));
  });

  it('is not known after one whose counter is not, and known again after the next', () => {
    const facts = { rule: rule(), base: mark(0), variations: [] };
    expect(counterFrom('minutes', { ...facts, done: [mark(50), mark(null)] })).toBeNull();
    expect(counterFrom('minutes', { ...facts, done: [mark(null), mark(70)] })).toEqual(fraction(70));
  });

  it('keeps the day of the month when months count from what was due', () => {
    const facts = { base: mark(null, '2026-08-31'), variations: [] };
    const done = [mark(null, '2027-02-20'), mark(null, '2027-09-05')];
    expect(dayFrom('months', { ...facts, rule: rule({ rebase: ALL_FROM_DUE }), done })).toEqual({
      on: '2027-08-31',
      anchorDay: 31,
    });
    expect(dayFrom('months', { ...facts, rule: rule({ rebase: REBASE }), done })).toEqual({
      on: '2027-09-05',
      anchorDay: 5,
    });
  });
});
