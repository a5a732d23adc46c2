import { describe, expect, it } from '@jest/globals';
import { instant } from '../units/minutes.js';
import { type GroundRun, groundRunPosting, planGroundRun } from './ground-run.js';

const run = (more: Partial<GroundRun> = {}): GroundRun => ({
  ...{ startedAt: instant(100), endedAt: instant(130), runMinutes: 26, countedMinutes: 0 },
  ...{ starts: 1, abortedTakeOffs: 0 },
  ...more,
});

const codeOf = (told: GroundRun) => {
  const planned = planGroundRun(told);
  return planned.ok ? null : planned.refusal.code;
};

describe('a ground run', () => {
  it('posts what counts of it at its end, and neither flight nor landing', () => {
    expect(groundRunPosting(run({ countedMinutes: 12, starts: 2 }), 'p')).toEqual({
      carrierId: 'p',
      at: 130,
      counts: { minutes: 12, flights: 0, landings: 0, touchAndGoes: 0, starts: 2, abortedTakeOffs: 0 },
    });
  });

  it('lasts at least a minute and at most a day', () => {
    expect(codeOf(run())).toBeNull();
    expect(codeOf(run({ endedAt: instant(100) }))).toBe('RUN_NOT_AFTER_START');
    expect(codeOf(run({ endedAt: instant(1_540), runMinutes: 1_440 }))).toBeNull();
    expect(codeOf(run({ endedAt: instant(1_541) }))).toBe('RUN_TOO_LONG');
  });

  it('ran no longer than it lasted, and counts no more than it ran', () => {
    expect(codeOf(run({ runMinutes: 30 }))).toBeNull();
    expect(codeOf(run({ runMinutes: 31 }))).toBe('RUN_BEYOND_SPAN');
    expect(codeOf(run({ countedMinutes: 26 }))).toBeNull();
    expect(codeOf(run({ countedMinutes: 27 }))).toBe('COUNTED_BEYOND_RUN');
    expect(codeOf(run({ starts: -1 }))).toBe('NOT_A_COUNT');
    expect(codeOf(run({ abortedTakeOffs: 1.5 }))).toBe('NOT_A_COUNT');
  });
});
