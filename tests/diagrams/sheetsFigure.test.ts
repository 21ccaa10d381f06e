import { describe, expect, it } from 'vitest';
import { letterOf } from '../../src/shared/diagrams/cuttingFigure.ts';
import { sheetsFigure } from '../../src/shared/diagrams/sheetsFigure.ts';

const sheet = { width: 18, height: 21 };
// By hand: an 18-inch strip 5 high gives three 5-inch squares; along the 21-inch side one gives four.
const squares = (count: number) => [{ height: 5, times: 2, pieces: [{ letter: 'C', width: 5, height: 5, count }] }];

describe('how sheets are cut', () => {
  it('draws each different sheet once, its pieces lying inside it', () => {
    const plans = [
      { times: 3, lengthwise: false, strips: squares(3) },
      { times: 1, lengthwise: true, strips: squares(4) },
    ];
    const figure = sheetsFigure('sand', sheet, plans);
    const pieces = figure.marks.flatMap((mark) => (mark.kind === 'area' && letterOf(mark.of ?? null) ? [mark] : []));
    expect(pieces.map(({ outlines }) => outlines.length)).toEqual([3, 3, 4, 4]);
    const sheets = figure.marks.filter((mark) => mark.kind === 'line' && mark.pen === 'unit');
    expect(sheets).toHaveLength(2);
    for (const { outlines } of pieces)
      for (const { x, y } of outlines.flat()) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(figure.width);
        expect(y).toBeLessThanOrEqual(figure.height);
      }
    expect(figure.alt).toBe('How the sheets are cut: 2 kinds of sheet, 18″ by 21″.');
  });

  it('lets the pieces of one letter stand out', () => {
    const plans = [{ times: 1, lengthwise: false, strips: squares(3) }];
    const tones = (lit: ReadonlySet<string>) =>
      sheetsFigure('sand', sheet, plans, lit).marks.flatMap((mark) =>
        mark.kind === 'area' && mark.of !== undefined ? [mark.tone] : [],
      );
    expect(new Set(tones(new Set(['C'])))).toEqual(new Set(['full']));
    expect(new Set(tones(new Set(['B'])))).toEqual(new Set(['pale']));
  });
});
