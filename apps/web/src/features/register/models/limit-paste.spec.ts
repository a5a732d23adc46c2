import { describe, expect, test } from '@jest/globals';
import type { EngineModel } from '../../../server/fleet.js';
import { readPasted } from './limit-paste.js';

const MODELS = [{ id: 'm-1', designation: 'K84' }] as unknown as readonly EngineModel[];
const read = (text: string) => readPasted(text, MODELS);

describe('a pasted table of limits', () => {
  test('is read from a spreadsheet, its head left out', () => {
    expect(
      read(
        'Part number\tModel\tRating\tCycles\tHours\tCalendar\nP-1\tk84\t84A\t9,000\t12000:30\t10 years from new',
      ),
    ).toEqual({
      lines: [2],
      faults: [],
      rows: [
        {
          partNumber: 'P-1',
          engineModelId: 'm-1',
          ratingCode: '84A',
          authorisation: 'limited',
          cycles: 9000,
          minutes: 720_030,
          calendarSpan: 120,
          calendarUnit: 'months',
          calendarFrom: 'new',
          monthRule: 'same-day',
        },
      ],
    });
  });

  test('is read from plain text too, with any rating, whole hours, days and the month’s end', () => {
    expect(
      read(
        'P-1,K84,any,,500,\n\nP-2;K84;;;;24 months from overhaul to month end\nP-3,K84,,,,400 days from first installation',
      ).rows,
    ).toMatchObject([
      { partNumber: 'P-1', minutes: 30_000 },
      { calendarSpan: 24, calendarFrom: 'overhaul', monthRule: 'month-end' },
      { calendarSpan: 400, calendarUnit: 'days', calendarFrom: 'first-installation' },
    ]);
    expect(read('P-1,K84,any,1').rows[0]).not.toHaveProperty('ratingCode');
  });

  test('knows not limited and not authorised', () => {
    expect(read('P-1,K84,,N/L\nP-2,K84,84A,N/A').rows).toMatchObject([
      { authorisation: 'not-limited' },
      { authorisation: 'not-authorised', ratingCode: '84A' },
    ]);
  });

  test.each([
    [',K84,,5', 'Enter the part number first.'],
    ['P,K99,,5', '“K99” is not an engine model on record.'],
    ['P,K84,,-5', '“-5” is not a whole number of cycles.'],
    ['P,K84,,0', '“0” is not a whole number of cycles.'],
    ['P,K84,,,x', '“x” is not a number of hours.'],
    ['P,K84,,,,ten years', '“ten years” is not a calendar life: write it as “10 years from new”.'],
    ['P,K84', 'Enter cycles, hours or a calendar life.'],
    ['P,K84,,N/L,5', '“N/L” leaves no other limit.'],
  ])('tells what is wrong with %s', (line, message) => {
    expect(read(`\n${line}`)).toEqual({ rows: [], lines: [], faults: [{ line: 2, message }] });
  });
});
