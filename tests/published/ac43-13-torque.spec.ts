import { readFileSync } from 'node:fs';
import { describe, expect, it } from '@jest/globals';
import { rangeWithRunOn } from '@strutbook/domain/torque/run-on.js';
import { settingWindow } from '@strutbook/domain/torque/window.js';
import { fraction } from '@strutbook/domain/units/fraction.js';
import { judgePull, reasonsOf } from './torque-typed.js';

interface Row {
  readonly series: 'fine' | 'coarse';
  readonly thread: string;
  readonly tension: readonly [number, number];
  readonly tensionMost: number;
  readonly shear: readonly [number, number];
  readonly shearMost: number;
  readonly shearEstimated: boolean;
}

const table: readonly Row[] = JSON.parse(
  readFileSync(new URL('./data/ac43-13-table-7-1.json', import.meta.url), 'utf8'),
);
const ofThread = (thread: string) => table.find((row) => row.thread === thread);

/** Source: FAA AC 43.13-1B, 7-40 c, d and f: the friction drag is added to the torque specified. Values invented. */
describe('run-on torque (FAA AC 43.13-1B, 7-40)', () => {
  const pull = (typed: string) =>
    judgePull({
      range: ['300', '350'],
      unit: 'lbf·in',
      typed,
      capture: { runOn: { rule: 'add', low: null, high: null } },
      more: { runOn: '30' },
    });

  it('of 30 makes 300 to 350 into 330 to 380', () => {
    expect(pull('330').computed['required']).toBe('330 to 380 lbf·in');
    expect(['329.9', '330', '380', '380.1'].map((typed) => reasonsOf(pull(typed)))).toEqual([
      ['BELOW_RANGE'],
      [],
      [],
      ['ABOVE_RANGE'],
    ]);
  });

  it('of 30 makes 50 to 70 into 80 to 100, and none leaves it', () => {
    const range = { low: fraction(50), high: fraction(70) };
    expect(rangeWithRunOn(range, fraction(30), 'add')).toEqual({ low: fraction(80), high: fraction(100) });
    expect(rangeWithRunOn(range, fraction(0), 'add')).toEqual(range);
  });
});

/** Source: FAA AC 43.13-1B, table 7-1 (oil-free cadmium-plated threads, lbf·in); two public copies agree. */
describe('recommended torques of nuts (FAA AC 43.13-1B, table 7-1)', () => {
  it('has fourteen fine and eleven coarse threads, three shear values of them estimated', () => {
    expect(table.filter((row) => row.series === 'fine')).toHaveLength(14);
    expect(table.filter((row) => row.series === 'coarse')).toHaveLength(11);
    expect(table.filter((row) => row.shearEstimated).map((row) => row.thread)).toEqual([
      '1-14',
      '1-1/8-12',
      '1-1/4-12',
    ]);
  });

  it.each(table)('$thread: shear below tension, recommended below greatest', (row) => {
    expect(row.tension[0]).toBeLessThan(row.tension[1]);
    expect(row.shear[0]).toBeLessThan(row.shear[1]);
    expect(row.shear[0]).toBeLessThan(row.tension[0]);
    expect(row.shear[1]).toBeLessThan(row.tension[1]);
    expect(row.shearMost).toBeLessThan(row.tensionMost);
    expect(row.tension[1]).toBeLessThan(row.tensionMost);
    expect(row.shear[1]).toBeLessThan(row.shearMost);
  });

  it.each(['fine', 'coarse'] as const)('grows with the diameter in the %s series', (series) => {
    const figures = table
      .filter((row) => row.series === series)
      .map((row) => [...row.tension, row.tensionMost, ...row.shear, row.shearMost]);
    for (const [index, row] of figures.entries())
      if (index > 0)
        for (const [column, figure] of row.entries())
          expect(figure).toBeGreaterThan(figures[index - 1]?.[column] ?? Number.NaN);
  });

  it('keeps its kink: 7/16-20 is hardly below 1/2-20, and far above 3/8-24', () => {
    const lows = ['3/8-24', '7/16-20', '1/2-20'].map((thread) => ofThread(thread)?.tension[0]);
    expect(lows).toEqual([160, 450, 480]);
    expect(ofThread('7/16-20')?.tension).toEqual([450, 500]);
    expect(ofThread('1/2-20')?.tension).toEqual([480, 690]);
  });

  it.each(table)('$thread: both bounds are accepted, the next tenth beyond is not', (row) => {
    for (const [low, high] of [row.tension, row.shear]) {
      const at = (torque: number) =>
        judgePull({ range: [`${low}`, `${high}`], unit: 'lbf·in', typed: torque.toFixed(1) }).verdict;
      expect([at(low - 0.1), at(low), at(high), at(high + 0.1)]).toEqual([
        'rejected',
        'accepted',
        'accepted',
        'rejected',
      ]);
    }
  });

  it('leaves a tool of 4 % no window for shear nuts on 3/8-16 (computed)', () => {
    const [low = 0, high = 0] = ofThread('3/8-16')?.shear ?? [];
    expect(settingWindow({ low: fraction(low), high: fraction(high) }, fraction(1, 25))).toBeNull();
  });
});

/**
 * Source: FAA AC 43.13-1B, 7-40 a (tools are calibrated at least yearly and after abuse); 145.A.40 of Reg. (EU)
 * 1321/2014 (calibrated, with records). That the due day itself is good: common practice, no source. Dates invented.
 */
describe('a wrench whose calibration is due on 30 June (FAA AC 43.13-1B, 7-40; 145.A.40)', () => {
  const on = (day: string) =>
    reasonsOf(judgePull({ range: ['50', '70'], unit: 'lbf·in', typed: '60', on: day }));

  it('is good on that day and rejected on 1 July', () => {
    expect(on('2026-06-30')).toEqual([]);
    expect(on('2026-07-01')).toEqual(['TOOL_OUT_OF_DATE']);
  });
});
