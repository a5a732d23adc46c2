import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A page's text in the order of its content, white space normalised, and the tags its content is under. */
export interface PdfPage {
  readonly text: string;
  readonly roles: readonly string[];
}

/** What a PDF document shows and says of itself. */
export interface PdfText {
  readonly pages: readonly PdfPage[];
  readonly title: string;
  readonly language: string;
  readonly tagged: boolean;
}

interface TagNode {
  readonly role?: string;
  readonly children?: readonly TagNode[];
}

/** Reads a PDF with a reader that shares nothing with what wrote it. */
export async function readPdf(bytes: Uint8Array): Promise<PdfText> {
  const loading = getDocument({ data: new Uint8Array(bytes), useSystemFonts: true, verbosity: 0 });
  const document = await loading.promise;
  const pages: PdfPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const { items } = await page.getTextContent();
    const words = items.map((item) => ('str' in item ? item.str : '')).join(' ');
    pages.push({
      text: words.replace(/\s+/g, ' ').trim(),
      roles: rolesOf((await page.getStructTree()) as TagNode | null),
    });
  }
  const { info } = await document.getMetadata();
  const told = info as { Title?: string; Language?: string };
  const marks = await document.getMarkInfo();
  await loading.destroy();
  return { pages, title: told.Title ?? '', language: told.Language ?? '', tagged: marks?.Marked === true };
}

function rolesOf(node: TagNode | null): string[] {
  if (node === null) return [];
  return [...(node.role === undefined ? [] : [node.role]), ...(node.children ?? []).flatMap(rolesOf)];
}
