import { describe, expect, it } from '@jest/globals';
import { instant } from '../units/minutes.js';
import { mayBeReleased } from './check-release.js';
import { type GapNote, logGaps } from './log-gaps.js';
import { objectionText } from './objection-text.js';
import type { LoggedLeg } from './snapshot.js';

const leg = (
  n: number,
  page: string | null,
  from: string | null,
  to: string | null,
  ...notes: GapNote[]
): LoggedLeg => ({
  ...{ flightId: `f${n}`, page, from, to, notes },
  ...{ takeOffAt: instant(n * 100), landingAt: instant(n * 100 + 50) },
});
const pages: GapNote = {
  kind: 'pages',
  before: 'L-1',
  after: 'L-3',
  note: 'Page 2 is spoilt',
  voided: false,
};
const stations: GapNote = {
  ...{ kind: 'stations', before: 'BBB', after: 'CCC', note: 'Moved by road', voided: false },
};
const first = leg(1, 'L-1', 'AAA', 'BBB');
const codes = (flights: readonly LoggedLeg[]) =>
  logGaps(flights).map(({ code, severity }) => [code, severity]);

describe('a gap in the flight log', () => {
  it('blocks the release, whether a page or a station does not follow', () => {
    const held = logGaps([leg(3, 'L-3', 'CCC', 'DDD'), first]);

    expect(held).toMatchObject([
      {
        ...{ code: 'LOG_GAP', severity: 'blocking', record: { kind: 'flight', id: 'f3' } },
        detail: { reason: 'stations', arrivedAt: 'BBB', leftFrom: 'CCC' },
      },
      { code: 'LOG_GAP', severity: 'blocking', detail: { reason: 'pages', pageBefore: 'L-1', page: 'L-3' } },
    ]);
    expect(mayBeReleased(held)).toBe(false);
  });

  it('is closed by the missing flight', () => {
    const after = leg(3, 'L-3', 'CCC', 'DDD');
    expect(codes([first, after, leg(2, 'L-2', 'BBB', 'CCC')])).toEqual([]);
    expect(codes([first, after, leg(2, 'L-2', 'BBB', 'AAA')])).toEqual([['LOG_GAP', 'blocking']]);
  });

  it('is told as advice, in its words, once a note explains it; each kind by its own', () => {
    const explained = logGaps([first, leg(3, 'L-3', 'CCC', 'DDD', pages, stations)]);
    expect(explained).toMatchObject([
      { code: 'LOG_GAP_EXPLAINED', severity: 'advisory', detail: { note: 'Moved by road' } },
      { code: 'LOG_GAP_EXPLAINED', severity: 'advisory', detail: { note: 'Page 2 is spoilt' } },
    ]);
    expect(mayBeReleased(explained)).toBe(true);
    expect(explained.map((objection) => objectionText(objection).reason)).toEqual([
      'It left from CCC, but the flight before arrived at BBB. Noted: “Moved by road”',
      'It follows page L-1. Noted: “Page 2 is spoilt”',
    ]);

    expect(codes([first, leg(3, 'L-3', 'CCC', 'DDD', pages)])).toEqual([
      ['LOG_GAP', 'blocking'],
      ['LOG_GAP_EXPLAINED', 'advisory'],
    ]);
  });

  it('blocks again when its note is voided, and when another gap came in its place', () => {
    expect(codes([first, leg(3, 'L-3', 'BBB', 'DDD', { ...pages, voided: true })])).toEqual([
      ['LOG_GAP', 'blocking'],
    ]);
    expect(codes([leg(1, 'L-0', 'AAA', 'BBB'), leg(3, 'L-3', 'BBB', 'DDD', pages)])).toEqual([
      ['LOG_GAP', 'blocking'],
    ]);
    expect(codes([leg(1, 'L-1', 'AAA', 'EEE'), leg(3, 'L-1', 'CCC', 'DDD', stations)])).toEqual([
      ['LOG_GAP', 'blocking'],
    ]);
  });

  it('is one where pages run back, and none where several flights share a page or nothing can be compared', () => {
    expect(codes([leg(1, 'L-5', 'AAA', 'BBB'), leg(2, 'L-4', 'BBB', 'AAA')])).toEqual([
      ['LOG_GAP', 'blocking'],
    ]);
    const sound = [
      leg(1, 'L-099', 'AAA', null),
      leg(2, 'L-100', 'BBB', 'CCC'),
      leg(3, 'L-100', 'CCC', 'AAA'),
      leg(4, null, 'AAA', 'BBB'),
      leg(5, 'M-7', 'BBB', 'AAA'),
    ];
    expect(codes(sound)).toEqual([]);
  });
});
