import { describe, expect, it } from '@jest/globals';
import { readFlightsFile } from './read-file.js';

const HEADING =
  'registration,log_page,from,to,take_off_utc,landing_utc,touch_and_goes,starts,aborted_take_offs';
const ROW = 'ZZ-1,P1,VDL,KRN,2025-03-04 09:05,2025-03-04 10:15,0,1,0';

async function read(text: string | Buffer) {
  const content = Buffer.isBuffer(text) ? text : Buffer.from(text);
  const { rows, flights, errors } = await readFlightsFile(content, async () => {});
  return { rows, flights, failed: errors.failed, errors: errors.list() };
}

/** One row with a column changed. */
function rowWith(column: string, value: string): string {
  const index = HEADING.split(',').indexOf(column);
  return ROW.split(',').with(index, value).join(',');
}

describe('readFlightsFile', () => {
  it.each([
    ['LF', `${HEADING}\n${ROW}\n`],
    ['CRLF', `${HEADING}\r\n${ROW}\r\n`],
    ['a byte order mark', `\ufeff${HEADING}\n${ROW}`],
    ['quotes where none are needed', `${HEADING}\n${ROW.replace('VDL', '"VDL"')}\n`],
    ['empty lines', `${HEADING}\n\n${ROW}\n\n`],
  ])('reads a file with %s', async (_, text) => {
    const { rows, flights, failed } = await read(text);

    expect([rows, failed]).toEqual([1, 0]);
    expect(flights).toMatchObject([
      { registration: 'ZZ-1', logPage: 'P1', touchAndGoes: 0, starts: 1, abortedTakeOffs: 0 },
    ]);
    expect((flights[0]?.landingAt ?? 0) - (flights[0]?.takeOffAt ?? 0)).toBe(70);
  });

  it('tells lines by the file’s own count, empty ones included', async () => {
    const { flights } = await read(`${HEADING}\n${ROW}\n\n\n${ROW}\n`);

    expect(flights.map(({ line }) => line)).toEqual([2, 5]);
  });

  it.each([
    ['nothing', '', 'registration'],
    ['another column', `${HEADING.replace('from', 'origin')}\n${ROW}`, 'from'],
    ['a column less', `${HEADING.replace(',starts', '')}\n${ROW}`, 'starts'],
    ['a column more', `${HEADING},remarks\n${ROW}`, null],
    ['the same column twice', `${HEADING.replace('starts', 'touch_and_goes')}\n${ROW}`, 'starts'],
    ['semicolons', `${HEADING.replaceAll(',', ';')}\n${ROW}`, 'registration'],
    ['capitals', `${HEADING.toUpperCase()}\n${ROW}`, 'registration'],
  ])('names the column when the heading is %s', async (_, text, column) => {
    const { errors, flights } = await read(text);

    expect(flights).toEqual([]);
    expect(errors).toMatchObject([{ line: 1, column }]);
  });

  it.each([
    ['take_off_utc', '04/03/2025 09:05', 'Day and month can be mistaken for each other here.'],
    ['take_off_utc', '2025-03-04 09:05:30', 'Flights are kept in whole minutes; this has seconds.'],
    ['take_off_utc', '2025-03-04 09:05Z', 'The column is in UTC already; a zone can be mistaken.'],
    ['take_off_utc', '2025-02-29 09:05', 'There is no day 2025-02-29.'],
    ['take_off_utc', '2025-03-04 24:00', 'There is no time 24:00.'],
    ['take_off_utc', '2025-03-04 09:60', 'There is no time 09:60.'],
    ['take_off_utc', '2025-03-04T09:05', 'This is not a date and time as the file needs them.'],
    ['take_off_utc', '0025-03-04 09:05', 'The year 0025 is too early for a flight.'],
    ['take_off_utc', '', 'Nothing is entered here.'],
    ['landing_utc', '2025-03-04 09:05', 'The landing is not after the take-off.'],
    ['landing_utc', '2025-03-05 09:06', 'The flight would be longer than 24 hours.'],
    ['touch_and_goes', '1.5', 'This is not a whole number.'],
    ['touch_and_goes', '-1', 'This is not a whole number.'],
    ['touch_and_goes', '1e2', 'This is not a whole number.'],
    ['touch_and_goes', '\u0663', 'This is not a whole number.'],
    ['starts', '', 'This is not a whole number.'],
    ['aborted_take_offs', '10000', 'This is not a whole number.'],
    ['from', 'vdl', 'This is no station code.'],
    ['registration', ' ZZ-1', 'There is a space before or after the value.'],
    ['log_page', 'P\u200b1', 'There is a character in it that does not print.'],
    ['log_page', '', 'Nothing is entered here.'],
    ['log_page', 'P'.repeat(21), 'It is longer than 20 characters.'],
  ])('refuses in %s the value "%s"', async (column, value, reason) => {
    const { errors, flights } = await read(`${HEADING}\n${ROW}\n${rowWith(column, value)}\n`);

    expect(flights).toHaveLength(1);
    expect(errors).toMatchObject([{ line: 3, column, reason }]);
    expect(errors[0]?.fix).not.toBe('');
  });

  it('takes a flight of 24 hours', async () => {
    expect((await read(`${HEADING}\n${rowWith('landing_utc', '2025-03-05 09:05')}`)).failed).toBe(0);
  });

  it('tells every column of a line that errs, and counts the line once', async () => {
    const { errors, failed } = await read(`${HEADING}\nZZ-1,P1,vdl,krn,never,ever,x,y,z\n`);

    expect(failed).toBe(1);
    expect(errors.map(({ column }) => column)).toEqual(HEADING.split(',').slice(2));
  });

  it('says how many columns a line has', async () => {
    const { errors } = await read(`${HEADING}\n${ROW},1\nZZ-1\n`);

    expect(errors.map(({ line, column, reason }) => [line, column, reason.slice(0, 25)])).toEqual([
      [2, null, 'This line has 10 columns;'],
      [3, null, 'This line has 1 columns; '],
    ]);
  });

  it('tells a value with a line break by its first line', async () => {
    const { errors } = await read(`${HEADING}\n${ROW.replace('P1', '"P\n1"')}\n${rowWith('starts', 'x')}\n`);

    expect(errors.map(({ line }) => line)).toEqual([2, 4]);
  });

  it.each([
    ['a NUL', `${HEADING}\n${ROW}\n${rowWith('log_page', 'P\u00001')}\n`, 3, /NUL/],
    ['carriage returns alone', `${HEADING}\r${ROW}\r`, 1, /carriage return alone/],
    ['UTF-16', Buffer.from(`\ufeff${HEADING}\n${ROW}\n`, 'utf16le'), 1, /NUL|UTF-8/],
    [
      'bytes that are no UTF-8',
      Buffer.concat([Buffer.from(`${HEADING}\n`), Buffer.from([0x5a, 0xe9, 0x2c])]),
      2,
      /no UTF-8/,
    ],
    ['an unclosed quote', `${HEADING}\n${ROW}\n${rowWith('log_page', '"P1')}\n${ROW}\n`, 3, /quotation mark/],
    ['a quote in the middle', `${HEADING}\n${rowWith('log_page', 'P"1')}\n`, 2, /quotation mark/],
    [
      'a value without end',
      `${HEADING}\n${rowWith('log_page', 'P'.repeat(100_000))}\n`,
      2,
      /longer than 4000/,
    ],
  ])('stops at %s, and says on which line', async (_, text, line, reason) => {
    const { errors, failed } = await read(text);

    expect(failed).toBe(1);
    expect(errors).toMatchObject([{ line, reason: expect.stringMatching(reason) }]);
  });

  it('keeps what was typed', async () => {
    const { flights } = await read(`${HEADING}\n${rowWith('starts', '0002')}\n`);

    expect(flights[0]).toMatchObject({
      starts: 2,
      typed: { starts: '0002', landing_utc: '2025-03-04 10:15' },
    });
  });
});
