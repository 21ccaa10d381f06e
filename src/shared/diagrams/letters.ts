import type { Box } from '../drawing/turn.ts';
import type { Letter } from './figure.ts';
import { LETTERS, RIM } from './weights.ts';

/** Cap height of the figure letters over their size, as in the font's own tables (Source Sans 3: 660 of 1000). */
const CAP_HEIGHT = 0.66;

/** Widths over the size, near enough to clear cloth behind a letter; text is never fitted by them. */
const NARROW = /[ ,.:·'’″′|ilI1]/;
const WIDE = /[MWmw×—]/;

/** How wide a letter's text comes out, in points, nearly. */
function textWidth(text: string, size: number): number {
  return [...text].reduce((width, glyph) => width + size * glyphWidth(glyph), 0);
}

function glyphWidth(glyph: string): number {
  if (/[½¼¾⅛⅜⅝⅞⅓⅔]/.test(glyph)) return 0.82;
  if (NARROW.test(glyph)) return glyph === '1' ? 0.5 : 0.3;
  if (WIDE.test(glyph)) return glyph === '×' ? 0.5 : 0.86;
  return /[A-Z]/.test(glyph) ? 0.6 : 0.51;
}

/** A letter as drawn, in points: the text's anchor on its baseline and the bare patch of sheet behind it. */
export interface LetterShape {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly clear: Box;
}

const START = { start: 0, middle: -0.5, end: -1 } as const;

/** Where a letter stands so that its capitals are centred on its spot, whichever way it reads. */
export function letterShape(letter: Letter, pointsPerInch: number): LetterShape {
  const { size } = LETTERS[letter.style];
  const x = letter.at.x * pointsPerInch;
  const y = letter.at.y * pointsPerInch;
  const drop = (CAP_HEIGHT * size) / 2;
  const width = textWidth(letter.text, size) + 2 * RIM;
  const height = size * (CAP_HEIGHT + 0.1) + 2 * RIM;
  const shift = width * START[letter.align] + (letter.align === 'start' ? -RIM : letter.align === 'end' ? RIM : 0);
  const clear = letter.upright
    ? { x: x - height / 2, y: y - shift - width, width: height, height: width }
    : { x: x + shift, y: y - height / 2, width, height };
  return letter.upright ? { x: x + drop, y, size, clear } : { x, y: y + drop, size, clear };
}
