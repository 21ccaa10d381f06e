import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrange, type Cell } from '../../../src/main/paper/flow/arrange.ts';

const GAPS = { gap: 20, rowGap: 16 };
const ROOM = { width: 480, height: 400, each: 140 };

function cell(width: number, height = width, more: Partial<Cell> = {}): Cell {
  return { width, height, least: 0, caption: 0, exactly: null, ...more };
}

function perRow(cells: readonly Cell[], room = ROOM): number[] {
  return arrange(cells, room, GAPS, 72).rows.map((row) => row.length);
}

describe('figures in rows', () => {
  it('stand in one row when that shows them nearly as large', () => {
    expect(perRow([cell(4), cell(4), cell(4)])).toEqual([3]);
  });

  it('stand in even rows when one row would make them small', () => {
    expect(perRow(Array.from({ length: 6 }, () => cell(8)))).toEqual([3, 3]);
    expect(perRow(Array.from({ length: 5 }, () => cell(8)))).toEqual([3, 2]);
  });

  it('are never larger than life', () => {
    expect(arrange([cell(1)], ROOM, GAPS, 72).scale).toBe(72);
  });

  it('of true size stand one above the other rather than over the edge', () => {
    const templates = [cell(2.5, 2.5, { exactly: 72 }), cell(3, 3, { exactly: 72 })];
    expect(perRow(templates, { ...ROOM, width: 234, height: 190 })).toEqual([1, 1]);
  });

  it('keep their number and order, and fit the width', () => {
    const side = fc.double({ min: 0.5, max: 120, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(side, side), { minLength: 1, maxLength: 12 }), (sizes) => {
        const cells = sizes.map(([width, height]) => cell(width, height));
        const { rows, scale } = arrange(cells, ROOM, GAPS, 72);
        expect(rows.flat()).toEqual(cells);
        for (const row of rows) {
          const width = row.reduce((sum, one) => sum + one.width * scale, 0) + GAPS.gap * (row.length - 1);
          expect(width).toBeLessThanOrEqual(ROOM.width + 1e-6);
        }
      }),
    );
  });
});
