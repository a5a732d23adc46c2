import type { ToldLine, ToldSubject, ToldTotals } from '../../../records/history/told-line.js';
import { FlowingText } from './flowing-text.js';
import { HISTORY_HEADS, historyRow, printedCount, printedHours, printedInstant } from './history-row.js';
import { type Column, RowTable } from './row-table.js';
import { SHEET, Sheets } from './sheet.js';

/** What a printed history says beside its lines. */
export interface HistoryPrint {
  readonly subject: ToldSubject;
  readonly operatorName: string;
  readonly preparedBy: string;
  /** 'YYYY-MM-DDTHH:MMZ'. */
  readonly preparedAt: string;
}

/** A finished document. */
export interface PrintedDocument {
  readonly bytes: Uint8Array;
  readonly pages: number;
}

/** What a printed record is, and what it is not. */
export const AID_STATEMENT =
  'This print is an aid. Approved data and the records required by the rules govern. ' +
  'A struck line does not count; it stays with its reason. What is not known is said to be so; it is not zero.';

const WIDTHS = [80, 172, 56, 62, 121] as const;
const GAP = 6;

function columns(): Column[] {
  let x = SHEET.left;
  return HISTORY_HEADS.map((head, index) => {
    const width = WIDTHS[index] ?? 0;
    const column: Column = { head, x, width, align: index === 2 || index === 3 ? 'right' : 'left' };
    x += width + GAP;
    return column;
  });
}

/** A history on paper, written line by line in memory that does not grow with them. */
export class HistoryPdf {
  private readonly sheets: Sheets;
  private readonly table: RowTable;
  private readonly text: FlowingText;

  constructor(print: HistoryPrint) {
    const { subject, operatorName, preparedBy, preparedAt } = print;
    this.sheets = new Sheets({
      documentTitle: `History of ${subject.label}`,
      title: `History, ${operatorName}`,
      subject: subject.label,
      foot: `Prepared by ${preparedBy}, ${printedInstant(preparedAt)}. An aid: approved data governs.`,
      preparedAt: new Date(preparedAt),
      author: preparedBy,
    });
    this.sheets.begin();
    this.text = new FlowingText(this.sheets);
    this.writeOpening(print);
    this.table = new RowTable(this.sheets, columns(), this.text.y);
  }

  /** Writes the next line. */
  line(line: ToldLine): void {
    this.table.write(historyRow(line));
  }

  /** Writes the totals and ends the document. */
  async finish(totals: ToldTotals): Promise<PrintedDocument> {
    this.text.y = this.table.end() + 8;
    this.text.makeRoom(40);
    const words = totals.lines === 1 ? '1 line' : `${totals.lines} lines`;
    this.text.paragraph(
      `At the end: ${printedHours(totals.minutes)}, ${printedCount(totals.cycles)}. ${words}. End of the history.`,
      {
        weight: 'bold',
        size: 9,
      },
    );
    this.sheets.end();
    return { bytes: await this.sheets.finish(), pages: this.sheets.pages };
  }

  private writeOpening({ subject, operatorName, preparedBy, preparedAt }: HistoryPrint): void {
    const { text } = this;
    text.space(12);
    text.paragraph(`History of ${subject.label}`, { weight: 'bold', size: 16, type: 'H1' });
    text.space(2);
    for (const { name, value } of [
      ...subject.identity,
      { name: 'Operator', value: operatorName },
      { name: 'Prepared', value: `${printedInstant(preparedAt)} by ${preparedBy}` },
    ])
      text.fact(name, value);
    text.space(5);
    text.paragraph(AID_STATEMENT, { weight: 'regular', size: 8.5 });
    text.space(2);
  }
}
