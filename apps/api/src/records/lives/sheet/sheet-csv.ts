import { csvCell } from '../../../platform/http/csv-cell.js';
import type { LifeSheetDto } from '../wire/life-sheet.dto.js';
import { SHEET_COLUMNS, sheetFacts } from './sheet-words.js';

/**
 * The sheet as comma-separated text with a byte order mark: the heading by name and value, the parts, the cautions and
 * what is signed by hand. A cell that a spreadsheet would take for a formula begins with an apostrophe. Total.
 */
export function sheetCsv(sheet: LifeSheetDto): string {
  const lines = [
    [sheet.title],
    ...sheetFacts(sheet).map(({ name, value }) => [name, value]),
    [],
    SHEET_COLUMNS.map(({ head }) => head),
    ...sheet.parts.map((part) => SHEET_COLUMNS.map(({ cell }) => cell(part))),
    [],
    ...sheet.cautions.map((caution) => [caution]),
    [],
    ...sheet.toSign.map((name) => [name, '']),
  ];
  return `\uFEFF${lines.map((cells) => cells.map(csvCell).join(',')).join('\r\n')}\r\n`;
}
