import type { Paper } from '../../shared/contract.ts';
import type { Book } from '../../shared/writing/book.ts';
import type { Desk } from './desk.ts';
import { drawPage, startDrawing } from './drawPages.ts';
import { closeDocument, openDocument } from './engine/openDocument.ts';
import { type Page, paginate } from './flow/paginate.ts';
import { assertWhole, Drawn } from './guard.ts';
import { paletteFor } from './palette.ts';
import { sectionPieces } from './pieces/bookPieces.ts';
import { sheetFor } from './sheet.ts';
import { breather } from './stopped.ts';

/** How a book is to be printed. */
export interface PdfOptions {
  readonly paper: Paper;
  /** Black and white: hatches instead of colours. */
  readonly plainInk: boolean;
  /** Small photographs of fabrics, JPEG three by two, by fabric; any other is shown by its colour. */
  readonly swatches?: ReadonlyMap<string, Uint8Array>;
  /** Says on every page that it does not fit yet. */
  readonly draft: boolean;
}

/** Hears how far the making is, 0 to 1, and what is being done. */
type OnProgress = (progress: number, doing: string) => void;

export interface Making {
  readonly onProgress?: OnProgress;
  readonly signal?: AbortSignal;
}

/** Setting the text and laying out figures takes about half of the time, drawing the rest. */
const SET = 0.5;

/**
 * A book as a print-ready PDF. The same book and options give the same bytes: nothing is read from the clock.
 * @throws Refused `stopped` when the signal stops it; `bad-input` when a letter has no picture in the fonts or a figure of
 * true size is larger than the page
 */
export async function makePdf(book: Book, options: PdfOptions & Making): Promise<Uint8Array> {
  const breathe = breather(options.signal);
  await breathe();
  const desk: Desk = {
    book,
    document: openDocument(book),
    sheet: sheetFor(options.paper),
    palette: paletteFor(options.plainInk),
    plainInk: options.plainInk,
    swatches: options.plainInk ? new Map() : (options.swatches ?? new Map()),
  };
  const pages = await setPages(desk, options, breathe);
  await drawPages(desk, pages, options, breathe);
  return closeDocument(desk.document);
}

async function setPages(desk: Desk, { onProgress }: Making, breathe: () => Promise<void>): Promise<readonly Page[]> {
  const { sections } = desk.book;
  const pieces = [];
  for (const [index, section] of sections.entries()) {
    onProgress?.((SET * index) / sections.length, `Setting “${section.title}”`);
    await breathe();
    pieces.push(...sectionPieces(desk, section));
  }
  return paginate(pieces, desk.sheet.frameHeight);
}

async function drawPages(
  desk: Desk,
  pages: readonly Page[],
  { onProgress, draft }: PdfOptions & Making,
  breathe: () => Promise<void>,
): Promise<void> {
  const drawn = new Drawn();
  const drawing = startDrawing(desk, drawn);
  for (const [index, page] of pages.entries()) {
    onProgress?.(SET + ((1 - SET) * index) / pages.length, `Drawing page ${index + 1} of ${pages.length}`);
    await breathe();
    drawPage(drawing, page, index + 1, pages.length, draft);
  }
  assertWhole(desk.book, drawn);
  onProgress?.(1, 'Finished');
}
