import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildDrawing } from '../../src/shared/drawing/build.ts';
import { checkDrawing } from '../../src/shared/drawing/check.ts';
import { outlinePoints } from '../../src/shared/drawing/curve.ts';
import { type CutWay, MOST_PATCHES, maybeCutAlong } from '../../src/shared/drawing/cutAlong.ts';
import { type Drawing, doubleArea } from '../../src/shared/drawing/drawing.ts';
import { placeInPatch } from '../../src/shared/drawing/inside.ts';
import { isInside } from '../../src/shared/drawing/near.ts';
import { drawingPolygons } from '../../src/shared/drawing/polygons.ts';
import { ALL_WAYS, imagesOf, turnsOf, type Ways } from '../../src/shared/drawing/ways.ts';
import { turnDrawing } from '../../src/shared/drawing/whole.ts';

const at = (x: number, y: number) => ({ x, y });

function blank(width: number, height = width): Drawing {
  const corners = [at(0, 0), at(width, 0), at(width, height), at(0, height)];
  return buildDrawing(width, height, [{ role: 'ground', corners }]);
}

function cut(drawing: Drawing, way: CutWay, ways: Ways = 'once'): Drawing {
  const result = maybeCutAlong(drawing, way, ways);
  if (!result.ok) throw new Error(result.findings.map(({ what }) => what).join(' '));
  return result.value;
}

function line(x1: number, y1: number, x2: number, y2: number): CutWay {
  return { places: [at(x1, y1), at(x2, y2)] };
}

function reasons(drawing: Drawing, way: CutWay): string {
  const result = maybeCutAlong(drawing, way);
  return result.ok ? '' : result.findings.map(({ what }) => what).join(' ');
}

/** The patches as sets of corners, whatever their order: two drawings with the same are the same drawing. */
function shapes(drawing: Drawing): readonly string[] {
  return drawingPolygons(drawing)
    .map(({ corners }) =>
      corners
        .map(({ x, y }) => `${x.toFixed(4)},${y.toFixed(4)}`)
        .sort()
        .join(' '),
    )
    .sort();
}

const areas = (drawing: Drawing) => drawing.patches.map((patch) => doubleArea(outlinePoints(drawing, patch)) / 2);

describe('a cut over a block', () => {
  test('parts every patch that it crosses', () => {
    const rows = cut(cut(blank(4), line(0, 1, 4, 1)), line(0, 3, 4, 3));
    expect(cut(rows, line(2, 0, 2, 4)).patches).toHaveLength(6);
  });

  test('passes over stretches that are seams already', () => {
    const half = cut(blank(4), line(2, 0, 2, 4));
    expect(cut(cut(half, line(0, 2, 2, 2)), line(0, 2, 4, 2)).patches).toHaveLength(4);
  });

  test('may turn at places inside a patch', () => {
    const house = cut(blank(4), { places: [at(1, 4), at(1, 2), at(3, 2), at(3, 4)] });
    expect(areas(house).sort()).toEqual([12, 4]);
  });

  test('keeps the role of what was cut', () => {
    expect(cut(blank(4), line(0, 0, 4, 4)).patches.map(({ role }) => role)).toEqual(['ground', 'ground']);
  });

  test('follows an arc over several patches: an orange peel on a grid of four squares', () => {
    const squares = cut(cut(blank(4), line(2, 0, 2, 4)), line(0, 2, 4, 2));
    const peel = cut(cut(squares, { places: [at(4, 0), at(0, 4)], centre: at(0, 0) }), {
      places: [at(0, 4), at(4, 0)],
      centre: at(4, 4),
    });
    expect(checkDrawing(peel, '')).toEqual([]);
    // A quarter of a circle of radius 4 holds 4π; both together hold 8π − 16 in the peel, as flat pieces a little less.
    const whole = areas(peel).reduce((sum, area) => sum + area, 0);
    expect(whole).toBeCloseTo(16, 6);
  });

  test.each([
    ['starts inside', line(1, 1, 4, 1), 'does not start on an edge'],
    ['ends inside', line(0, 1, 2, 1), 'ends inside a patch, at 2 across, 1 down'],
    ['stands still', line(0, 1, 0, 1), 'stands still at 0 across, 1 down'],
    ['runs along the edge of the block', line(0, 0, 4, 0), 'a seam already at 2 across, 0 down'],
    ['has an arc with uneven ends', { places: [at(0, 1), at(2, 0)], centre: at(0, 0) }, 'not equally far'],
    ['is no way at all', { places: [at(0, 1)] }, 'a start and an end'],
  ])('is refused with its place when it %s', (_, way, words) => {
    expect(reasons(blank(4), way as CutWay)).toContain(words);
  });

  test('is refused a hair beside a vertex, and says where', () => {
    const half = cut(blank(8), line(0, 4, 8, 4));
    const wrong = maybeCutAlong(half, line(0, 4.01, 8, 8));
    expect(wrong.ok ? '' : wrong.findings[0]?.what).toBe(
      'Two corners are a hair apart at 0 across, 4 down on its grid.',
    );
    expect(wrong.ok ? null : wrong.findings[0]?.where.box).toMatchObject({ x: 0, y: 4 });
  });

  test('of four hundred lines is taken as long as a block can be sewn', () => {
    let drawing = blank(40);
    for (let i = 1; i < 40; i += 1) drawing = cut(drawing, line(0, i, 40, i));
    let refusals = 0;
    for (let i = 1; i < 40; i += 1) {
      const next = maybeCutAlong(drawing, line(i, 0, i, 40));
      if (next.ok) drawing = next.value;
      else refusals += 1;
      if (!next.ok) expect(next.findings[0]?.what).toContain(`the most is ${MOST_PATCHES}`);
    }
    expect(drawing.patches).toHaveLength(37 * 40);
    expect(refusals).toBe(3);
  });
});

describe('a cut repeated over a block', () => {
  const grid = fc.record({ x: fc.nat(8), y: fc.nat(8) });
  const side = fc.nat(8);
  const edge = fc.tuple(side, fc.nat(3)).map(([n, where]) => [at(n, 0), at(8, n), at(n, 8), at(0, n)][where] as never);

  test.each(ALL_WAYS)('%s makes a drawing that is the same in all its turns', (ways) => {
    fc.assert(
      fc.property(edge, grid, edge, (from, over, to) => {
        const result = maybeCutAlong(blank(8), { places: [from, over, to] }, ways);
        if (!result.ok) return;
        expect(checkDrawing(result.value, '')).toEqual([]);
        const straight = maybeCutAlong(blank(8), { places: [from, to] }, ways);
        if (!straight.ok) return;
        for (const turn of turnsOf(ways, 8, 8))
          expect(shapes(turnDrawing(straight.value, turn))).toEqual(shapes(straight.value));
      }),
      { numRuns: 40 },
    );
  });

  test('eight ways makes an eight-point star of one corner, one line and one square', () => {
    const near = 8 * (1 - Math.SQRT1_2);
    const far = 8 * Math.SQRT1_2;
    let star = cut(blank(8), line(near, 0, 8, far), 'all');
    star = cut(star, { places: [at(4, 0), at(4, 8)] }, 'all');
    star = cut(star, line(0, 0, 8, 8), 'all');
    expect(checkDrawing(star, '')).toEqual([]);
    expect(star.patches.length).toBeGreaterThan(16);
  });

  test('has only half turns in a block that is not square', () => {
    expect(turnsOf('all', 6, 4)).toHaveLength(4);
    expect(imagesOf(at(1, 1), 'all', 4, 4)).toHaveLength(4);
    expect(imagesOf(at(2, 2), 'all', 4, 4)).toHaveLength(1);
  });
});

test('a place inside is found in every patch of every drawing', () => {
  const edge = fc
    .tuple(fc.nat(6), fc.nat(3))
    .map(([n, where]) => [at(n, 0), at(6, n), at(n, 6), at(0, n)][where] as never);
  const inner = fc.record({ x: fc.integer({ min: 1, max: 5 }), y: fc.integer({ min: 1, max: 5 }) });
  fc.assert(
    fc.property(fc.array(fc.tuple(edge, inner, edge), { maxLength: 6 }), (ways) => {
      const drawing = ways.reduce((now, places) => {
        const next = maybeCutAlong(now, { places });
        return next.ok ? next.value : now;
      }, blank(6));
      for (const patch of drawing.patches) {
        expect(isInside(placeInPatch(drawing, patch), outlinePoints(drawing, patch))).toBe(true);
      }
    }),
  );
});
