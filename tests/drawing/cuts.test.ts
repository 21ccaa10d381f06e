import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildDrawing } from '../../src/shared/drawing/build.ts';
import { checkDrawing, drawingNotes } from '../../src/shared/drawing/check.ts';
import { outlinePoints } from '../../src/shared/drawing/curve.ts';
import { type Drawing, doubleArea } from '../../src/shared/drawing/drawing.ts';
import { maybeMergePatches, maybeMoveVertex, mergePatches } from '../../src/shared/drawing/merge.ts';
import { maybeSplitPatch, patchAt, splitPatch } from '../../src/shared/drawing/split.ts';
import { ALL_TURNS, undoTurn } from '../../src/shared/drawing/turn.ts';
import { floodRole, refineGrid, turnDrawing } from '../../src/shared/drawing/whole.ts';
import { drawnBody, readDrawnBody } from '../../src/shared/recipe/drawn.ts';

const at = (x: number, y: number) => ({ x, y });
const square = (size: number): Drawing =>
  buildDrawing(size, size, [{ role: 'ground', corners: [at(0, 0), at(size, 0), at(size, size), at(0, size)] }]);

/** A drawing made by random straight cuts between grid points on the outlines of patches. */
const drawings = fc.array(fc.tuple(fc.nat(), fc.nat(), fc.nat()), { maxLength: 14 }).map((cuts) =>
  cuts.reduce((drawing, [which, from, to], n) => {
    const patch = which % drawing.patches.length;
    const outline = gridPlaces(drawing, patch);
    const [a, b] = [outline[from % outline.length], outline[to % outline.length]];
    if (a === undefined || b === undefined) return drawing;
    const cut = maybeSplitPatch(drawing, patch, { from: a, to: b }, `role-${n % 3}`);
    return cut.ok ? cut.value : drawing;
  }, square(8)),
);

/** Whole grid places on the outline of a patch. */
function gridPlaces(drawing: Drawing, patch: number) {
  const outline = outlinePoints(drawing, drawing.patches[patch] as never);
  return outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] as typeof a;
    const steps = Math.max(1, Math.round(Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y))));
    return Array.from({ length: steps }, (_, k) =>
      at(a.x + ((b.x - a.x) * k) / steps, a.y + ((b.y - a.y) * k) / steps),
    ).filter((place) => Number.isInteger(place.x) && Number.isInteger(place.y));
  });
}

const areaOf = (drawing: Drawing) =>
  drawing.patches.reduce((sum, patch) => sum + doubleArea(outlinePoints(drawing, patch)), 0) / 2;

describe('cutting and joining patches', () => {
  test('however a block is cut it stays whole: no gap, no overlap', () => {
    fc.assert(
      fc.property(drawings, (drawing) => {
        const gaps = checkDrawing(drawing, '').filter(({ what }) => !what.includes('hair'));
        expect(gaps).toEqual([]);
        expect(areaOf(drawing)).toBeCloseTo(64, 6);
      }),
    );
  });

  test('a cut undone by joining its two parts gives back the drawing', () => {
    fc.assert(
      fc.property(drawings, fc.nat(), fc.nat(), fc.nat(), (drawing, which, from, to) => {
        const patch = which % drawing.patches.length;
        const outline = gridPlaces(drawing, patch);
        const cut = maybeSplitPatch(
          drawing,
          patch,
          { from: outline[from % outline.length] ?? at(0, 0), to: outline[to % outline.length] ?? at(0, 0) },
          'new',
        );
        if (!cut.ok) return;
        const joined = mergePatches(cut.value, patch, cut.value.patches.length - 1);
        expect(joined.patches.length).toBe(drawing.patches.length);
        expect(areaOf(joined)).toBeCloseTo(areaOf(drawing), 9);
        expect(joined.patches.map(({ role }) => role)).toEqual(drawing.patches.map(({ role }) => role));
      }),
    );
  });

  test('turned and turned back it is the same drawing; four quarters change nothing', () => {
    fc.assert(
      fc.property(drawings, fc.constantFrom(...ALL_TURNS), (drawing, turn) => {
        const back = turnDrawing(turnDrawing(drawing, turn), undoTurn(turn));
        expect(back.points).toEqual(drawing.points);
        expect(checkDrawing(turnDrawing(drawing, turn), '').length).toBe(checkDrawing(drawing, '').length);
      }),
    );
  });

  test('written into a recipe and read again it is the same drawing', () => {
    fc.assert(
      fc.property(drawings, (drawing) => {
        const read = readDrawnBody(drawnBody(drawing), 'body');
        if (!read.ok) return;
        expect(read.value.patches.map(({ role }) => role)).toEqual(drawing.patches.map(({ role }) => role));
        expect(areaOf(read.value)).toBeCloseTo(64, 6);
      }),
    );
  });

  test('the right of the cut takes the new role, the left keeps its own', () => {
    const halved = splitPatch(square(4), 0, { from: at(2, 0), to: at(2, 4) }, 'new');
    expect(halved.patches[patchAt(halved, at(1, 1)) ?? -1]?.role).toBe('new');
    expect(halved.patches[patchAt(halved, at(3, 1)) ?? -1]?.role).toBe('ground');
  });

  test('a cut that turns a corner on its way is one seam line of two pieces', () => {
    const cut = splitPatch(square(4), 0, { from: at(2, 0), through: [at(2, 2)], to: at(4, 2) }, 'new');
    expect(areaOf({ ...cut, patches: [cut.patches[0] as never] })).toBeCloseTo(4, 9);
  });

  test('a quarter circle takes π ÷ 4 of its square', () => {
    const cut = splitPatch(square(4), 0, { from: at(4, 0), to: at(0, 4), centre: at(0, 0) }, 'pie');
    const pie = cut.patches.find(({ role }) => role === 'pie') ?? cut.patches[0];
    const areas = cut.patches.map((patch) => doubleArea(outlinePoints(cut, patch)) / 2).sort((a, b) => a - b);
    expect(areas[1]).toBeCloseTo(4 * Math.PI, 1);
    expect(checkDrawing(cut, '')).toEqual([]);
    expect(pie).toBeDefined();
  });
});

describe('two corners joined twice', () => {
  test('by a straight cut and an arc hold a lens between them, whichever is cut first', () => {
    const straight = { from: at(4, 0), to: at(0, 4) };
    const arc = { ...straight, centre: at(0, 0) };
    const first = splitPatch(square(4), 0, straight, 'a');
    const second = splitPatch(first, patchAt(first, at(3, 3)) ?? -1, arc, 'b');
    const other = splitPatch(square(4), 0, arc, 'a');
    const lens = splitPatch(other, patchAt(other, at(1, 1)) ?? -1, straight, 'b');
    for (const drawing of [second, lens]) {
      expect(checkDrawing(drawing, '')).toEqual([]);
      expect(drawing.patches).toHaveLength(3);
      expect(areaOf(drawing)).toBeCloseTo(16, 6);
      const read = readDrawnBody(drawnBody(drawing), 'body');
      expect(read.ok && read.value.patches.length).toBe(3);
    }
  });

  test('by two arcs, typed as patches, are a melon', () => {
    const melon = buildDrawing(4, 4, [
      {
        role: 'm',
        corners: [
          { ...at(4, 0), centre: at(4, 4) },
          { ...at(0, 4), centre: at(0, 0) },
        ],
      },
      { role: 'b', corners: [at(0, 0), at(4, 0), { ...at(0, 4), centre: at(4, 4) }] },
      { role: 'b', corners: [at(4, 4), at(0, 4), { ...at(4, 0), centre: at(0, 0) }] },
    ]);
    expect(checkDrawing(melon, '')).toEqual([]);
  });
});

describe('what cannot be is said, and the drawing is as it was', () => {
  const reasonOf = (result: ReturnType<typeof maybeSplitPatch>) => (result.ok ? '' : (result.findings[0]?.what ?? ''));

  test('a cut that starts on no edge', () => {
    expect(reasonOf(maybeSplitPatch(square(4), 0, { from: at(1, 1), to: at(4, 4) }, 'new'))).toMatch(
      /does not start on an edge at 1 across, 1 down/,
    );
  });

  test('a cut that runs along an edge', () => {
    expect(reasonOf(maybeSplitPatch(square(4), 0, { from: at(0, 0), to: at(4, 0) }, 'new'))).toMatch(
      /leaves the patch/,
    );
  });

  test('a cut across another patch', () => {
    const halved = splitPatch(square(4), 0, { from: at(2, 0), to: at(2, 4) }, 'new');
    expect(reasonOf(maybeSplitPatch(halved, 0, { from: at(0, 1), to: at(4, 1) }, 'x'))).not.toBe('');
  });

  test('joining two that only touch at a corner', () => {
    const halved = splitPatch(square(4), 0, { from: at(2, 0), to: at(2, 4) }, 'b');
    const quarter = splitPatch(
      splitPatch(halved, 0, { from: at(2, 2), to: at(4, 2) }, 'c'),
      1,
      { from: at(0, 2), to: at(2, 2) },
      'd',
    );
    const one = patchAt(quarter, at(1, 1)) ?? 0;
    const far = patchAt(quarter, at(3, 3)) ?? 0;
    expect(maybeMergePatches(quarter, one, far).ok).toBe(false);
  });

  test('moving a corner of the block, or a vertex so that a patch folds over', () => {
    const cut = splitPatch(square(4), 0, { from: at(2, 0), through: [at(2, 2)], to: at(4, 2) }, 'new');
    const corner = cut.points.findIndex(({ x, y }) => x === 0 && y === 0);
    const inner = cut.points.findIndex(({ x, y }) => x === 2 && y === 2);
    expect(maybeMoveVertex(cut, corner, at(1, 1)).ok).toBe(false);
    expect(maybeMoveVertex(cut, inner, at(3, 1)).ok).toBe(true);
    expect(maybeMoveVertex(cut, inner, at(2, -1)).ok).toBe(false);
  });

  test('a corner a hair off its neighbour is named with its place', () => {
    const drawing = buildDrawing(4, 4, [
      { role: 'a', corners: [at(0, 0), at(2, 0), at(2, 4), at(0, 4)] },
      { role: 'b', corners: [at(2.01, 0), at(4, 0), at(4, 4), at(2, 4)] },
    ]);
    expect(checkDrawing(drawing, 'body')[0]?.what).toMatch(/a hair apart at 2 across, 0 down/);
  });

  test('a sliver is told at the size it will have', () => {
    const drawing = splitPatch(square(4), 0, { from: at(0.25, 0), to: at(0.25, 4) }, 'thin');
    expect(drawingNotes(drawing, 0.5, '')).toHaveLength(1);
    expect(drawingNotes(drawing, 4, '')).toHaveLength(0);
  });
});

test('a typed place of four decimals is taken for the vertex it is meant for', () => {
  const leg = 8 / (2 + Math.SQRT2);
  const exact = splitPatch(square(8), 0, { from: at(leg, 0), to: at(0, leg) }, 'corner');
  const typed = maybeSplitPatch(exact, 0, { from: at(2.3431, 0), to: at(8, 5.6569) }, 'x');
  expect(typed.ok).toBe(true);
  if (typed.ok) expect(typed.value.points).toHaveLength(exact.points.length + 1);
});

test('flooding a role stops at patches of another role', () => {
  const halves = splitPatch(square(4), 0, { from: at(2, 0), to: at(2, 4) }, 'ground');
  const cut = splitPatch(halves, 0, { from: at(2, 2), to: at(4, 2) }, 'other');
  const flooded = floodRole(cut, 0, 'sea');
  expect(flooded.patches.map(({ role }) => role).sort()).toEqual(['other', 'sea', 'sea']);
});

test('a finer grid holds the same drawing', () => {
  const cut = splitPatch(square(4), 0, { from: at(4, 0), to: at(0, 4), centre: at(0, 0) }, 'pie');
  const finer = refineGrid(cut, 3);
  expect(areaOf(finer)).toBeCloseTo(9 * areaOf(cut), 6);
  expect(checkDrawing(finer, '')).toEqual([]);
});
