import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Figure, Letter, Line } from '../../src/shared/diagrams/figure.ts';
import { foundationFigure } from '../../src/shared/diagrams/foundationFigure.ts';
import { inSheets } from '../../src/shared/diagrams/inSheets.ts';
import { templateFigure } from '../../src/shared/diagrams/templateFigure.ts';
import type { Method, MethodPlan } from '../../src/shared/piecing/method.ts';
import { methodNamed } from '../../src/shared/piecing/methods/index.ts';
import { geese, QUARTER, quarterCircle, slicedUnits } from '../piecing/someUnits.ts';

const plan = (id: string, unit: Parameters<Method['plan']>[0], grid = 1): MethodPlan =>
  (methodNamed(id) as Method).plan(unit, { grid, ...QUARTER });

const lines = (figure: Figure, pen: Line['pen']) =>
  figure.marks.filter((mark): mark is Line => mark.kind === 'line' && mark.pen === pen);
const letters = (figure: Figure) => figure.marks.filter((mark): mark is Letter => mark.kind === 'letter');

describe('a template as it is printed', () => {
  const [quarter] = plan('quarter-circle', quarterCircle(4, 3)).templates ?? [];
  if (quarter === undefined) throw new Error('A quarter circle has templates');
  const figure = templateFigure(quarter, 'C');

  it('is as large as the piece with its seam allowance, and shows cutting line, seam, notches, grain and name', () => {
    expect(figure.width).toBeCloseTo(3.5, 3);
    expect(figure.height).toBeCloseTo(3.5, 3);
    expect(lines(figure, 'unit')).toHaveLength(2);
    expect(lines(figure, 'sew')).toHaveLength(1);
    expect(figure.marks.filter(({ kind }) => kind === 'arrow')).toHaveLength(1);
    expect(letters(figure).map(({ text }) => text)).toEqual(['C']);
  });
});

describe('a paper as it is printed', () => {
  it('is the mirror image of the unit, its areas numbered in sewing order', () => {
    const [paper] = plan('foundation', geese(2)).foundations ?? [];
    if (paper === undefined) throw new Error('Geese are sewn on paper');
    const figure = foundationFigure(paper);
    expect(figure.width).toBeCloseTo(4.5, 9);
    expect(figure.height).toBeCloseTo(2.5, 9);
    expect(letters(figure).map(({ text }) => text)).toEqual(['1', '2', '3']);
    const middle = (corners: readonly { x: number }[]) => corners.reduce((sum, { x }) => sum + x, 0) / corners.length;
    paper.areas.slice(1).forEach(({ corners, name }) => {
      const onLeft = middle(corners) < 2;
      const at = letters(figure).find(({ text }) => text === name)?.at.x ?? 0;
      expect(at > 2.25).toBe(onLeft);
    });
  });
});

describe('a figure larger than the page', () => {
  const room = { width: 7, height: 8 };
  const large = fc.double({ min: 1.4, max: 5, noNaN: true });

  it('is one sheet, itself, when it fits', () => {
    const [paper] = plan('foundation', geese(2)).foundations ?? [];
    if (paper === undefined) throw new Error('Geese are sewn on paper');
    const figure = foundationFigure(paper);
    expect(inSheets(figure, room)).toEqual([{ figure, column: 0, row: 0 }]);
  });

  it('is split over sheets that fit, and everything on it is on one of them at its place', () => {
    fc.assert(
      fc.property(slicedUnits, large, (unit, grid) => {
        const found = plan('foundation', unit, grid).foundations?.[0];
        if (found === undefined) return;
        const figure = foundationFigure(found);
        const sheets = inSheets(figure, room);
        const columns = Math.max(...sheets.map(({ column }) => column)) + 1;
        const rows = Math.max(...sheets.map(({ row }) => row)) + 1;
        const corner = ({ column, row }: (typeof sheets)[number]) => ({
          x: (figure.width * column) / columns,
          y: (figure.height * row) / rows,
        });
        for (const sheet of sheets) {
          expect(sheet.figure.width).toBeLessThanOrEqual(room.width + 1e-9);
          expect(sheet.figure.height).toBeLessThanOrEqual(room.height + 1e-9);
        }
        if (columns * rows !== sheets.length) return;
        for (const { points } of lines(figure, 'unit')) {
          for (const point of points) {
            const there = sheets.some((sheet) => {
              const { x, y } = corner(sheet);
              return lines(sheet.figure, 'unit').some((line) =>
                line.points.some((one) => Math.hypot(one.x + x - point.x, one.y + y - point.y) < 1e-6),
              );
            });
            expect(there).toBe(true);
          }
        }
      }),
      { numRuns: 40 },
    );
  });

  it('has crosses at each join that meet when the sheets are laid together', () => {
    const [, cut] = plan('quarter-circle', quarterCircle(12, 9)).templates ?? [];
    if (cut === undefined) throw new Error('A quarter circle has templates');
    const figure = templateFigure(cut, 'D');
    const sheets = inSheets(figure, room);
    expect(sheets.length).toBeGreaterThan(1);
    const crosses = new Map<string, string[]>();
    for (const { figure: sheet, column, row } of sheets) {
      const [x, y] = [(figure.width * column) / 2, (figure.height * row) / 2];
      for (const { text, at, style } of letters(sheet)) {
        if (style !== 'measure') continue;
        crosses.set(text, [...(crosses.get(text) ?? []), `${(at.x + x).toFixed(3)} ${(at.y + y).toFixed(3)}`]);
      }
    }
    expect(crosses.size).toBeGreaterThan(1);
    for (const places of crosses.values()) expect(places.length).toBeGreaterThan(1);
  });
});
