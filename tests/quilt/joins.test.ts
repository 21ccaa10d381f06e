import { describe, expect, test } from 'vitest';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { distinctJoins, turnedBlocks } from '../../src/shared/quilt/joins.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';

const ebb = testPattern('ebb');
const base: Pattern = {
  ...ebb,
  borders: [],
  sizes: [{ id: 'only', name: 'Only', across: 4, down: 4, block: 6, borders: {} }],
};

function quiltOf(motif: string[]) {
  const pattern: Pattern = { ...base, setting: { kind: 'straight', motif, single: [] } };
  const [one] = workOut(pattern).sizes;
  if (one === undefined) throw new Error('not laid out');
  return { quilt: one.quilt, setting: pattern.setting };
}

describe('joins of blocks', () => {
  test('of one block that always lies the same way there are two: side to side and end to end', () => {
    const { quilt, setting } = quiltOf(['A']);
    expect(distinctJoins(quilt, setting)).toBe(2);
    expect(turnedBlocks(quilt)).toEqual([{ block: 'A', turn: { quarters: 0, mirrored: false }, count: 16 }]);
  });

  // A checkerboard: A’s right to B’s left and B’s right to A’s left, and the same up and down.
  test('of two blocks in turn there are four', () => {
    const { quilt, setting } = quiltOf(['A B', 'B A']);
    expect(distinctJoins(quilt, setting)).toBe(4);
  });

  test('on point, blocks between join those at the edges on all four sides', () => {
    const pattern: Pattern = {
      ...base,
      setting: { kind: 'on-point', motif: ['A'], between: ['B'], single: [], triangles: { fabric: 'sand' } },
    };
    const [one] = workOut(pattern).sizes;
    if (one === undefined) throw new Error('not laid out');
    expect(distinctJoins(one.quilt, pattern.setting)).toBe(4);
    const counts = turnedBlocks(one.quilt).map(({ block, count }) => [block, count]);
    expect(counts).toEqual([
      ['A', 16],
      ['B', 9],
    ]);
  });
});
