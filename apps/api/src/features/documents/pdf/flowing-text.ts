import { SHEET, type Sheets } from './sheet.js';
import { wrap } from './wrap.js';

const FACT_SIZE = 9;
const FACT_LEADING = 12;
const FACT_INDENT = 96;

/** How a paragraph is set. */
export interface ParagraphStyle {
  readonly weight: 'bold' | 'regular';
  readonly size: number;
  /** The tag it is under: 'P' unless told. */
  readonly type?: string;
  /** How far from the left edge it begins, in points. */
  readonly indent?: number;
}

/** Paragraphs and named facts one below another, each under its own tag, on as many sheets as they take. */
export class FlowingText {
  y: number = SHEET.bodyTop;

  constructor(private readonly sheets: Sheets) {}

  /** Leaves out some points. */
  space(points: number): void {
    this.y += points;
  }

  /** Goes on to the next sheet unless so many points are left on this one. */
  makeRoom(height: number): void {
    if (this.y + height <= SHEET.bodyBottom) return;
    this.sheets.end();
    this.sheets.begin();
    this.y = SHEET.bodyTop;
  }

  /** A name and what it is, side by side. */
  fact(name: string, value: string): void {
    const { faces } = this.sheets;
    const label = wrap(name, FACT_INDENT - 8, { faces: faces.bold, size: FACT_SIZE });
    const lines = wrap(value, SHEET.right - SHEET.left - FACT_INDENT, {
      faces: faces.regular,
      size: FACT_SIZE,
    });
    const height = Math.max(label.length, lines.length) * FACT_LEADING;
    this.makeRoom(height);
    const placed = (of: typeof lines, x: number) =>
      of.map((line, index) => ({ line, x, y: this.y + FACT_SIZE + index * FACT_LEADING, size: FACT_SIZE }));
    this.tagged('P', () =>
      this.sheets.text([...placed(label, SHEET.left), ...placed(lines, SHEET.left + FACT_INDENT)]),
    );
    this.y += height;
  }

  /** A text over the whole width. */
  paragraph(text: string, { weight, size, type = 'P', indent = 0 }: ParagraphStyle): void {
    const leading = size * 1.3;
    const x = SHEET.left + indent;
    const lines = wrap(text, SHEET.right - x, { faces: this.sheets.faces[weight], size });
    this.makeRoom(lines.length * leading);
    this.tagged(type, () =>
      this.sheets.text(lines.map((line, index) => ({ line, x, y: this.y + size + index * leading, size }))),
    );
    this.y += lines.length * leading + 3;
  }

  private tagged(type: string, write: () => void): void {
    const element = this.sheets.element(type);
    const content = this.sheets.document.markStructureContent(type);
    write();
    this.sheets.document.endMarkedContent();
    element.add(content).end();
  }
}
