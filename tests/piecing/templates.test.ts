import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildDrawing } from '../../src/shared/drawing/build.ts';
import { flatCorners } from '../../src/shared/drawing/curve.ts';
import { doubleArea } from '../../src/shared/drawing/drawing.ts';
import { ALL_TURNS, type Point, turnPoint } from '../../src/shared/drawing/turn.ts';
import { allowanceRound } from '../../src/shared/piecing/allowance/allowance.ts';
import type { Method } from '../../src/shared/piecing/method.ts';
import { methodNamed } from '../../src/shared/piecing/methods/index.ts';
import { loosePatchesOf } from '../../src/shared/piecing/seamTree.ts';
import { shapesOf } from '../../src/shared/piecing/templates/shapes.ts';
import { unitPolygons } from '../../src/shared/piecing/unitShape.ts';
import { halfRectangle, ownSeams, QUARTER, quarterCircle, slicedUnits } from './someUnits.ts';

const polygon = (role: string, ...corners: readonly (readonly [number, number])[]) => ({
  role,
  corners: corners.map(([x, y]) => ({ x, y })),
});

describe('the shapes of patches', () => {
  // An attic window: two trapezoids that are each other's mirror image, about a square.
  const window = buildDrawing(4, 4, [
    polygon('pane', [0, 0], [3, 0], [3, 3], [0, 3]),
    polygon('side', [3, 0], [4, 0], [4, 4], [3, 3]),
    polygon('sill', [0, 3], [3, 3], [4, 4], [0, 4]),
  ]);

  it('are told apart, and mirror images are one shape turned over', () => {
    expect(shapesOf(window).map(({ patches }) => patches)).toEqual([
      [{ patch: 0, reversed: false }],
      [
        { patch: 1, reversed: false },
        { patch: 2, reversed: true },
      ],
    ]);
  });

  it('the two halves of a rectangle are one shape, the same way up', () => {
    const [shape, ...more] = shapesOf(buildDrawing(2, 4, unitPolygons(halfRectangle(2, 4))));
    expect(more).toEqual([]);
    expect(shape?.patches.map(({ reversed }) => reversed)).toEqual([false, false]);
  });

  it('an inward curve is not an outward one', () => {
    expect(shapesOf(buildDrawing(3, 3, unitPolygons(quarterCircle(3, 3))))).toHaveLength(2);
  });

  it('stay the same however the drawing is turned', () => {
    fc.assert(
      fc.property(slicedUnits, fc.constantFrom(...ALL_TURNS), (unit, turn) => {
        const polygons = unitPolygons(unit);
        const turned = polygons.map(({ role, corners }) => ({
          role,
          corners: corners.map((corner) => turnPoint(corner, turn, 6, 6)),
        }));
        const names = (of: typeof polygons) => shapesOf(buildDrawing(6, 6, of)).map(({ shape }) => shape);
        expect([...names(turned)].sort()).toEqual([...names(polygons)].sort());
      }),
    );
  });
});

describe('templates', () => {
  const template = methodNamed('template') as Method;

  it('have a seam allowance everywhere: no point of the finished patch is nearer to the cutting line', () => {
    fc.assert(
      fc.property(ownSeams, fc.double({ min: 0.5, max: 3, noNaN: true }), (unit, grid) => {
        for (const { finished, cut } of template.plan(unit, { grid, ...QUARTER }).templates ?? []) {
          const nearest = Math.min(...finished.map((point) => distanceTo(point, cut)));
          // Curves are drawn as short straight lines.
          expect(nearest).toBeGreaterThan(0.25 - 4e-3);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('are as many as there are patches that are no rectangles, counted over shapes, roles and both ways up', () => {
    fc.assert(
      fc.property(ownSeams, (unit) => {
        const { templates = [], cuts } = template.plan(unit, { grid: 1, ...QUARTER });
        const pieces = templates.flatMap((one) => one.pieces);
        const loose = unit.kind === 'pieced' ? loosePatchesOf(unit.seams) : [];
        const slanted = unitPolygons(unit).filter(({ corners }, patch) => {
          if (!loose.includes(patch)) return false;
          const flat = flatCorners(corners);
          const side = (of: 'x' | 'y') => Math.max(...flat.map((p) => p[of])) - Math.min(...flat.map((p) => p[of]));
          return Math.abs(doubleArea(flat) / 2 - side('x') * side('y')) > 1e-4;
        });
        expect(pieces.reduce((sum, { count, reversed }) => sum + count + reversed, 0)).toBe(slanted.length);
        const round = cuts.filter(({ shape }) => shape !== undefined);
        expect(round.map(({ count }) => count)).toEqual(pieces.map(({ count, reversed }) => count + reversed));
        expect(round.every(({ shape }) => templates.some((one) => one.shape === shape))).toBe(true);
      }),
    );
  });

  it('are blunted where they are sharper than a square corner: √2 seams from the point, not more', () => {
    const thin = [
      { x: 0, y: 0 },
      { x: 6, y: 0 },
      { x: 6, y: 1 },
    ];
    const cut = allowanceRound(thin, 0.25, 'blunted');
    const beyond = Math.max(...cut.map(({ x, y }) => (x < 3 ? Math.hypot(x, y) : 0)));
    expect(beyond).toBeCloseTo(0.25 * Math.SQRT2, 9);
    expect(doubleArea(cut)).toBeLessThan(doubleArea(allowanceRound(thin, 0.25, 'pointed')));
  });
});

function distanceTo({ x, y }: Point, outline: readonly Point[]): number {
  return Math.min(
    ...outline.map((a, i) => {
      const b = outline[(i + 1) % outline.length] as Point;
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const along = Math.max(0, Math.min(1, ((x - a.x) * dx + (y - a.y) * dy) / (dx * dx + dy * dy || 1)));
      return Math.hypot(x - a.x - along * dx, y - a.y - along * dy);
    }),
  );
}
