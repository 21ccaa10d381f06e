import { describe, expect, it } from 'vitest';
import { pathOperators } from '../../../src/main/paper/engine/pathOperators.ts';
import { figureToSvg } from '../../../src/main/paper/figurePen.ts';
import { makePdf } from '../../../src/main/paper/makePdf.ts';
import type { Figure } from '../../../src/shared/diagrams/figure.ts';
import { fourPatch, geese, halfSquare, INKS, pairSewn, quilt } from './fixtures/figures.ts';
import { smallBook } from './fixtures/smallBook.ts';
import { openPdf, type PathBox } from './readPdf.ts';

const SCALE = 0.75;
const FIGURES: readonly (readonly [string, Figure])[] = [
  ['a pressed half-square triangle', halfSquare(4.5, true)],
  ['a sewn pair', pairSewn(4.875)],
  ['a four-patch with letters', fourPatch(3.8125)],
  ['flying geese', geese(4)],
  ['a small quilt', quilt(1, 1, 4, [0.5])],
];

/** Width and height of each path, in points to the hundredth, in an order of their own. */
function sizes(boxes: readonly Pick<PathBox, 'width' | 'height'>[]): string[] {
  return boxes.map(({ width, height }) => `${width.toFixed(2)} × ${height.toFixed(2)}`).sort();
}

/** The box of SVG path data of M, L, H, V and Z. */
function boxOf(data: string): { width: number; height: number } {
  const [xs, ys]: [number[], number[]] = [[], []];
  for (const [, command, numbers = ''] of data.matchAll(/([MLHV])([^MLHVZ]*)/gu)) {
    const [first = 0, second = 0] = numbers.trim().split(/[ ,]+/u).map(Number);
    if (command !== 'V') xs.push(first);
    if (command === 'V') ys.push(first);
    else if (command !== 'H') ys.push(second);
  }
  return { width: Math.max(...xs) - Math.min(...xs), height: Math.max(...ys) - Math.min(...ys) };
}

describe('a figure on the page and the same figure as SVG', () => {
  it.each(FIGURES)('have the same lengths: %s', async (_, figure) => {
    const svg = figureToSvg(figure, { scale: SCALE, inks: INKS, plainInk: true, letterFont: 'Source Sans 3' });
    const wanted = sizes([...svg.matchAll(/ d="([^"]+)"/gu)].map(([, data = '']) => boxOf(data)));
    const block = { kind: 'figures', sameScale: true, figures: [{ figure, scale: SCALE }] } as const;
    const pdf = await openPdf(await makePdf(smallBook([block]), { paper: 'letter', plainInk: true, draft: false }));
    const drawn = sizes(pdf.pages[0]?.paths ?? []);
    // Besides the figure the page has only the stitches beside its title.
    expect(drawn.filter((size) => size !== '26.00 × 0.00')).toEqual(wanted);
    await pdf.close();
  });
});

describe('path data as PDF operators', () => {
  it('says the point before the command, and level and upright lines in full', () => {
    expect(pathOperators('M1 2H3V4L5.5 -6Z')).toBe('1 2 m 3 2 l 3 4 l 5.5 -6 l h ');
  });

  it('begins each outline anew', () => {
    expect(pathOperators('M0 0H1ZM2 3V4Z')).toBe('0 0 m 1 0 l h 2 3 m 2 4 l h ');
  });

  it('is nothing for nothing', () => {
    expect(pathOperators('')).toBe('');
  });
});
