import { describe, expect, it } from '@jest/globals';
import { isBlock, layOver, readBlock } from './paste-block.js';
import { BLANK_FLIGHT } from './typed-flight.js';

const cellsOf = (text: string) => {
  const read = readBlock(text, 'logPage', 'ZZ-417');
  return read.ok ? read.cells : read.reason;
};

describe('a pasted block', () => {
  it('is one only with a tab or several lines', () => {
    expect([isBlock('0417'), isBlock('0417\n'), isBlock('0417\t1'), isBlock('1\n2')]).toEqual([
      false,
      false,
      true,
      true,
    ]);
  });

  it('goes where its headings say, in any order', () => {
    expect(cellsOf('To\tPage\tT&G\nKQX\t0417\t2')).toEqual([
      { toStation: 'KQX', logPage: '0417', touchAndGoes: '2' },
    ]);
  });

  it('parts date and time of one cell', () => {
    expect(cellsOf('log_page\ttake_off_utc\tlanding_utc\n1\t2026-11-11 14:20\t2026-11-12 00:35')).toEqual([
      { logPage: '1', date: '2026-11-11', takeOffAt: '14:20', landingAt: '00:35+1' },
    ]);
  });

  it('leaves a date that can be read two ways as it came', () => {
    expect(cellsOf('Page\tDate\n1\t03/04/26')).toEqual([{ logPage: '1', date: '03/04/26' }]);
  });

  it('goes from the cell in hand to the right without headings', () => {
    const read = readBlock('QXA\tKQX', 'fromStation', 'ZZ-417');
    expect(read).toEqual({ ok: true, by: 'place', cells: [{ fromStation: 'QXA', toStation: 'KQX' }] });
  });

  it('is refused with another airframe, a strange heading, or more columns than there are', () => {
    expect(cellsOf('registration\tPage\nZZ-731\t1')).toContain('ZZ-731');
    expect(cellsOf('Page\tDate\tCaptain\n1\t2026-11-11\tX')).toContain('Captain');
    expect(readBlock('1\t2\t3', 'starts', 'ZZ-417').ok).toBe(false);
  });

  it('is laid over the rows from the one in hand, which grow', () => {
    const rows = layOver([{ ...BLANK_FLIGHT, logPage: '1' }], 1, [{ logPage: '2' }, { logPage: '3' }]);
    expect(rows.map(({ logPage }) => logPage)).toEqual(['1', '2', '3']);
  });
});
