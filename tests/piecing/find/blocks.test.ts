import { describe, expect, test } from 'vitest';
import { buildDrawing } from '../../../src/shared/drawing/build.ts';
import type { Drawing } from '../../../src/shared/drawing/drawing.ts';
import { type Pieced, pieceDrawing } from '../../../src/shared/piecing/find/pieceDrawing.ts';
import type { Scale } from '../../../src/shared/piecing/method.ts';
import { methodNamed, methodsFor } from '../../../src/shared/piecing/methods/index.ts';
import type { Unit, UnitLeaf } from '../../../src/shared/piecing/piecing.ts';
import { isLeaf, leavesOf } from '../../../src/shared/piecing/tree.ts';
import { bearsPaw, box, churnDash, eightPointStar, goose, halves, logs, patch, sawtoothStar } from './shapes.ts';

/** How often each unit stands in the block. */
function counted({ root }: Pieced): Readonly<Record<string, number>> {
  const counts: Record<string, number> = {};
  for (const { unit } of leavesOf(root)) counts[unit] = (counts[unit] ?? 0) + 1;
  return counts;
}

function only(pieced: Pieced): Unit {
  expect(isLeaf<UnitLeaf>(pieced.root)).toBe(true);
  return pieced.units[0] as Unit;
}

describe('traditional blocks drawn as polygons', () => {
  test('bear’s paw on a grid of seven: sixteen half-square triangles, four paws made alike', () => {
    // Grid of seven: Moonlight Quilters (guild). Sixteen claws, four paws, four background squares, a cross of four strips
    // about a middle square: common practice.
    const pieced = pieceDrawing(bearsPaw());
    expect(counted(pieced)).toEqual({
      'hst 1x1 background/claws': 16,
      'plain 2x2 paw': 4,
      'plain 1x1 background': 4,
      'plain 3x1 background': 4,
      'plain 1x1 claws': 1,
    });
    expect(pieced.census).toEqual({ full: 44, partial: 0, setIn: 0, curved: 0 });
    expect(pieced.root.kind === 'row' && pieced.root.parts.map(({ box: { height } }) => height)).toEqual([3, 1, 3]);
    const [first] = pieced.root.kind === 'row' ? pieced.root.parts : [];
    expect(first?.kind === 'row' && first.parts.map(({ box: { width } }) => width)).toEqual([3, 1, 3]);
  });

  test('churn dash of 6 inches cuts 2⅞, 1½ × 2½ and 2½', () => {
    // Churn dash 3 × 3 with halved rails: quilting handbook pp. 10–11; Moonlight Quilters (guild).
    const { units } = pieceDrawing(churnDash());
    const scale: Scale = { grid: 1, seam: 1 / 4, step: 1 / 8 };
    const cuts = units.map((unit) => {
      const method = unit.kind === 'hst' ? methodNamed('hst-two') : methodsFor(unit)[0];
      const sizes = (method?.plan(unit, scale).cuts ?? []).map(({ width, height }) =>
        [width.value, height.value].sort().join(' × '),
      );
      return [unit.kind, [...new Set(sizes)]];
    });
    expect(Object.fromEntries(cuts)).toEqual({ hst: ['2.875 × 2.875'], rails: ['1.5 × 2.5'], plain: ['2.5 × 2.5'] });
  });

  test('sawtooth star: four flying geese, four corners, one middle, in three rows', () => {
    const pieced = pieceDrawing(sawtoothStar());
    expect(counted(pieced)).toEqual({
      'geese 2x1 background/points': 4,
      'plain 1x1 background': 4,
      'plain 2x2 middle': 1,
    });
    expect(pieced.root).toMatchObject({ kind: 'row', along: 'down' });
    expect(pieced.root.kind === 'row' && pieced.root.parts.map(({ box: { height } }) => height)).toEqual([1, 2, 1]);
  });

  test('log cabin: rounds about a core, each log as long as the side it is sewn to', () => {
    // Strips cut 2½ about an 8-inch core, two rounds: logs 8½, 10½, 10½, 12½, 12½, 14½, 14½, 16½; common practice.
    // Here a grid unit is 2 finished inches.
    const { root, units } = pieceDrawing(logs(4, 2, ['light', 'light', 'dark', 'dark']));
    if (root.kind !== 'rounds') throw new Error(`A log cabin was sewn as ${root.kind}`);
    const unfinished = root.logs.map(({ part: { box } }) => 2 * Math.max(box.width, box.height) + 1 / 2);
    expect(unfinished).toEqual([8.5, 10.5, 10.5, 12.5, 12.5, 14.5, 14.5, 16.5]);
    expect(units.filter(({ kind }) => kind === 'log').length).toBe(units.length - 1);
  });

  test('eight-point star: straight seams join the diamonds, and eight pieces are set in', () => {
    // Eight diamonds, four triangles and four squares; one set-in (Y) seam for each triangle and square: common practice.
    const pieced = pieceDrawing(eightPointStar(12));
    expect(only(pieced).kind).toBe('pieced');
    expect(pieced.census).toEqual({ full: 7, partial: 0, setIn: 8, curved: 0 });
    expect(pieced.findings).toEqual([
      expect.objectContaining({ level: 'look', what: expect.stringMatching(/^8 seams have to be set in/) }),
    ]);
  });
});

describe('units of the trade are known by their geometry', () => {
  const square = (side: number, ...patches: Parameters<typeof buildDrawing>[2]) => buildDrawing(side, side, patches);
  const middle = [2, 2];
  const [a, b, c, d] = [
    [0, 0],
    [4, 0],
    [4, 4],
    [0, 4],
  ] as const;
  const mid = { top: [2, 0], right: [4, 2], bottom: [2, 4], left: [0, 2] };
  const cases: readonly (readonly [string, Drawing])[] = [
    ['hst 4x4 x/y', square(4, ...halves(['y', 'x'], 0, 0, 4, 2))],
    [
      'qst 4x4 x/y/x/y',
      square(4, patch('x', a, b, middle), patch('y', b, c, middle), patch('x', c, d, middle), patch('y', d, a, middle)),
    ],
    ['three-patch 4x4 x/y/z', square(4, patch('x', b, c, d), patch('y', a, b, middle), patch('z', d, a, middle))],
    ['geese 4x2 x/y', buildDrawing(4, 2, goose(['x', 'y'], 0, 0, 2, 0))],
    ['geese 4x2 x/y', buildDrawing(2, 4, goose(['x', 'y'], 0, 0, 2, 3))],
    [
      'square-in-square 4x4 x y/y/y/y',
      square(
        4,
        patch('x', mid.top, mid.right, mid.bottom, mid.left),
        patch('y', a, mid.top, mid.left),
        patch('y', b, mid.right, mid.top),
        patch('y', c, mid.bottom, mid.right),
        patch('y', d, mid.left, mid.bottom),
      ),
    ],
    [
      'half-rectangle 4x2 rising x/y',
      buildDrawing(4, 2, [patch('x', [0, 0], [4, 0], [0, 2]), patch('y', [4, 0], [4, 2], [0, 2])]),
    ],
    [
      'half-rectangle 4x2 falling x/y',
      buildDrawing(4, 2, [patch('x', [0, 0], [4, 0], [4, 2]), patch('y', [0, 0], [4, 2], [0, 2])]),
    ],
    [
      'four-patch 4x4 x/y',
      square(4, box('x', 0, 0, 2, 2), box('y', 2, 0, 2, 2), box('y', 0, 2, 2, 2), box('x', 2, 2, 2, 2)),
    ],
    [
      'nine-patch 3x3 x/y/z',
      square(
        3,
        ...[0, 1, 2].flatMap((i) =>
          [0, 1, 2].map((j) => box(['x', 'y', 'z'][(i === 1 ? 1 : 0) + (j === 1 ? 1 : 0)] as string, i, j, 1, 1)),
        ),
      ),
    ],
    [
      'checkerboard 4x3 4x3 x/y',
      buildDrawing(
        4,
        3,
        [0, 1, 2, 3].flatMap((i) => [0, 1, 2].map((j) => box(['x', 'y'][(i + j) % 2] as string, i, j, 1, 1))),
      ),
    ],
    ['rails 3x3 x/y/z', square(3, box('z', 0, 0, 1, 3), box('y', 1, 0, 1, 3), box('x', 2, 0, 1, 3))],
    [
      'corners 4x4 x bottom-left 1 y',
      square(4, patch('x', [0, 0], [3, 0], [4, 1], c, d), patch('y', [3, 0], b, [4, 1])),
    ],
    [
      'corners 4x2 x bottom-right 2 y, bottom-left 2 z',
      buildDrawing(4, 2, [
        patch('x', [2, 0], [4, 2], [0, 2]),
        patch('y', [0, 0], [2, 0], [0, 2]),
        patch('z', [2, 0], [4, 0], [4, 2]),
      ]),
    ],
    [
      'quarter-circle 4x4 3 x/y',
      square(4, patch('x', a, [3, 0], [0, 3, 0, 0]), patch('y', [3, 0, 0, 0], b, c, d, [0, 3])),
    ],
    ['quarter-circle 4x4 4 x/y', square(4, patch('x', b, c, [0, 0, 4, 0]), patch('y', [4, 4, 4, 0], d, a))],
  ];

  test.each(cases)('%s', (key, drawing) => {
    expect(only(pieceDrawing(drawing)).key).toBe(key);
  });

  test('a half-rectangle triangle and its mirror image are kept apart', () => {
    const pair = buildDrawing(8, 2, [
      patch('x', [0, 0], [4, 0], [0, 2]),
      patch('y', [4, 0], [4, 2], [0, 2]),
      patch('x', [4, 0], [8, 0], [8, 2]),
      patch('y', [4, 0], [8, 2], [4, 2]),
    ]);
    expect(pieceDrawing(pair).units.map(({ kind }) => kind)).toEqual(['half-rectangle', 'half-rectangle']);
  });

  test('five triangles that are nothing the trade knows are a pieced unit with seams of its own', () => {
    const odd = square(4, patch('x', a, [1, 0], d), patch('y', [1, 0], b, d), patch('x', b, c, d));
    const pieced = pieceDrawing(odd);
    expect(only(pieced).key).toMatch(/^pieced 4x4 3 patches [0-9a-z]{10}$/);
    expect(pieced.census.full).toBe(2);
  });
});
