import type { Face } from './faces.js';
import { type Run, runsOf } from './faces.js';

/** A line of text that fits its width, in the runs it is shown by. */
export interface WrappedLine {
  readonly runs: readonly Run[];
  readonly width: number;
}

/** How a text is set. */
export interface Setting {
  readonly faces: readonly [Face, Face];
  readonly size: number;
}

/**
 * Breaks a text into lines no wider than `width`: at spaces, and inside a word only when it is wider than a line.
 * Nothing is cut off; characters that would act on the page instead of standing on it become spaces. Total.
 */
export function wrap(text: string, width: number, setting: Setting): WrappedLine[] {
  const lines: WrappedLine[] = [];
  let line = '';
  const push = (): void => {
    if (line !== '') lines.push(lineOf(line, setting));
    line = '';
  };
  for (const word of cleaned(text).split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (widthOf(longer, setting) <= width) {
      line = longer;
      continue;
    }
    push();
    for (const piece of piecesOf(word, width, setting)) {
      push();
      line = piece;
    }
  }
  push();
  return lines;
}

function cleaned(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[\p{Cc}\p{Cf}\s]+/gu, ' ')
    .trim();
}

function widthOf(text: string, { faces, size }: Setting): number {
  return runsOf(text, faces).reduce((sum, run) => sum + run.face.width(run.text, size), 0);
}

function lineOf(text: string, setting: Setting): WrappedLine {
  return { runs: runsOf(text, setting.faces), width: widthOf(text, setting) };
}

function piecesOf(word: string, width: number, setting: Setting): string[] {
  if (widthOf(word, setting) <= width) return [word];
  const pieces = [''];
  for (const character of word) {
    const last = pieces.at(-1) ?? '';
    if (last !== '' && widthOf(last + character, setting) > width) pieces.push(character);
    else pieces[pieces.length - 1] = last + character;
  }
  return pieces;
}
