import { describe, expect, test } from 'vitest';
import { buildDrawing } from '../../src/shared/drawing/build.ts';
import type { Drawing } from '../../src/shared/drawing/drawing.ts';
import type { Point } from '../../src/shared/drawing/turn.ts';
import { edgeSeams } from '../../src/shared/piecing/edgeSeams.ts';
import { sewnFrom } from '../../src/shared/piecing/find/made/choose.ts';
import { lower } from '../../src/shared/piecing/lower.ts';
import type { Unit } from '../../src/shared/piecing/piecing.ts';
import { patchesOf, type SeamTree, type SeamUnit } from '../../src/shared/piecing/seamTree.ts';
import { unitPolygons } from '../../src/shared/piecing/unitShape.ts';
import { meet, noMeetings } from '../../src/shared/pressing/meet.ts';
import type { Press } from '../../src/shared/pressing/pressing.ts';
import { starter, starterBook } from '../helpers/starters.ts';
import {
  checkerboard,
  corner,
  flipped,
  fourPatch,
  geese,
  hst,
  ninePatch,
  quarterCircle,
  rails,
  squareInSquare,
} from '../piecing/someUnits.ts';

const NONE = { top: [], right: [], bottom: [], left: [] };

// Places by geometry; that geese are pressed to their skies, flipped corners to their corners and curves away from what is
// round outside is common practice.
describe('where seams run into the edge of a unit, and how they lie there', () => {
  test('a half-square triangle has none: its seam runs into two corners', () => {
    expect(edgeSeams(hst(3))).toEqual(NONE);
  });

  test('the tip of a goose lies to both sides, in the middle of its upper edge', () => {
    expect(edgeSeams(geese(2))).toEqual({ ...NONE, top: [{ at: 2, lies: 'open' }] });
  });

  test('a flipped corner lies towards the corner on both of its edges', () => {
    const unit = flipped(4, 3, [corner('top-left', 1), corner('bottom-right', 2)]);
    expect(edgeSeams(unit)).toEqual({
      top: [{ at: 1, lies: 'back' }],
      left: [{ at: 1, lies: 'back' }],
      right: [{ at: 1, lies: 'forth' }],
      bottom: [{ at: 2, lies: 'forth' }],
    });
  });

  test('the points of a square in a square lie to both sides, halfway along every edge', () => {
    const tip = [{ at: 2, lies: 'open' }];
    expect(edgeSeams(squareInSquare(4))).toEqual({ top: tip, right: tip, bottom: tip, left: tip });
  });

  test('a quarter circle is pressed away from its middle', () => {
    expect(edgeSeams(quarterCircle(3, 2))).toEqual({
      ...NONE,
      top: [{ at: 2, lies: 'forth' }],
      left: [{ at: 2, lies: 'forth' }],
    });
  });

  test('a pieced unit tells the ends of its own seams: a diamond touches the middle of every side', () => {
    const tip = (at: number) => [{ at, lies: 'open' }];
    expect(edgeSeams(only('diamond-in-a-rectangle'))).toEqual({
      top: tip(2),
      right: tip(1),
      bottom: tip(2),
      left: tip(1),
    });
  });

  test('and of the units that stand in it: at a basket’s edge only seams between them end', () => {
    const { top, right, bottom, left } = edgeSeams(only('flower-basket'));
    const all = [...top, ...right, ...bottom, ...left];
    expect(all.length).toBeGreaterThan(0);
    for (const { at } of all) expect(at > 0 && at < 4).toBe(true);
  });
});

function only(id: string): Unit {
  const lowered = lower(starter(id), {}, starterBook(), '');
  const unit = lowered.ok ? lowered.value.units.find(({ kind }) => kind === 'pieced') : undefined;
  if (unit === undefined) throw new Error(id);
  return unit;
}

describe('a point to match', () => {
  test.each([
    ['left', 'right', { nests: 1, stacks: 0, open: 0 }],
    ['left', 'left', { nests: 0, stacks: 1, open: 0 }],
    ['open', 'left', { nests: 0, stacks: 0, open: 1 }],
    ['open', 'open', { nests: 0, stacks: 0, open: 1 }],
  ] as const)('%s against %s', (one: Press, other: Press, counted) => {
    const all = noMeetings();
    meet(
      [
        { at: 1, press: 'right' },
        { at: 2, press: one },
      ],
      [{ at: 2, press: other }],
      (x) => ({ x, y: 0 }),
      all,
    );
    expect(all).toMatchObject(counted);
    expect(all.stacked).toEqual(counted.stacks === 1 ? [{ x: 2, y: 0 }] : []);
  });
});

// How boards are pressed is told by the methods: nine-patches to their corners and middle, a four-patch spun (common practice).
describe('boards', () => {
  test('a four-patch lies one way round', () => {
    expect(edgeSeams(fourPatch(4))).toEqual({
      top: [{ at: 2, lies: 'forth' }],
      right: [{ at: 2, lies: 'forth' }],
      bottom: [{ at: 2, lies: 'back' }],
      left: [{ at: 2, lies: 'back' }],
    });
  });

  test('a nine-patch lies to its corners down its sides, and its long seams to the outer columns', () => {
    const corners = [
      { at: 1, lies: 'back' },
      { at: 2, lies: 'forth' },
    ];
    expect(edgeSeams(ninePatch(3))).toEqual({ top: corners, right: corners, bottom: corners, left: corners });
  });

  test('seams end at the edge of a unit alike whether they are a board’s own or that of a board standing in it', () => {
    for (const board of [
      fourPatch(2),
      ninePatch(3),
      checkerboard(3, 2),
      checkerboard(2, 3),
      checkerboard(4, 4),
      rails(3, 3),
    ]) {
      const alone = edgeSeams(board);
      const { width, height } = board;
      // A strip below the board and one to its right make it a unit of its own seams; the board keeps its top and left edges.
      const drawing = buildDrawing(width + 1, height + 1, [
        ...unitPolygons(board),
        { role: 'y', corners: box(0, height, width, 1) },
        { role: 'z', corners: box(width, 0, 1, height + 1) },
      ]);
      const { kind: _, key: __, ...rest } = board;
      const inside: SeamTree = {
        kind: 'unit',
        shape: { kind: board.kind, ...rest } as SeamUnit['shape'],
        patches: unitPolygons(board).map((_one, i) => i),
      };
      const patches = unitPolygons(board).length;
      const seams = joined(drawing, joined(drawing, inside, { kind: 'patch', patch: patches }), {
        kind: 'patch',
        patch: patches + 1,
      });
      const whole = edgeSeams({ kind: 'pieced', key: 'p', width: width + 1, height: height + 1, drawing, seams });
      expect(whole.left.slice(0, alone.left.length)).toEqual(alone.left);
      expect(whole.top.slice(0, alone.top.length)).toEqual(alone.top);
    }
  });

  test('a four-patch on its point, in corners, is found by its squares', () => {
    const on = (...places: readonly (readonly [number, number])[]) => places.map(([x, y]) => ({ x, y }));
    const drawing = buildDrawing(4, 4, [
      { role: 'a', corners: on([2, 0], [3, 1], [2, 2], [1, 1]) },
      { role: 'b', corners: on([3, 1], [4, 2], [3, 3], [2, 2]) },
      { role: 'a', corners: on([2, 2], [3, 3], [2, 4], [1, 3]) },
      { role: 'b', corners: on([1, 1], [2, 2], [1, 3], [0, 2]) },
      { role: 'c', corners: on([0, 0], [2, 0], [0, 2]) },
      { role: 'c', corners: on([2, 0], [4, 0], [4, 2]) },
      { role: 'c', corners: on([4, 2], [4, 4], [2, 4]) },
      { role: 'c', corners: on([0, 2], [2, 4], [0, 4]) },
    ]);
    const side = 2 * Math.SQRT2;
    const shape = { kind: 'four-patch', width: side, height: side, roles: ['a', 'b'] } as const;
    const seams = sewnFrom(drawing, [{ kind: 'unit', shape, patches: [0, 1, 2, 3] }]);
    const tip = [{ at: 2, lies: 'open' }];
    const unit: Unit = { kind: 'pieced', key: 'p', width: 4, height: 4, drawing, seams };
    expect(edgeSeams(unit)).toEqual({ top: tip, right: tip, bottom: tip, left: tip });
  });

  test('every board of every starter recipe is found where it stands', () => {
    for (const recipe of starterBook().values()) {
      const lowered = lower(recipe, {}, starterBook(), '');
      if (!lowered.ok) continue;
      for (const unit of lowered.value.units) expect(() => edgeSeams(unit)).not.toThrow();
    }
  });
});

function box(x: number, y: number, width: number, height: number) {
  return (
    unitPolygons({ kind: 'plain', key: '', width, height, role: '' })[0]?.corners.map((at) => ({
      x: at.x + x,
      y: at.y + y,
    })) ?? []
  );
}

/** Two parts joined along all the vertices they share. */
function joined(drawing: Drawing, one: SeamTree, other: SeamTree): SeamTree {
  const vertices = (tree: SeamTree) =>
    new Set(patchesOf(tree).flatMap((patch) => drawing.patches[patch]?.outline ?? []));
  const [a, b] = [vertices(one), vertices(other)];
  const seam = [...a]
    .filter((vertex) => b.has(vertex))
    .sort((p, q) => {
      const [from, to] = [drawing.points[p] as Point, drawing.points[q] as Point];
      return from.x - to.x || from.y - to.y;
    });
  return { kind: 'join', parts: [one, other], seam, sewn: 'full' };
}
