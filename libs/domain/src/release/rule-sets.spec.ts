import { describe, expect, it } from '@jest/globals';
import { isCalendarDate } from '../units/calendar.js';
import { RULE_SETS, ruleSetOn } from './rule-sets.js';

describe('rule sets', () => {
  it('are in force from their date on', () => {
    expect(ruleSetOn('uk-145', '2020-12-31')).toBeNull();
    expect(ruleSetOn('uk-145', '2021-01-01')?.code).toBe('uk-145');
    expect(ruleSetOn('nowhere', '2026-01-01')).toBeNull();
  });

  it('are replaced by a newer one of the same code', () => {
    const [first] = RULE_SETS;
    if (first === undefined) throw new Error('no rule set');
    const newer = { ...first, effectiveFrom: '2026-01-01', name: 'newer' };
    expect(ruleSetOn(first.code, '2025-12-31', [newer, first])?.name).toBe(first.name);
    expect(ruleSetOn(first.code, '2026-01-01', [newer, first])?.name).toBe('newer');
  });

  it('each have a date, a statement and a source', () => {
    for (const ruleSet of RULE_SETS) {
      expect(isCalendarDate(ruleSet.effectiveFrom)).toBe(true);
      expect(ruleSet.releaseStatement.length).toBeGreaterThan(40);
      expect(ruleSet.source).not.toBe('');
    }
  });
});
