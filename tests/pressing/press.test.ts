import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ALL_TURNS, afterTurn, UNTURNED } from '../../src/shared/drawing/turn.ts';
import { lower } from '../../src/shared/piecing/lower.ts';
import type { Unit } from '../../src/shared/piecing/piecing.ts';
import { turnEdged } from '../../src/shared/pressing/ends.ts';
import { press } from '../../src/shared/pressing/press.ts';
import { unitEdges } from '../../src/shared/pressing/unitEdges.ts';
import { starter, starterBook } from '../helpers/starters.ts';
import { checkerboard, ninePatch, rails } from '../piecing/someUnits.ts';

function pressed(id: string) {
  const result = lower(starter(id), {}, starterBook(), '');
  if (!result.ok) throw new Error(id);
  return press(result.value.root, unitEdges(result.value.units));
}

describe('pressing', () => {
  test('the rows of a nine-patch nest at all four of its inner corners', () => {
    const { plan } = pressed('nine-patch');
    expect(plan.nests).toBe(4);
    expect(plan.stacks).toBe(0);
  });

  // Common practice: log cabin seams are pressed away from the centre.
  test('every log of a log cabin is pressed away from the centre', () => {
    const { plan } = pressed('log-cabin');
    expect(plan.parts[0]?.seams.slice(0, 4)).toEqual(['up', 'right', 'down', 'left']);
  });

  test('a nine-patch turned a half meets the one above it with its seams the other way', () => {
    const { edged } = pressed('nine-patch');
    const half = turnEdged(edged, { quarters: 2, mirrored: false });
    expect(edged.ends.top[0]?.press).toBe('right');
    expect(half.ends.top[0]?.press).toBe('left');
    expect(half.ends.bottom[0]?.press).toBe('left');
  });

  test('turning twice is turning once by both', () => {
    const { edged } = pressed('double-four-patch');
    const turns = fc.constantFrom(...ALL_TURNS);
    fc.assert(
      fc.property(turns, turns, (first, second) => {
        expect(turnEdged(turnEdged(edged, first), second)).toEqual(turnEdged(edged, afterTurn(first, second)));
      }),
    );
  });
});

describe('units of equal rectangles', () => {
  const edged = (unit: Unit) =>
    unitEdges([unit])({
      kind: 'unit',
      unit: unit.key,
      turn: UNTURNED,
      box: { x: 0, y: 0, width: 1, height: 1 },
      patches: [],
    });

  test('a nine-patch is pressed to its corners and outwards', () => {
    expect(edged(ninePatch(3)).ends).toEqual({
      top: [
        { at: 1, press: 'left' },
        { at: 2, press: 'right' },
      ],
      bottom: [
        { at: 1, press: 'left' },
        { at: 2, press: 'right' },
      ],
      left: [
        { at: 1, press: 'up' },
        { at: 2, press: 'down' },
      ],
      right: [
        { at: 1, press: 'up' },
        { at: 2, press: 'down' },
      ],
    });
  });

  test('the seams of a checkerboard are pressed to one fabric, so that they lie to and fro along every edge', () => {
    for (const [columns, rows] of [
      [4, 4],
      [3, 5],
      [5, 3],
      [3, 4],
    ] as const) {
      const { left, right } = edged(checkerboard(columns, rows)).ends;
      expect(left.map(({ press }) => press)).toEqual(left.map((_, i) => (i % 2 === 0 ? 'up' : 'down')));
      const starts = (columns - 1) % 2 === 0 ? 'up' : 'down';
      expect(right[0]?.press).toBe(starts);
    }
    const sewnInRows = edged(checkerboard(4, 3)).ends;
    expect(sewnInRows.top.map(({ press }) => press)).toEqual(['left', 'right', 'left']);
    expect(sewnInRows.left.map(({ press }) => press)).toEqual(['down', 'down']);
  });

  test('rails meet their neighbours at both ends of every strip', () => {
    const { ends } = edged(rails(3, 3));
    expect(ends.left.map(({ at }) => at)).toEqual([1, 2]);
    expect(ends.right).toEqual(ends.left);
    expect(ends.top).toEqual([]);
  });
});
