import { describe, expect, test } from '@jest/globals';
import { calendarText, goodThroughText } from './calendar-words.js';

describe('a calendar life in words', () => {
  test('says how long, and from when', () => {
    expect(calendarText({ span: 120, unit: 'months', countedFrom: 'new' })).toBe('120 months from new');
    expect(calendarText({ span: 1, unit: 'months', countedFrom: 'overhaul', monthRule: 'month-end' })).toBe(
      '1 month to the month’s end from overhaul',
    );
    expect(calendarText({ span: 400, unit: 'days', countedFrom: 'first-installation' })).toBe(
      '400 days from first installation',
    );
  });

  test('is good through its last day', () => {
    expect(goodThroughText('2026-07-15', 0)).toContain('today');
    expect(goodThroughText('2026-07-15', -3)).toContain('3 days past');
  });
});
