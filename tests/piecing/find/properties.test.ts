import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Drawing } from '../../../src/shared/drawing/drawing.ts';
import { drawingPolygons } from '../../../src/shared/drawing/polygons.ts';
import { ALL_TURNS, type Turn, turnSize } from '../../../src/shared/drawing/turn.ts';
import { turnDrawing } from '../../../src/shared/drawing/whole.ts';
import { plainSewn } from '../../../src/shared/fit/sewn.ts';
import { sewUp } from '../../../src/shared/fit/sewUp.ts';
import { distinct } from '../../../src/shared/piecing/distinct.ts';
import { type Pieced, pieceDrawing } from '../../../src/shared/piecing/find/pieceDrawing.ts';
import { methodsFor } from '../../../src/shared/piecing/methods/index.ts';
import type { Unit } from '../../../src/shared/piecing/piecing.ts';
import { joinsOf, patchesOf, type SeamTree, unitsOf } from '../../../src/shared/piecing/seamTree.ts';
import { leavesOf } from '../../../src/shared/piecing/tree.ts';
import { drawings, mergedDrawings, slantedDrawings, slicingDrawings } from './drawings.ts';
import { patchWords, reassemble } from './reassemble.ts';
import { bearsPaw, churnDash, eightPointStar, logs, sawtoothStar } from './shapes.ts';

/** Unit keys as often as they stand in the block; mirrored, as the mirrored block must have them. */
function work({ root, units }: Pieced, mirrored = false): readonly string[] {
  const mirror: Turn = { quarters: 0, mirrored };
  const named = (unit: Unit) => {
    const { width, height } = unit;
    const loose = { kind: 'unit', shape: unit, turn: mirror, box: { x: 0, y: 0, width, height }, patches: [] } as const;
    const patches = unit.kind === 'pieced' ? unit.drawing.patches.map((_, i) => i) : [];
    return distinct({ ...loose, patches }).unit.key;
  };
  const names = new Map(units.map((unit) => [unit.key, named(unit)]));
  return leavesOf(root)
    .map(({ unit }) => names.get(unit) as string)
    .sort();
}

function edgeWords(a: number | undefined, b: number | undefined): string {
  return [a ?? 0, b ?? 0].sort((p, q) => p - q).join(' ');
}

function sewnEdges(seams: SeamTree): readonly string[] {
  const paths = joinsOf(seams).flatMap(({ seam, closing }) => (closing === undefined ? [seam] : [seam, closing]));
  return paths.flatMap((path) => path.slice(1).map((to, i) => edgeWords(path[i], to)));
}

/** The edges between patches of one unit of the trade: its own method sews them. */
function edgesInUnits(seams: SeamTree, drawing: Drawing): readonly string[] {
  return unitsOf(seams).flatMap(({ patches }) => {
    const own = patches.map((patch) => drawing.patches[patch] as Drawing['patches'][number]);
    return innerEdges({ ...drawing, patches: own });
  });
}

function innerEdges({ patches }: Drawing): readonly string[] {
  const all = patches.flatMap(({ outline }) => outline.map((a, i) => edgeWords(a, outline[(i + 1) % outline.length])));
  return [...new Set(all.filter((edge, i) => all.indexOf(edge) !== i))].sort();
}

describe('how a drawing is sewn', () => {
  test('whatever is cut straight across again and again is sewn by full seams alone', () => {
    fc.assert(
      fc.property(slicingDrawings, (drawing) => {
        const { census, findings } = pieceDrawing(drawing);
        expect(census).toEqual({ full: drawing.patches.length - 1, partial: 0, setIn: 0, curved: 0 });
        expect(findings).toEqual([]);
      }),
    );
  });

  test('so it is with slanting cuts inside its rectangles', () => {
    fc.assert(
      fc.property(slantedDrawings, (drawing) => {
        const { census } = pieceDrawing(drawing);
        expect(census).toEqual({ full: drawing.patches.length - 1, partial: 0, setIn: 0, curved: 0 });
      }),
    );
  });

  test('sewn together from its units, the two sides of every seam agree and the drawing comes back', () => {
    fc.assert(
      fc.property(drawings, (drawing) => {
        const { root, units } = pieceDrawing(drawing);
        const made = reassemble(root, units);
        expect([made.width, made.height]).toEqual([drawing.width, drawing.height]);
        expect(patchWords(made.polygons)).toEqual(patchWords(drawingPolygons(drawing)));
      }),
    );
  });

  test('every patch stands in exactly one unit, and every unit can be made', () => {
    fc.assert(
      fc.property(drawings, (drawing) => {
        const { root, units } = pieceDrawing(drawing);
        const sewn = leavesOf(root).flatMap(({ patches }) => patches);
        expect([...sewn].sort((a, b) => a - b)).toEqual(drawing.patches.map((_, i) => i));
        for (const unit of units) expect(methodsFor(unit)).not.toEqual([]);
      }),
    );
  });

  test('patches of any shape come together too: every patch once, every inner edge sewn once', () => {
    fc.assert(
      fc.property(mergedDrawings, (drawing) => {
        const { root, units, census } = pieceDrawing(drawing);
        expect(patchWords(reassemble(root, units).polygons)).toEqual(patchWords(drawingPolygons(drawing)));
        expect(census.full + census.partial + census.setIn).toBe(drawing.patches.length - 1);
        for (const unit of units) {
          if (unit.kind !== 'pieced') continue;
          const { patches } = unit.drawing;
          expect([...patchesOf(unit.seams)].sort((a, b) => a - b)).toEqual(patches.map((_, i) => i));
          const sewn = [...sewnEdges(unit.seams), ...edgesInUnits(unit.seams, unit.drawing)];
          expect(sewn.sort()).toEqual(innerEdges(unit.drawing));
        }
      }),
    );
  });

  test('sewn on paper from true sizes, nothing misses', () => {
    fc.assert(
      fc.property(drawings, (drawing) => {
        const { root } = pieceDrawing(drawing);
        const up = sewUp(root, ({ box: { width, height } }) => plainSewn(width, height, { width, height }));
        expect(up.misfits).toEqual([]);
        expect([up.sewn.width, up.sewn.height]).toEqual([drawing.width, drawing.height]);
      }),
    );
  });
});

describe('turned and mirrored', () => {
  const same = (drawing: Parameters<typeof pieceDrawing>[0], turn: Turn) => {
    const plan = pieceDrawing(drawing);
    const turned = pieceDrawing(turnDrawing(drawing, turn));
    expect(work(turned)).toEqual(work(plan, turn.mirrored));
    expect(turned.census).toEqual(plan.census);
    const { width, height } = turnSize(drawing.width, drawing.height, turn);
    expect(turned.root.box).toEqual({ x: 0, y: 0, width, height });
  };

  test('a drawing takes the same units, turned or mirrored with it, and the same seams', () => {
    fc.assert(fc.property(drawings, fc.constantFrom(...ALL_TURNS), same));
  });

  test('so does one whose patches are of any shape', () => {
    fc.assert(fc.property(mergedDrawings, fc.constantFrom(...ALL_TURNS), same));
  });

  test.each([
    ['bear’s paw', bearsPaw()],
    ['churn dash', churnDash()],
    ['sawtooth star', sawtoothStar()],
    ['log cabin', logs(2, 3, ['light', 'light', 'dark', 'dark'])],
    ['eight-point star', eightPointStar(12)],
  ])('so does a %s', (_, drawing) => {
    for (const turn of ALL_TURNS) same(drawing, turn);
  });

  test('the same drawing always gives the same plan', () => {
    fc.assert(
      fc.property(drawings, (drawing) => {
        expect(pieceDrawing(drawing)).toEqual(pieceDrawing(drawing));
      }),
    );
  });
});
