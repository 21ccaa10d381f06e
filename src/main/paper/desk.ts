import type { Book, Words } from '../../shared/writing/book.ts';
import type { PdfDocument } from './engine/library.ts';
import { type Align, type Run, setText, type TextBox, widthOf } from './engine/setText.ts';
import type { Palette } from './palette.ts';
import type { Sheet } from './sheet.ts';
import type { Style } from './type.ts';
import { runsOf } from './words.ts';

/** What every piece of a book is made with. */
export interface Desk {
  readonly book: Book;
  readonly document: PdfDocument;
  readonly sheet: Sheet;
  readonly palette: Palette;
  readonly plainInk: boolean;
  /** Small photographs of fabrics, JPEG, by fabric. */
  readonly swatches: ReadonlyMap<string, Uint8Array>;
}

/** A sentence set in a style to a width. */
export function setWords(desk: Desk, words: Words, style: Style, width: number, align: Align = 'left'): TextBox {
  return setRuns(desk, runsOf(words, style), width, align);
}

/** Runs of text set to a width. */
export function setRuns(desk: Desk, runs: readonly Run[], width: number, align: Align = 'left'): TextBox {
  return setText(desk.document, desk.palette, runs, width, align);
}

/** The widest part of a sentence that cannot be broken. */
export function narrowest(desk: Desk, words: Words, style: Style): number {
  const parts = runsOf(words, style).flatMap((run) => (run.whole ? [run] : splitRun(run)));
  return Math.max(0, ...parts.map((part) => widthOf(desk.document, part.text, part.style)));
}

/** The width of a sentence on one line. */
export function natural(desk: Desk, words: Words, style: Style): number {
  return runsOf(words, style).reduce((sum, run) => sum + widthOf(desk.document, run.text, run.style), 0);
}

function splitRun(run: Run): Run[] {
  return run.text.split(/[ \n]/u).map((text) => ({ ...run, text }));
}
