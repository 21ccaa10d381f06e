import { describe, expect, test } from 'vitest';
import { buildDrawing } from '../../../src/shared/drawing/build.ts';
import { pieceDrawing } from '../../../src/shared/piecing/find/pieceDrawing.ts';
import { joinsOf, patchesOf } from '../../../src/shared/piecing/seamTree.ts';
import { leavesOf } from '../../../src/shared/piecing/tree.ts';
import { box, patch } from './shapes.ts';

describe('where straight full seams will not do', () => {
  test.each([
    ['clockwise', [box('a', 0, 0, 2, 1), box('b', 2, 0, 1, 2), box('a', 1, 2, 2, 1), box('b', 0, 1, 1, 2)], 'right'],
    ['anticlockwise', [box('a', 1, 0, 2, 1), box('b', 2, 1, 1, 2), box('a', 0, 2, 2, 1), box('b', 0, 0, 1, 2)], 'left'],
  ])('four strips %s about a square are a ring with one partial seam', (_, strips, second) => {
    const { root, census } = pieceDrawing(buildDrawing(3, 3, [...strips, box('c', 1, 1, 1, 1)]));
    if (root.kind !== 'ring') throw new Error(`It was sewn as ${root.kind}`);
    const order = ['top', 'right', 'bottom', 'left'];
    const sides = root.logs.map(({ side }) => order.indexOf(side));
    const step = second === 'right' ? 1 : 3;
    sides.forEach((side, i) => {
      expect((sides[(i + 1) % 4] as number) % 4).toBe((side + step) % 4);
    });
    expect(census).toEqual({ full: 3, partial: 1, setIn: 0, curved: 0 });
  });

  test('the arms of a ring and its core are pieced as anything else is', () => {
    const patches = [
      box('a', 0, 0, 4, 1),
      box('b', 0, 1, 4, 1),
      box('c', 4, 0, 2, 4),
      box('a', 2, 4, 4, 2),
      box('b', 0, 2, 2, 4),
      box('c', 2, 2, 2, 1),
      patch('a', [2, 3], [4, 3], [2, 4]),
      patch('b', [4, 3], [4, 4], [2, 4]),
    ];
    const { root, units, census } = pieceDrawing(buildDrawing(6, 6, patches));
    expect(root.kind).toBe('ring');
    expect(census.partial).toBe(1);
    expect(units.map(({ kind }) => kind).sort()).toEqual([
      'half-rectangle',
      'plain',
      'plain',
      'plain',
      'plain',
      'rails',
    ]);
  });

  test('no ring is made where a slanting seam runs from corner to corner', () => {
    // A ring of four arms about a square, and a diagonal through all of it that sews it without a partial seam.
    const patches = [
      patch('a', [0, 0], [2, 0], [2, 1], [1, 1]),
      patch('b', [0, 0], [1, 1], [0, 1]),
      patch('c', [1, 1], [2, 1], [2, 2]),
      patch('d', [1, 1], [2, 2], [1, 2]),
      patch('e', [2, 0], [3, 0], [3, 2], [2, 2]),
      patch('f', [0, 1], [1, 1], [1, 3], [0, 3]),
      patch('g', [1, 2], [2, 2], [3, 3], [1, 3]),
      patch('h', [2, 2], [3, 2], [3, 3]),
    ];
    const { units, census } = pieceDrawing(buildDrawing(3, 3, patches));
    expect(units.map(({ kind }) => kind)).toEqual(['pieced']);
    expect(census).toEqual({ full: 7, partial: 0, setIn: 0, curved: 0 });
  });

  test('a pinwheel of slanting arms is a ring too, inside a unit of its own', () => {
    // Four seams, each a quarter turn about (5, 5) from the one before: the first runs from (3, 0) down to the fourth, which
    // comes from (0, 7), and meets it 16/13 along the direction (1, 5).
    const turned = ([x, y]: readonly [number, number]): readonly [number, number] => [10 - y, x];
    const around = (first: readonly [number, number]) => {
      const second = turned(first);
      const third = turned(second);
      return [first, second, third, turned(third)] as const;
    };
    const ends = around([3 + 16 / 13, 80 / 13]);
    const starts = around([3, 0]);
    const corners = around([0, 0]);
    const arms = [0, 1, 2, 3].map((i) =>
      patch('arm', corners[i] ?? [], starts[i] ?? [], ends[i] ?? [], starts[(i + 3) % 4] ?? []),
    );
    const patches = [patch('core', ...ends), ...arms];
    const { units, census } = pieceDrawing(buildDrawing(10, 10, patches));
    expect(units.map(({ kind }) => kind)).toEqual(['pieced']);
    expect(census).toEqual({ full: 3, partial: 1, setIn: 0, curved: 0 });
    const [unit] = units;
    const joins = unit?.kind === 'pieced' ? joinsOf(unit.seams) : [];
    expect(joins.map(({ sewn }) => sewn)).toEqual(['partial', 'full', 'full', 'full']);
    expect(joins.at(-1)?.closing?.length).toBeGreaterThan(1);
  });

  test('a mitred corner is set in', () => {
    const patches = [
      box('window', 1, 0, 3, 3),
      patch('side', [0, 0], [1, 0], [1, 3], [0, 4]),
      patch('sill', [1, 3], [4, 3], [4, 4], [0, 4]),
    ];
    expect(pieceDrawing(buildDrawing(4, 4, patches)).census).toEqual({ full: 1, partial: 0, setIn: 1, curved: 0 });
  });

  test('arcs are curved seams, and a leaf between two arcs takes two of them', () => {
    const melon = [
      patch('leaf', [4, 0, 4, 4], [2.828427, 2.828427, 0, 0], [0, 4, 0, 0], [1.171573, 1.171573, 4, 4]),
      patch('ground', [0, 0], [4, 0], [1.171573, 1.171573, 4, 4], [0, 4, 4, 4]),
      patch('ground', [4, 4], [0, 4], [2.828427, 2.828427, 0, 0], [4, 0, 0, 0]),
    ];
    const { census, findings } = pieceDrawing(buildDrawing(4, 4, melon));
    expect(census).toEqual({ full: 0, partial: 0, setIn: 0, curved: 2 });
    expect(findings.map(({ what }) => what)).toEqual([expect.stringMatching(/^2 seams are curved/)]);
  });

  test('a seam tree holds every patch once and sews every inner edge once', () => {
    const spool = [
      patch('spool', [0, 0], [3, 0], [2, 1], [1, 1]),
      patch('ground', [3, 0], [3, 3], [2, 2], [2, 1]),
      patch('spool', [3, 3], [0, 3], [1, 2], [2, 2]),
      patch('ground', [0, 3], [0, 0], [1, 1], [1, 2]),
      box('thread', 1, 1, 1, 1),
    ];
    const { units, root, census } = pieceDrawing(buildDrawing(3, 3, spool));
    const [unit] = units;
    if (unit?.kind !== 'pieced') throw new Error('A spool is no unit of the trade');
    expect([...patchesOf(unit.seams)].sort()).toEqual([0, 1, 2, 3, 4]);
    const sewn = joinsOf(unit.seams).flatMap(({ seam }) =>
      seam.slice(1).map((b, i) => [seam[i] ?? 0, b].sort().join()),
    );
    expect(new Set(sewn).size).toBe(sewn.length);
    expect(sewn).toHaveLength(8);
    expect(census.setIn).toBeGreaterThan(0);
    expect(leavesOf(root)).toHaveLength(1);
  });
});
