import PDFDocument from 'pdfkit';
import { ByteBlocks } from './byte-blocks.js';
import { embedFaces, type Faces, type Run, regularFile } from './faces.js';
import type { WrappedLine } from './wrap.js';

/** Points on an A4 sheet, from its top left corner. */
export const SHEET = {
  width: 595.28,
  height: 841.89,
  left: 40,
  right: 555.28,
  top: 36,
  bodyTop: 74,
  bodyBottom: 786,
} as const;

/** What is told on every sheet, and of the file. */
export interface SheetWords {
  readonly documentTitle: string;
  readonly title: string;
  /** Subject with serial number or registration. */
  readonly subject: string;
  readonly foot: string;
  /** When it was prepared; the file's own date, so that the same content makes the same bytes. */
  readonly preparedAt: Date;
  readonly author: string;
}

// What is used of pdfkit as it is, where its types say less.
interface Reference {
  data: Record<string, unknown>;
  write(chunk: string): void;
  end(): void;
}
type Page = PDFKit.PDFPage & { readonly structParentTreeKey: number };
type Internals = PDFKit.PDFDocument & {
  getStructParentTree(): { get(key: number): unknown; add(key: number, value: unknown): void };
};

/**
 * The sheets of a document: A4, tagged, each with its head, its foot and 'page x of y'.
 *
 * Sheets are written out as they fill up. The number of sheets is known only at the end, so each foot shows one
 * form that is filled in last.
 */
export class Sheets {
  readonly document: PDFKit.PDFDocument;
  readonly faces: Faces;
  private readonly bytes = new ByteBlocks();
  private readonly root: PDFKit.PDFStructureElement;
  private readonly totalForm: Reference;
  private count = 0;
  private rules: string[] = [];

  constructor(private readonly words: SheetWords) {
    this.document = new PDFDocument({
      size: 'A4',
      margin: 0,
      autoFirstPage: false,
      pdfVersion: '1.7',
      tagged: true,
      lang: 'en-GB',
      displayTitle: true,
      font: regularFile(),
      info: {
        Title: words.documentTitle,
        Author: words.author,
        Creator: 'Strutbook',
        Producer: 'Strutbook',
        CreationDate: words.preparedAt,
      },
    });
    this.document.on('data', (piece: Uint8Array) => this.bytes.add(piece));
    this.faces = embedFaces(this.document);
    this.totalForm = this.document.ref({
      Type: 'XObject',
      Subtype: 'Form',
      BBox: [0, -4, 60, 12],
      Resources: {},
    }) as unknown as Reference;
    this.root = this.document.struct('Document');
    this.document.addStructure(this.root);
  }

  get pages(): number {
    return this.count;
  }

  /** Begins a sheet, with its head and foot. */
  begin(): void {
    this.document.addPage();
    this.count += 1;
    this.furnish();
  }

  /** Adds an element under the document itself. */
  element(type: string): PDFKit.PDFStructureElement {
    const element = this.document.struct(type);
    this.root.add(element);
    return element;
  }

  /** Adds a tagged text to an element: lines down from `y`, each at its own `x`. */
  tag(
    parent: PDFKit.PDFStructureElement,
    type: string,
    write: () => void,
    options: { readonly scope?: string } = {},
  ): void {
    const content = this.document.markStructureContent(type);
    write();
    this.document.endMarkedContent();
    parent.add(this.document.struct(type, options as PDFKit.Mixins.StructureElementOptions, [content]));
  }

  /** Writes lines of text; each ends in a space, so that a reader keeps the words apart. `grey` is 0 (black) to 1. */
  text(
    lines: readonly {
      readonly line: WrappedLine;
      readonly x: number;
      readonly y: number;
      readonly size: number;
      readonly grey?: number;
    }[],
  ): void {
    if (lines.length === 0) return;
    const parts = lines.map(({ line, x, y, size, grey = 0 }) => {
      const shown = line.runs.map((run, index) =>
        this.show(index === line.runs.length - 1 ? { ...run, text: `${run.text} ` } : run, size),
      );
      return `${grey} g 1 0 0 1 ${points(x)} ${points(SHEET.height - y)} Tm ${shown.join(' ')}`;
    });
    this.document.addContent(`q 1 0 0 -1 0 ${SHEET.height} cm BT ${parts.join(' ')} ET Q`);
  }

  /** Draws a line when the sheet ends; lines are no content. */
  rule(
    x1: number,
    y1: number,
    x2: number,
    y2: number,
    { width = 0.5, grey = 0.75 }: { readonly width?: number; readonly grey?: number } = {},
  ): void {
    this.rules.push(`${width} w ${grey} G ${points(x1)} ${points(y1)} m ${points(x2)} ${points(y2)} l S`);
  }

  /** Ends a sheet: what it drew, and its part of the tags, which are not needed in memory any more. */
  end(): void {
    this.document.markContent('Artifact', { type: 'Layout' });
    this.document.addContent(`q ${this.rules.join(' ')} Q`);
    this.document.endMarkedContent();
    this.rules = [];
    const tree = (this.document as Internals).getStructParentTree();
    const { structParentTreeKey: key } = this.document.page as Page;
    const owners = this.document.ref(tree.get(key) as object) as unknown as Reference;
    owners.end();
    owners.data = {};
    tree.add(key, owners);
  }

  /** Ends the document. Answers its bytes. */
  async finish(): Promise<Uint8Array> {
    const [face] = this.faces.figures;
    this.totalForm.data['Resources'] = { Font: face.resources() };
    this.totalForm.write(`BT 0.3 g 0 0 Td ${this.show({ face, text: String(this.count) }, 8)} ET`);
    this.totalForm.end();
    this.root.end();
    const ended = new Promise<void>((resolve, reject) =>
      this.document.on('end', () => resolve()).on('error', reject),
    );
    this.document.end();
    await ended;
    return this.bytes.joined();
  }

  private show({ face, text }: Run, size: number): string {
    // A form has no page: its fonts are in its own resources.
    const name = face.on(this.document.page as unknown as { fonts: Record<string, unknown> });
    return `/${name} ${size} Tf <${face.encode(text)}> Tj`;
  }

  private furnish(): void {
    const { regular, bold, figures } = this.faces;
    const line = (text: string, faces: readonly [Run['face'], Run['face']]): WrappedLine => ({
      runs: [{ face: faces[0], text }],
      width: faces[0].width(text, 8),
    });
    this.document.markContent('Artifact', { type: 'Pagination', attached: ['Top'] });
    // Whose the sheet is comes first; the title has what is left of the line.
    const subject = this.fitting(this.words.subject, bold, 350);
    const title = this.fitting(this.words.title, bold, SHEET.right - SHEET.left - subject.width - 12);
    this.text([{ line: title, x: SHEET.left, y: SHEET.top + 8, size: 8, grey: 0.3 }]);
    this.text([{ line: subject, x: SHEET.right - subject.width, y: SHEET.top + 8, size: 8 }]);
    this.document.endMarkedContent();
    this.rule(SHEET.left, SHEET.top + 15, SHEET.right, SHEET.top + 15, { grey: 0.4 });
    this.document.markContent('Artifact', { type: 'Pagination', attached: ['Bottom'] });
    const y = SHEET.bodyBottom + 26;
    this.rule(SHEET.left, y - 13, SHEET.right, y - 13, { grey: 0.4 });
    this.text([{ line: this.fitting(this.words.foot, regular, 430), x: SHEET.left, y, size: 8, grey: 0.3 }]);
    const number = line(`Page ${this.count} of`, figures);
    const x = SHEET.right - 22;
    this.text([{ line: number, x: x - number.width - 3, y, size: 8, grey: 0.3 }]);
    (this.document.page as unknown as { xobjects: Record<string, unknown> }).xobjects['Total'] =
      this.totalForm;
    this.document.addContent(
      `q 1 0 0 -1 0 ${SHEET.height} cm 1 0 0 1 ${points(x)} ${points(SHEET.height - y)} cm /Total Do Q`,
    );
    this.document.endMarkedContent();
  }

  // Heads and feet repeat what the first sheet tells in full, so there alone a text may be shortened.
  private fitting(text: string, [face, behind]: Faces['bold'], width: number): WrappedLine {
    const usable = [...text].every((character) => face.covers(character)) ? face : behind;
    let shown = text;
    while (usable.width(shown, 8) > width) shown = `${[...shown].slice(0, -2).join('')}…`;
    return { runs: [{ face: usable, text: shown }], width: usable.width(shown, 8) };
  }
}

function points(value: number): string {
  return String(Math.round(value * 100) / 100);
}
