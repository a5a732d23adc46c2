import { createRequire } from 'node:module';

/** What is used of an embedded font of pdfkit beyond its typed interface. */
interface EmbeddedFont {
  readonly id: string;
  readonly font: { hasGlyphForCodePoint(point: number): boolean };
  encode(text: string, features?: readonly string[]): [string[], { advanceWidth: number }[]];
  ref(): unknown;
}

interface Glyph {
  readonly hex: string;
  readonly width: number;
}

/**
 * A font of the document, written character by character from a table that grows to the characters used and no
 * further: laying out each word anew would cost seconds, and keeping every word laid out would grow with the document.
 */
export class Face {
  private readonly glyphs = new Map<string, Glyph>();
  private readonly covered = new Map<string, boolean>();

  private constructor(
    private readonly font: EmbeddedFont,
    private readonly features: readonly string[],
  ) {}

  /** Embeds the font file under a name; `evenDigits` gives all digits one width, for columns of figures. */
  static embed(
    document: PDFKit.PDFDocument,
    file: string,
    { evenDigits }: { readonly evenDigits: boolean },
  ): Face {
    document.font(file);
    const { _font: font } = document as unknown as { readonly _font: EmbeddedFont };
    return new Face(font, evenDigits ? ['tnum'] : []);
  }

  /** The name of the font in a page's resources, put there when it is missing. */
  on(page: { fonts: Record<string, unknown> }): string {
    page.fonts[this.font.id] ??= this.font.ref();
    return this.font.id;
  }

  /** The font as a dictionary of resources. */
  resources(): Record<string, unknown> {
    return { [this.font.id]: this.font.ref() };
  }

  covers(character: string): boolean {
    let covered = this.covered.get(character);
    if (covered === undefined) {
      covered = this.font.font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0);
      this.covered.set(character, covered);
    }
    return covered;
  }

  /** The width of a text at a size, in points. */
  width(text: string, size: number): number {
    let width = 0;
    for (const character of text) width += this.glyph(character).width;
    return (width * size) / 1000;
  }

  /** The text as the hexadecimal string a content stream shows. */
  encode(text: string): string {
    let hex = '';
    for (const character of text) hex += this.glyph(character).hex;
    return hex;
  }

  private glyph(character: string): Glyph {
    let glyph = this.glyphs.get(character);
    if (glyph === undefined) {
      const [hex, positions] = this.font.encode(character, this.features);
      glyph = {
        hex: hex.join(''),
        width: positions.reduce((sum, position) => sum + position.advanceWidth, 0),
      };
      this.glyphs.set(character, glyph);
    }
    return glyph;
  }
}

/** The faces of a document: each weight with one behind it for scripts the first does not have. */
export interface Faces {
  readonly regular: readonly [Face, Face];
  readonly bold: readonly [Face, Face];
  readonly figures: readonly [Face, Face];
}

const resolve = createRequire(import.meta.url).resolve;
const NEXT = '@expo-google-fonts/atkinson-hyperlegible-next';

/** The font file a document begins with. */
export const regularFile = (): string =>
  resolve(`${NEXT}/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf`);

/** Embeds the faces; only the glyphs used go into the file. */
export function embedFaces(document: PDFKit.PDFDocument): Faces {
  const behind = Face.embed(document, resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'), { evenDigits: false });
  const behindBold = Face.embed(document, resolve('dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf'), {
    evenDigits: false,
  });
  const bold = Face.embed(document, resolve(`${NEXT}/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf`), {
    evenDigits: false,
  });
  return {
    regular: [Face.embed(document, regularFile(), { evenDigits: false }), behind],
    figures: [Face.embed(document, regularFile(), { evenDigits: true }), behind],
    bold: [bold, behindBold],
  };
}

/** A piece of text in one face. */
export interface Run {
  readonly face: Face;
  readonly text: string;
}

/** Splits a text by what each face can show; what none can is written as its number, so that nothing is lost. Total. */
export function runsOf(text: string, [first, behind]: readonly [Face, Face]): Run[] {
  const runs: { face: Face; text: string }[] = [];
  for (const character of text) {
    const face = first.covers(character) ? first : behind.covers(character) ? behind : null;
    const shown = face === null ? `[${codeOf(character)}]` : character;
    const last = runs.at(-1);
    if (last !== undefined && last.face === (face ?? first)) last.text += shown;
    else runs.push({ face: face ?? first, text: shown });
  }
  return runs;
}

function codeOf(character: string): string {
  return `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}
