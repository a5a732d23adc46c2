import type { CellText, HistoryRow } from './history-row.js';
import { SHEET, type Sheets } from './sheet.js';
import { type WrappedLine, wrap } from './wrap.js';

/** A column of the table. */
export interface Column {
  readonly head: string;
  readonly x: number;
  readonly width: number;
  readonly align: 'left' | 'right';
}

const SIZE = 8;
const LEADING = 10.4;
const PADDING = 3.5;
const HEAD_HEIGHT = 16;

/**
 * Rows one below another over as many sheets as it takes, the heads again on each: one table of the tags a sheet,
 * so that what is written needs no memory. A row stays on one sheet unless it is higher than a sheet.
 */
export class RowTable {
  private table: PDFKit.PDFStructureElement | null = null;
  private y: number;

  constructor(
    private readonly sheets: Sheets,
    private readonly columns: readonly Column[],
    startY: number,
  ) {
    this.y = startY;
  }

  /** Writes one row. */
  write(row: HistoryRow): void {
    let cells = row.cells.map((cell, index) => this.wrapped(cell, this.columns[index]));
    while (cells.some((cell) => cell.length > 0)) {
      const height = Math.max(...cells.map((cell) => cell.length)) * LEADING + 2 * PADDING;
      const whole = SHEET.bodyBottom - SHEET.bodyTop - HEAD_HEIGHT;
      this.makeRoom(Math.min(height, whole));
      const fitting = Math.floor((SHEET.bodyBottom - this.y - 2 * PADDING) / LEADING);
      this.writeSlice(
        cells.map((cell) => cell.slice(0, fitting)),
        row.struck,
      );
      cells = cells.map((cell) => cell.slice(fitting));
    }
  }

  /** Ends the table. Answers where the next thing may be written on the last sheet. */
  end(): number {
    this.table?.end();
    this.table = null;
    return this.y;
  }

  private wrapped(cell: readonly CellText[], column: Column | undefined): WrappedLine[] {
    return cell.flatMap(({ text, weight }) =>
      wrap(text, column?.width ?? 0, { faces: this.sheets.faces[weight], size: SIZE }),
    );
  }

  private makeRoom(height: number): void {
    if (this.table !== null && this.y + height <= SHEET.bodyBottom) return;
    if (this.table !== null || this.y + HEAD_HEIGHT + height > SHEET.bodyBottom) {
      this.table?.end();
      this.sheets.end();
      this.sheets.begin();
      this.y = SHEET.bodyTop;
    }
    this.table = this.sheets.element('Table');
    this.writeHeads(this.table);
  }

  private writeHeads(table: PDFKit.PDFStructureElement): void {
    const row = this.sheets.document.struct('TR');
    table.add(row);
    for (const column of this.columns) {
      const [line] = wrap(column.head, column.width, { faces: this.sheets.faces.bold, size: SIZE });
      if (line === undefined) continue;
      this.sheets.tag(
        row,
        'TH',
        () => this.sheets.text([{ line, x: leftOf(line, column), y: this.y + 10, size: SIZE, grey: 0.25 }]),
        {
          scope: 'Column',
        },
      );
    }
    row.end();
    this.y += HEAD_HEIGHT;
    this.sheets.rule(SHEET.left, this.y, SHEET.right, this.y, { width: 0.8, grey: 0.25 });
  }

  private writeSlice(cells: readonly WrappedLine[][], struck: boolean): void {
    const row = this.sheets.document.struct('TR');
    this.table?.add(row);
    const first = this.y + PADDING + LEADING - 2.6;
    cells.forEach((cell, index) => {
      const column = this.columns[index];
      if (column === undefined) return;
      const placed = cell.map((line, at) => ({
        line,
        x: leftOf(line, column),
        y: first + at * LEADING,
        size: SIZE,
        grey: struck ? 0.35 : 0,
      }));
      this.sheets.tag(row, 'TD', () => this.sheets.text(placed));
      // The amounts that do not count are struck through; the words beside them say so as well.
      if (struck && index === 2)
        for (const { line, x, y } of placed)
          this.sheets.rule(x, y - 2.7, x + line.width, y - 2.7, { grey: 0.1, width: 0.7 });
    });
    row.end();
    this.y += Math.max(...cells.map((cell) => cell.length)) * LEADING + 2 * PADDING;
    this.sheets.rule(SHEET.left, this.y, SHEET.right, this.y, { grey: 0.85, width: 0.4 });
  }
}

function leftOf(line: WrappedLine, { x, width, align }: Column): number {
  return align === 'left' ? x : x + width - line.width;
}
