import { describe, expect, it } from '@jest/globals';
import { BLANK_FLIGHT, faultsOf, flightWords, flownMinutes, isBlank, timeBeside } from './typed-flight.js';

const typed = {
  ...BLANK_FLIGHT,
  logPage: '0417',
  date: '2026-11-11',
  fromStation: 'qxa',
  toStation: 'KQX',
  takeOffAt: '14:20',
  landingAt: '18:02',
};

describe('a flight as typed', () => {
  it('is sent in UTC, its stations in capitals', () => {
    expect(faultsOf(typed)).toEqual({});
    expect(flightWords(typed)).toEqual({
      logPage: '0417',
      fromStation: 'QXA',
      toStation: 'KQX',
      takeOffAt: '2026-11-11T14:20Z',
      landingAt: '2026-11-11T18:02Z',
      touchAndGoes: 0,
      starts: 1,
      abortedTakeOffs: 0,
    });
    expect(flownMinutes(typed)).toBe(222);
  });

  it('lands on the next day only when it says so', () => {
    const late = { ...typed, takeOffAt: '21:29', landingAt: '05:10' };
    expect(flownMinutes(late)).toBe(-979);
    expect(faultsOf(late).landingAt).toContain('Lands before take-off');
    expect(flightWords({ ...late, landingAt: '05:10+1' })?.landingAt).toBe('2026-11-12T05:10Z');
  });

  it('takes date and time in full', () => {
    const full = { ...typed, date: '', takeOffAt: '2026-11-11 14:20', landingAt: '2026-11-11 18:02' };
    expect(faultsOf(full)).toEqual({});
    expect(flownMinutes(full)).toBe(222);
  });

  it('names each field that is not readable, and guesses none', () => {
    const faults = faultsOf({
      ...typed,
      date: '03/04/26',
      landingAt: '1802',
      touchAndGoes: '1.5',
      logPage: ' ',
    });
    expect(Object.keys(faults).sort()).toEqual(['date', 'landingAt', 'logPage', 'touchAndGoes']);
  });

  it('asks how long an engine stood still, and sends it in minutes', () => {
    const shutDown = { positionNumber: 3, kind: 'shut-down' as const, minutes: '' };
    expect(faultsOf({ ...typed, exceptions: [shutDown] }).exceptions).toContain('position 3');
    const told = { ...typed, exceptions: [{ ...shutDown, minutes: '2:21' }] };
    expect(flightWords(told)?.exceptions).toEqual([{ positionNumber: 3, kind: 'shut-down', minutes: 141 }]);
  });

  it('is blank while only the date was carried down', () => {
    expect(isBlank({ ...BLANK_FLIGHT, date: '2026-11-11' })).toBe(true);
    expect(isBlank({ ...BLANK_FLIGHT, starts: '2' })).toBe(false);
  });
});

describe('a moment beside a date', () => {
  it('is the time alone on that date and the next', () => {
    expect(timeBeside('2026-11-11', '2026-11-11 18:02')).toBe('18:02');
    expect(timeBeside('2026-11-11', '2026-11-12 00:35')).toBe('00:35+1');
    expect(timeBeside('2026-11-11', '2026-11-13 00:35')).toBe('2026-11-13 00:35');
    expect(timeBeside('2026-11-11', '03/04/26')).toBe('03/04/26');
  });
});
