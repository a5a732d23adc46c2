import { describe, expect, it } from '@jest/globals';
import { csvCell } from './csv-cell.js';

describe('a cell of comma-separated text', () => {
  it.each(['-4', '-244:24', '-0.5'])('leaves the negative figure %s as it is', (figure) => {
    expect(csvCell(figure)).toBe(figure);
  });

  it.each(['=1+1', '-1+1', '-A1', '+44', '@SUM(A1)', '-4 cycles'])(
    'guards %j, which could be a formula',
    (text) => {
      expect(csvCell(text)).toBe(`'${text}`);
    },
  );
});
