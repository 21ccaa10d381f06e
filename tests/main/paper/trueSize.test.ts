import { describe, expect, it } from 'vitest';
import { makePdf } from '../../../src/main/paper/makePdf.ts';
import { given } from '../../../src/shared/measure/traced.ts';
import type { Block, CaptionedFigure } from '../../../src/shared/writing/book.ts';
import { halfSquare } from './fixtures/figures.ts';
import { smallBook } from './fixtures/smallBook.ts';
import { openPdf, type PathBox } from './readPdf.ts';

/** 1 in = 72 pt (ISO 32000-1, 8.3.2.3); a drawn length is right to two thousandths of an inch. */
const INCH = 72;
const CLOSE = 0.002;

const figure = (size: number): CaptionedFigure => ({
  figure: halfSquare(size),
  scale: 1,
  caption: [`Piece of ${size}`],
});
const block = (figures: readonly CaptionedFigure[]): Block => ({
  kind: 'true-size',
  words: ['Cut on the outer line.'],
  side: given(1, 'test square'),
  figures,
});

const hasSquare = (paths: readonly PathBox[], inches: number) =>
  paths.some(({ width, height }) => [width, height].every((side) => Math.abs(side / INCH - inches) <= CLOSE));

async function pagesOf(blocks: readonly Block[], paper: 'letter' | 'a4') {
  const pdf = await openPdf(await makePdf(smallBook(blocks), { paper, plainInk: false, draft: false }));
  const pages = pdf.pages.map(({ paths, text }) => ({ paths, text }));
  await pdf.close();
  return pages;
}

describe.each(['letter', 'a4'] as const)('templates on %s', (paper) => {
  it('are their true size, and every page of them has the square to be measured', async () => {
    const sizes = [2.5, 4, 6.25, 3, 5, 1.5, 4.5];
    const pages = await pagesOf([block(sizes.map(figure))], paper);
    expect(pages.length).toBeGreaterThan(1);
    for (const { paths } of pages) expect(hasSquare(paths, 1)).toBe(true);
    for (const size of sizes) expect(pages.some(({ paths }) => hasSquare(paths, size))).toBe(true);
  });

  it('larger than the page are split over sheets that say so, each with the square', async () => {
    const pages = await pagesOf([block([figure(12)])], paper);
    const sheets = pages.filter(({ text }) => /Sheet \d of \d/.test(text));
    expect(sheets.length).toBeGreaterThanOrEqual(2);
    for (const { paths } of sheets) expect(hasSquare(paths, 1)).toBe(true);
  });

  it('begin a page of their own after others', async () => {
    const pages = await pagesOf([block([figure(2)]), block([figure(3)])], paper);
    expect(pages).toHaveLength(2);
    for (const { paths } of pages) expect(hasSquare(paths, 1)).toBe(true);
  });
});
