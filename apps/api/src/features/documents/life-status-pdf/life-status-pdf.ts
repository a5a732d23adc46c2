import { SHEET_COLUMNS, type SheetColumn, sheetFacts } from '../../../records/lives/sheet/sheet-words.js';
import type { LifeSheetDto, SheetPartDto } from '../../../records/lives/wire/life-sheet.dto.js';
import { FlowingText } from '../pdf/flowing-text.js';
import type { PrintedDocument } from '../pdf/history-pdf.js';
import { type CellText, printedInstant } from '../pdf/history-row.js';
import { type Column, RowTable } from '../pdf/row-table.js';
import { SHEET, Sheets } from '../pdf/sheet.js';

/** What a printed sheet says beside the status itself. */
export interface LifeStatusPrint {
  readonly sheet: LifeSheetDto;
  readonly preparedBy: string;
  /** ISO 8601, UTC. */
  readonly preparedAt: string;
}

const GROUPS = [
  { group: 'part', head: 'Part', width: 104 },
  { group: 'limit', head: 'Limit and documents', width: 108 },
  { group: 'used', head: 'Used', width: 92 },
  { group: 'left', head: 'Left', width: 106 },
  { group: 'standing', head: 'Standing', width: 81 },
] as const satisfies readonly { group: SheetColumn['group']; head: string; width: number }[];
const GAP = 6;

/** The status of life-limited parts on paper: every member of the sheet in words, its cautions, and where it is signed. */
export async function printLifeStatus(print: LifeStatusPrint): Promise<PrintedDocument> {
  const { sheet, preparedBy, preparedAt } = print;
  const subject = `${sheet.subject.description} ${sheet.subject.serialNumber}`;
  const prepared = printedInstant(`${preparedAt.slice(0, 16)}Z`);
  const sheets = new Sheets({
    documentTitle: `${sheet.title}, ${subject}`,
    title: `${sheet.title}, ${sheet.operator}`,
    subject: `${subject}, as at ${printedInstant(sheet.at)}`,
    foot: `Prepared by ${preparedBy}, ${prepared}. An aid: approved data governs.`,
    preparedAt: new Date(preparedAt),
    author: preparedBy,
  });
  sheets.begin();
  const text = new FlowingText(sheets);
  text.space(12);
  text.paragraph(`${sheet.title}, ${subject}`, { weight: 'bold', size: 16, type: 'H1' });
  text.space(2);
  for (const { name, value } of [
    ...sheetFacts(sheet),
    { name: 'Prepared', value: `${prepared} by ${preparedBy}` },
  ])
    text.fact(name, value);
  text.space(6);
  if (sheet.parts.length === 0)
    text.paragraph('No life-limited part is recorded in it.', { weight: 'bold', size: 9 });
  const table = new RowTable(sheets, columns(), text.y);
  for (const part of sheet.parts) table.write({ struck: false, cells: cellsOf(part) });
  text.y = table.end();
  text.space(10);
  for (const caution of sheet.cautions) text.paragraph(caution, { weight: 'regular', size: 8.5 });
  writePlaceToSign(sheets, text, sheet.toSign);
  sheets.end();
  return { bytes: await sheets.finish(), pages: sheets.pages };
}

function columns(): Column[] {
  let x: number = SHEET.left;
  return GROUPS.map(({ head, width }) => {
    const column: Column = { head, x, width, align: 'left' };
    x += width + GAP;
    return column;
  });
}

/** One cell a group, one line a member that says something, each named but for what the part is called. */
function cellsOf(part: SheetPartDto): CellText[][] {
  return GROUPS.map(({ group }) =>
    SHEET_COLUMNS.filter((column) => column.group === group).flatMap(({ head, cell }): CellText[] => {
      const value = cell(part);
      if (value === '') return [];
      if (head === 'Description' || head === 'Status') return [{ text: value, weight: 'bold' }];
      return [{ text: `${head}: ${value}`, weight: head.startsWith('Remaining') ? 'bold' : 'regular' }];
    }),
  );
}

/** Lines to write on by hand. */
function writePlaceToSign(sheets: Sheets, text: FlowingText, names: readonly string[]): void {
  text.makeRoom(40 + names.length * 24);
  text.space(8);
  text.paragraph('Signed by hand: the system signs nothing here.', { weight: 'bold', size: 9 });
  for (const name of names) {
    text.space(10);
    text.fact(name, '');
    sheets.rule(SHEET.left + 96, text.y, SHEET.left + 340, text.y, { grey: 0.4 });
  }
}
