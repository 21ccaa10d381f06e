import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nest, type Way } from '../../../src/main/paper/pieces/nest.ts';
import type { Point } from '../../../src/shared/drawing/turn.ts';

const point = (x: number, y: number): Point => ({ x, y });
const box = (width: number, height: number): Way => ({
  width,
  height,
  solids: [[point(0, 0), point(width, 0), point(width, height), point(0, height)]],
});
/** Half a square, its square corner at the top left or at the bottom right. */
const half = (side: number): readonly Way[] => [
  { width: side, height: side, solids: [[point(0, 0), point(side, 0), point(0, side)]] },
  { width: side, height: side, solids: [[point(side, side), point(0, side), point(side, 0)]] },
];
const table = { width: 540, height: () => 580, gap: 12 };

describe('things laid out on pages', () => {
  it('two right triangles lie head to tail where two squares would not', () => {
    expect(nest([half(400), half(400)], table).map(({ page }) => page)).toEqual([0, 0]);
    expect(nest([[box(400, 400)], [box(400, 400)]], table).map(({ page }) => page)).toEqual([0, 1]);
  });

  it('are all there, on the page, and none lies on another', () => {
    const size = fc.integer({ min: 20, max: 500 });
    fc.assert(
      fc.property(fc.array(fc.tuple(size, size), { minLength: 1, maxLength: 14 }), (sizes) => {
        const spots = nest(
          sizes.map(([width, height]) => [box(width, height)]),
          table,
        );
        expect(spots.map(({ thing }) => thing)).toEqual(sizes.map((_, i) => i));
        const laid = spots.map((spot, i) => ({ ...spot, width: sizes[i]?.[0] ?? 0, height: sizes[i]?.[1] ?? 0 }));
        for (const [i, a] of laid.entries()) {
          expect(a.x >= 0 && a.y >= 0 && a.x + a.width <= table.width && a.y + a.height <= 580).toBe(true);
          for (const b of laid.slice(i + 1)) {
            const apart =
              a.page !== b.page ||
              a.x + a.width <= b.x ||
              b.x + b.width <= a.x ||
              a.y + a.height <= b.y ||
              b.y + b.height <= a.y;
            expect(apart).toBe(true);
          }
        }
      }),
      { numRuns: 40 },
    );
  });

  it('that do not fit on a low first page go on the next, and what is larger than a page has one of its own', () => {
    const low = { ...table, height: (page: number) => (page === 0 ? 100 : 580) };
    expect(nest([[box(200, 300)], [box(90, 90)]], low).map(({ page }) => page)).toEqual([1, 0]);
    expect(nest([[box(200, 900)], [box(200, 900)]], table).map(({ page }) => page)).toEqual([1, 2]);
  });
});
