import { describe, expect, test } from 'vitest';
import { buildDrawing } from '../../../src/shared/drawing/build.ts';
import { ALL_TURNS, turnPoint } from '../../../src/shared/drawing/turn.ts';
import { turnDrawing } from '../../../src/shared/drawing/whole.ts';
import { pieceDrawing } from '../../../src/shared/piecing/find/pieceDrawing.ts';
import type { Pin } from '../../../src/shared/piecing/find/pins.ts';
import type { BlockPart, UnitLeaf } from '../../../src/shared/piecing/piecing.ts';
import { leavesOf } from '../../../src/shared/piecing/tree.ts';
import { bearsPaw, box, patch } from './shapes.ts';

const at = (x: number, y: number) => ({ x, y });

/** Two by two rectangles of four fabrics: rows or columns, as one likes. */
const four = () =>
  buildDrawing(6, 4, [box('a', 0, 0, 2, 1), box('b', 2, 0, 4, 1), box('c', 0, 1, 2, 3), box('d', 2, 1, 4, 3)]);

function widths(part: BlockPart): readonly number[] {
  return part.kind === 'row' ? part.parts.map(({ box: { width } }) => width) : [];
}

describe('what the designer pins', () => {
  test('a seam that is pinned is the last one of its part, either way it runs', () => {
    const upright = pieceDrawing(four(), { pins: [{ first: [at(2, 0), at(2, 4)] }] });
    expect(upright.root).toMatchObject({ kind: 'row', along: 'across' });
    expect(widths(upright.root)).toEqual([2, 4]);
    const level = pieceDrawing(four(), { pins: [{ first: [at(6, 1), at(0, 1)] }] });
    expect(level.root).toMatchObject({ kind: 'row', along: 'down' });
    expect([upright.findings, level.findings]).toEqual([[], []]);
  });

  test('both sides of it are made first, even when they are rows the same way', () => {
    const strips = buildDrawing(
      6,
      2,
      [0, 1, 2, 3, 4, 5].map((x) => box(`role-${x % 3}`, x, 0, 1, 2)),
    );
    const { root } = pieceDrawing(strips, { pins: [{ first: [at(3, 0), at(3, 2)] }] });
    expect(widths(root)).toEqual([3, 3]);
  });

  test('a part that is pinned is one unit, and is made as it says', () => {
    const squares = buildDrawing(
      4,
      4,
      [0, 1, 2, 3].flatMap((x) => [0, 1, 2, 3].map((y) => box((x + y) % 2 === 0 ? 'a' : 'b', x, y, 1, 1))),
    );
    const pins: Pin[] = [{ unit: [at(0, 0), at(2, 2)], method: 'four-patch-squares' }];
    const { root, units } = pieceDrawing(squares, { pins });
    const leaf = leavesOf<UnitLeaf>(root).find(({ box: place }) => place.x === 0 && place.y === 0);
    expect(leaf?.box).toEqual({ x: 0, y: 0, width: 2, height: 2 });
    expect(units.find(({ key }) => key === leaf?.unit)).toMatchObject({
      kind: 'four-patch',
      method: 'four-patch-squares',
    });
  });

  test('a slanting seam can be pinned inside a unit of its own', () => {
    const kite = buildDrawing(4, 4, [
      patch('a', [0, 0], [4, 0], [2, 2]),
      patch('b', [4, 0], [4, 4], [2, 2]),
      patch('c', [4, 4], [0, 4], [1, 3], [2, 2]),
      patch('d', [0, 4], [0, 0], [1, 3]),
      patch('e', [0, 0], [2, 2], [1, 3]),
    ]);
    for (const first of [
      [at(0, 0), at(4, 4)],
      [at(4, 0), at(0, 4)],
    ] as const) {
      const { findings, census } = pieceDrawing(kite, { pins: [{ first }] });
      expect(census.full).toBe(4);
      expect(findings).toEqual([]);
    }
  });

  test('a pin that no plan can keep is told with its place, and the rest is kept', () => {
    const pins: Pin[] = [
      { first: [at(0, 0), at(3, 4)] },
      { first: [at(2, 0), at(2, 4)] },
      { unit: [at(1, 0), at(3, 1)] },
    ];
    const { root, findings } = pieceDrawing(four(), { pins, path: 'recipes[0].body' });
    expect(widths(root)).toEqual([2, 4]);
    expect(findings.map(({ where, level }) => `${level} ${where.path}`)).toEqual([
      'look recipes[0].body.pins[0]',
      'look recipes[0].body.pins[2]',
    ]);
  });

  test('pins turn with the drawing', () => {
    for (const turn of ALL_TURNS) {
      const place = (x: number, y: number) => turnPoint(at(x, y), turn, 7, 7);
      const pins: Pin[] = [{ first: [place(3, 0), place(3, 7)] }, { unit: [place(4, 0), place(7, 3)] }];
      const { root, findings } = pieceDrawing(turnDrawing(bearsPaw(), turn), { pins });
      expect(findings).toEqual([]);
      const sizes = leavesOf<UnitLeaf>(root).filter(({ box: { width, height } }) => width === 3 && height === 3);
      expect(sizes).toHaveLength(1);
    }
  });
});
