import { describe, expect, it } from '@jest/globals';
import type { HistoryLine } from './history-data.js';
import { byYear, linesShown, occurring, withPart } from './line-filter.js';

const line = (at: string, title: string, detail: string): HistoryLine => ({
  at,
  title,
  detail,
  placed: null,
  struck: null,
  adds: null,
  totals: { minutes: 1, cycles: 1 },
  work: null,
  entry: { number: 1, recordedAt: at, by: 'R. Kay', hash: null },
});

const LINES = [
  line('2025-03-02T09:40Z', 'Installed', 'Position 1 of ZZ-417'),
  line('2025-12-31T20:00Z', 'Flight', 'Log page 0416'),
  line('2026-01-01T02:00Z', 'Flight', 'Log page 0417'),
];

describe('the lines of a history', () => {
  it('stand newest first, or oldest first when asked', () => {
    expect(linesShown(LINES, {}).map(({ at }) => at.slice(0, 4))).toEqual(['2026', '2025', '2025']);
    expect(linesShown(LINES, { order: 'oldest' })).toEqual(LINES);
  });

  it('are let through as all work in packages, or as all but its single steps', () => {
    const work = { packageId: 'k-1', number: 'EC-0240', stepId: null };
    const opened = { ...line('2026-01-02T08:00Z', 'Package opened', 'Package EC-0240'), work };
    const signed = {
      ...line('2026-01-02T09:00Z', 'Step signed', 'Package EC-0240, step 1'),
      work: { ...work, stepId: 's-1' },
    };
    const all = [...LINES, opened, signed];
    expect(linesShown(all, { kind: 'in-packages', order: 'oldest' })).toEqual([opened, signed]);
    expect(linesShown(all, { kind: 'without-steps', order: 'oldest' })).toEqual([...LINES, opened]);
  });

  it('are let through by kind, year and a word of any of their texts', () => {
    expect(linesShown(LINES, { kind: 'Flight', year: '2025' })).toEqual([LINES[1]]);
    expect(linesShown(LINES, { find: 'zz-417' })).toEqual([LINES[0]]);
    expect(linesShown(LINES, { find: 'r. kay' })).toHaveLength(3);
  });

  it('are parted where the year changes', () => {
    expect(byYear(LINES).map(({ year, lines }) => [year, lines.length])).toEqual([
      ['2025', 2],
      ['2026', 1],
    ]);
  });

  it('are counted by kind', () => {
    expect(occurring(LINES.map(({ title }) => title))).toEqual([
      { value: 'Flight', count: 2 },
      { value: 'Installed', count: 1 },
    ]);
  });

  it('lose a part of the filter that is emptied', () => {
    expect(withPart({ kind: 'Flight', year: '2025' }, 'kind', '')).toEqual({ year: '2025' });
  });
});
