import { describe, expect, it } from '@jest/globals';
import { instant } from '../units/minutes.js';
import { assembleHistory } from './assemble-history.js';
import type { HistoryEvent, HistoryFact } from './history.js';

let number = 0;
function fact(at: number, event: HistoryEvent, change: Partial<HistoryFact> = {}): HistoryFact {
  number += 1;
  return {
    id: `${number}`,
    at: instant(at),
    precision: 'minute',
    journalNumber: number,
    recordedAt: instant(at + number),
    by: 'A. Person',
    voided: null,
    event,
    ...change,
  };
}
const opening = (minutes: number | null, cycles: number | null): HistoryEvent => ({
  kind: 'opening',
  source: 'transfer papers',
  minutes,
  cycles,
});
const flight = (minutes: number, cycleUnits: number | null = 2): HistoryEvent => ({
  kind: 'flight',
  page: '1',
  from: 'AAA',
  to: 'BBB',
  takeOffAt: instant(0),
  minutes,
  cycleUnits,
  cycleDenominator: 2,
});
const removed: HistoryEvent = { kind: 'removed', place: 'position 1', reason: null, counters: null };
const installed: HistoryEvent = { kind: 'installed', place: 'position 2', counters: null };
const voided = { recordedAt: instant(900), by: 'B. Person', reason: 'wrong page' };
const told = (facts: readonly HistoryFact[]) =>
  assembleHistory(facts).map((line) => [line.fact.event.kind, line.totals.minutes, line.totals.cycles]);

describe('a history', () => {
  it('is told in order of time with the totals after each line', () => {
    expect(
      told([
        fact(30, flight(90)),
        fact(0, { kind: 'registered', serial: 'S', partNumber: null }),
        fact(10, opening(600, 10)),
        fact(40, flight(30, 1)),
      ]),
    ).toEqual([
      ['registered', null, null],
      ['opening', 600, 10],
      ['flight', 690, 11],
      ['flight', 720, 12],
    ]);
  });

  it('counts a landing before a removal of the same minute, and a removal before an installation', () => {
    expect(
      told([fact(50, installed), fact(50, removed), fact(50, flight(60)), fact(0, opening(0, 0))]).map(
        ([kind]) => kind,
      ),
    ).toEqual(['opening', 'flight', 'removed', 'installed']);
  });

  it('keeps a struck line, which changes no total', () => {
    const lines = assembleHistory([
      fact(0, opening(0, 0)),
      fact(10, flight(60), { voided }),
      fact(10, flight(65)),
    ]);
    expect(lines.map((line) => [line.struck, line.totals.minutes])).toEqual([
      [false, 0],
      [true, 0],
      [false, 65],
    ]);
    expect(lines[1]?.fact.voided?.reason).toBe('wrong page');
  });

  it('keeps unknown unknown', () => {
    expect(told([fact(0, opening(null, 5)), fact(10, flight(60))])).toEqual([
      ['opening', null, 5],
      ['flight', null, 6],
    ]);
    expect(told([fact(0, flight(60)), fact(10, opening(100, 1))])).toEqual([
      ['flight', null, null],
      ['opening', 100, 1],
    ]);
    expect(told([fact(0, opening(0, 0)), fact(10, flight(60, null))])).toEqual([
      ['opening', 0, 0],
      ['flight', 60, null],
    ]);
  });

  it('adds openings of several ratings', () => {
    expect(told([fact(0, opening(60, 1)), fact(0, opening(30, 2))]).at(-1)).toEqual(['opening', 90, 3]);
  });

  it('rounds half a cycle used up, and loses none', () => {
    expect(
      told([fact(0, opening(0, 0)), fact(1, flight(1, 1)), fact(2, flight(1, 1)), fact(3, flight(1, 1))]).map(
        ([, , cycles]) => cycles,
      ),
    ).toEqual([0, 1, 1, 2]);
  });
});
