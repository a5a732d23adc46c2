import { describe, expect, it } from '@jest/globals';
import type { LeakCheckCapture } from '@strutbook/domain/work/capture.js';
import { judgeEntry } from '@strutbook/domain/work/judge-entry.js';

/**
 * Source: NTSB AAR-84/04 (three engines without seals; motoring for ten seconds showed no leak; the duration from a
 * commentary); JTSB AI2015-2 and the report on VT-JCZ of 2014 (a fuel leak that motoring and idle did not show). The
 * durations and powers asked for here are invented.
 */
describe('a leak check (NTSB AAR-84/04; JTSB AI2015-2)', () => {
  const capture: LeakCheckCapture = {
    kind: 'leak-check',
    key: 'idle-check',
    label: 'Leak check at idle',
    minMinutes: 5,
    power: 'idle',
  };
  const check = (minutes: string, power: string) =>
    judgeEntry(
      capture,
      { kind: 'leak-check', minutes, power, found: 'none' },
      { tool: null, entries: [], on: '2026-03-01', ordered: null, register: null },
    ).reasons.map((reason) => reason.code);

  it('without duration or power is incomplete', () => {
    expect(check('', '')).toEqual(['DURATION_MISSING', 'POWER_MISSING']);
    expect(check('5', '')).toEqual(['POWER_MISSING']);
    expect(check('', 'idle')).toEqual(['DURATION_MISSING']);
  });

  it('too short, or by motoring only, is none', () => {
    expect(check('0.17', 'motoring')).toEqual(['DURATION_SHORT', 'POWER_DIFFERS']);
    expect(check('5', 'idle')).toEqual([]);
  });
});
