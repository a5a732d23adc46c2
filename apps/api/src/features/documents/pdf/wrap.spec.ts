import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import PDFDocument from 'pdfkit';
import { embedFaces, regularFile } from './faces.js';
import { wrap } from './wrap.js';

const faces = embedFaces(new PDFDocument({ font: regularFile(), autoFirstPage: false }));
const setting = { faces: faces.regular, size: 8 };
const shown = (text: string, width: number): string[] =>
  wrap(text, width, setting).map((line) => line.runs.map((run) => run.text).join(''));
const squeezed = (text: string): string => text.replace(/\s+/g, '');

describe('wrap', () => {
  it('loses no character of any text, however narrow the column', () => {
    const letters = fc.constantFrom(...'abcXYZ 019-–.,;:()/ÅéłŽΩДב☑→"’ ');
    fc.assert(
      fc.property(
        fc.array(letters, { maxLength: 300 }),
        fc.integer({ min: 20, max: 300 }),
        (characters, width) => {
          const text = characters.join('');
          expect(squeezed(shown(text, width).join(' '))).toBe(squeezed(text));
        },
      ),
    );
  });

  it('makes no line wider than the column', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), fc.integer({ min: 60, max: 300 }), (text, width) => {
        for (const line of wrap(text, width, setting)) expect(line.width).toBeLessThanOrEqual(width);
      }),
    );
  });

  it('breaks inside a word only when the word is wider than a line', () => {
    expect(shown('one two', 1000)).toEqual(['one two']);
    expect(shown(`short ${'w'.repeat(60)} end`, 100)[0]).toBe('short');
    expect(shown('w'.repeat(60), 100).join('')).toBe('w'.repeat(60));
  });

  it('writes a character that no font has by its number', () => {
    expect(shown('北 1', 300)).toEqual(['[U+5317] 1']);
  });

  it('lets no character act on the page', () => {
    expect(shown('a\u0007b\u202ec\n\nd', 300)).toEqual(['a b c d']);
  });
});
