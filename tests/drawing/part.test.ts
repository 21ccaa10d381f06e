import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { patchesLike } from '../../src/shared/drawing/alike.ts';
import { buildDrawing } from '../../src/shared/drawing/build.ts';
import { checkDrawing } from '../../src/shared/drawing/check.ts';
import { maybeCutAlong } from '../../src/shared/drawing/cutAlong.ts';
import type { Drawing } from '../../src/shared/drawing/drawing.ts';
import { copyPart, maybePastePart, turnPart } from '../../src/shared/drawing/part.ts';
import { drawingPolygons } from '../../src/shared/drawing/polygons.ts';
import { patchAt } from '../../src/shared/drawing/split.ts';
import { ALL_TURNS, undoTurn } from '../../src/shared/drawing/turn.ts';
import { refineGrid, regrid, setRole } from '../../src/shared/drawing/whole.ts';

const at = (x: number, y: number) => ({ x, y });

function blank(width: number, height = width): Drawing {
  const corners = [at(0, 0), at(width, 0), at(width, height), at(0, height)];
  return buildDrawing(width, height, [{ role: 'ground', corners }]);
}

function cut(drawing: Drawing, ...lines: readonly (readonly [number, number, number, number])[]): Drawing {
  return lines.reduce((now, [x1, y1, x2, y2]) => {
    const next = maybeCutAlong(now, { places: [at(x1, y1), at(x2, y2)] });
    if (!next.ok) throw new Error(next.findings.map(({ what }) => what).join(' '));
    return next.value;
  }, drawing);
}

/** A four by four grid with a diagonal in its first square and a bar in its last. */
const grid = cut(
  blank(8),
  ...[2, 4, 6].flatMap((n) => [[n, 0, n, 8] as const, [0, n, 8, n] as const]),
  [0, 2, 2, 0],
  [6, 7, 8, 7],
);
const corner = patchAt(grid, at(0.5, 0.5)) as number;
const drawing = setRole(grid, corner, 'star');

const shapes = (one: Drawing) =>
  drawingPolygons(one)
    .map(({ role, corners }) => `${role} ${corners.map(({ x, y }) => `${x},${y}`).sort()}`)
    .sort();

describe('a copied part of a drawing', () => {
  test('set back where it was changes nothing', () => {
    fc.assert(
      fc.property(fc.nat(7), fc.nat(7), fc.integer({ min: 1, max: 8 }), (x, y, side) => {
        const box = { x, y, width: Math.min(side, 8 - x), height: Math.min(side, 8 - y) };
        const cutOut = maybePastePart(drawing, copyPart(drawing, box), at(x, y));
        expect(cutOut.ok).toBe(true);
        if (cutOut.ok) expect(checkDrawing(cutOut.value, '')).toEqual([]);
      }),
    );
    const square = copyPart(drawing, { x: 0, y: 0, width: 2, height: 2 });
    const back = maybePastePart(drawing, square, at(0, 0));
    expect(back.ok && shapes(back.value)).toEqual(shapes(drawing));
  });

  test('brings its seams and its roles to another place, turned', () => {
    const square = copyPart(drawing, { x: 0, y: 0, width: 2, height: 2 });
    const half = turnPart(square, { quarters: 2, mirrored: false });
    const set = maybePastePart(drawing, half, at(4, 4));
    if (!set.ok) throw new Error('not set');
    expect(set.value.patches).toHaveLength(drawing.patches.length + 1);
    expect(set.value.patches[patchAt(set.value, at(5.7, 5.7)) as number]?.role).toBe('star');
  });

  test('turned and turned back is the same part', () => {
    const part = copyPart(drawing, { x: 0, y: 0, width: 4, height: 2 });
    for (const turn of ALL_TURNS) expect(turnPart(turnPart(part, turn), undoTurn(turn))).toEqual(part);
  });

  test('cuts what reaches out of it, and what it is set into', () => {
    const part = copyPart(blank(8), { x: 1, y: 0, width: 2, height: 2 });
    expect(part.polygons).toHaveLength(1);
    const set = maybePastePart(blank(8), part, at(0, 0));
    expect(set.ok && set.value.patches.length).toBe(2);
  });

  test('is refused outside the block, and as an island inside one patch', () => {
    const part = copyPart(drawing, { x: 0, y: 0, width: 2, height: 2 });
    const out = maybePastePart(drawing, part, at(7, 0));
    expect(out.ok ? '' : out.findings[0]?.what).toContain('reach out of the block');
    const island = maybePastePart(blank(8), part, at(3, 3));
    expect(island.ok ? '' : island.findings[0]?.what).toContain('like an island');
  });
});

describe('all patches like one', () => {
  test('are those of its shape and role, however they lie', () => {
    const square = patchAt(drawing, at(3, 3)) as number;
    // Sixteen squares, one of them cut on its diagonal and one into bars.
    expect(patchesLike(drawing, square)).toHaveLength(14);
    expect(patchesLike(drawing, corner)).toEqual([corner]);
    const triangles = cut(blank(4), [2, 0, 2, 4], [0, 2, 4, 2], [0, 2, 2, 0], [2, 0, 4, 2], [4, 2, 2, 4], [2, 4, 0, 2]);
    expect(patchesLike(triangles, patchAt(triangles, at(0.3, 0.3)) as number)).toHaveLength(8);
    expect(patchesLike(triangles, 99)).toEqual([]);
  });

  test('hands are told apart from other shapes, not from one another', () => {
    const handed = cut(blank(6), [0, 2, 6, 2], [2, 0, 3, 2], [4, 0, 3, 2], [0, 4, 6, 4]);
    expect(patchesLike(handed, patchAt(handed, at(0.5, 1)) as number)).toHaveLength(2);
  });
});

test('a drawing on another grid keeps its shape, and a grid of another shape is refused', () => {
  expect(regrid(refineGrid(drawing, 2), 8, 8)).toEqual(drawing);
  expect(regrid(drawing, 5, 5)).toMatchObject({ width: 5, height: 5 });
  expect(() => regrid(drawing, 5, 6)).toThrow(RangeError);
});
