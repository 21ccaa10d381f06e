import { describe, expect, it } from 'vitest';
import { makePdf } from '../../../src/main/paper/makePdf.ts';
import { given } from '../../../src/shared/measure/traced.ts';
import type { Block } from '../../../src/shared/writing/book.ts';
import { halfSquare } from './fixtures/figures.ts';
import { smallBook } from './fixtures/smallBook.ts';
import { openPdf, type PathBox } from './readPdf.ts';

/** 1 in = 72 pt (ISO 32000-1, 8.3.2.3). */
const INCH = 72;
/** Two thousandths of an inch. */
const CLOSE = 0.002;

async function pathsOf(block: Block, paper: 'letter' | 'a4'): Promise<readonly PathBox[]> {
  const pdf = await openPdf(await makePdf(smallBook([block]), { paper, plainInk: false, draft: false }));
  const { paths } = pdf.pages[0] ?? { paths: [] };
  await pdf.close();
  return paths;
}

function hasSquare(paths: readonly PathBox[], inches: number): boolean {
  const close = (points: number) => Math.abs(points / INCH - inches) <= CLOSE;
  return paths.some((path) => close(path.width) && close(path.height));
}

describe.each(['letter', 'a4'] as const)('lengths printed on %s', (paper) => {
  it.each([1, 2, 6])('a test square of %i inches measures that, to two thousandths', async (inches) => {
    expect(hasSquare(await pathsOf({ kind: 'test-square', side: given(inches, 'side') }, paper), inches)).toBe(true);
  });

  it('a figure of true size is its true size', async () => {
    const figures = [{ figure: halfSquare(4.375), scale: 1 }];
    expect(hasSquare(await pathsOf({ kind: 'figures', figures, sameScale: true }, paper), 4.375)).toBe(true);
    expect(
      hasSquare(
        await pathsOf({ kind: 'steps', firstNumber: 1, steps: [{ words: [['Trace it.']], figures }] }, paper),
        4.375,
      ),
    ).toBe(true);
  });

  it('a figure at a quarter inch to the inch is that', async () => {
    const figures = [
      { figure: halfSquare(8), scale: 0.25 },
      { figure: halfSquare(4), scale: 0.25 },
    ];
    const paths = await pathsOf({ kind: 'figures', figures, sameScale: false }, paper);
    expect(hasSquare(paths, 2)).toBe(true);
    expect(hasSquare(paths, 1)).toBe(true);
  });
});
