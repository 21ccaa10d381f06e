import { describe, expect, it } from 'vitest';
import { quiltGround } from '../../../src/renderer/quilt/quiltGround.ts';
import type { Pattern } from '../../../src/shared/pattern/schema.ts';
import { workOut } from '../../../src/shared/workroom/workOut.ts';
import { testPattern } from '../../helpers/fixtures.ts';

const ebb: Pattern = {
  ...testPattern('ebb'),
  borders: [],
  sizes: [{ id: 'only', name: 'Only', across: 3, down: 3, block: 6, borders: {} }],
};

function groundOf(setting: Pattern['setting']) {
  const [one] = workOut({ ...ebb, setting }).sizes;
  if (one === undefined) throw new Error('not laid out');
  return quiltGround(one.quilt);
}

const straight = groundOf({ kind: 'straight', motif: ['A'], single: [] });
// Blocks of 6 on point are 8.485 across their corners; three of them and the two between make 13 places in five rows.
const onPoint = groundOf({ kind: 'on-point', motif: ['A'], single: [], triangles: { fabric: 'sand', fit: 'exact' } });

describe('the blocks of a quilt as cells to pick', () => {
  it('are found under a point in rows and columns', () => {
    expect(straight.at({ x: 7, y: 13 })).toEqual({ column: 1, row: 2 });
    expect(straight.at({ x: 19, y: 1 })).toBeNull();
  });

  it('are found under a point on point: the middle of the first, the first between, and nothing in a corner', () => {
    const half = 6 * Math.SQRT1_2;
    expect(onPoint.at({ x: half, y: half })).toEqual({ column: 0, row: 0 });
    expect(onPoint.at({ x: 2 * half, y: 2 * half })).toEqual({ column: 0, row: 1 });
    expect(onPoint.at({ x: 0.5, y: 0.5 })).toBeNull();
    expect(onPoint.all()).toHaveLength(13);
  });

  it('are all reached by the arrow keys, on point too', () => {
    const seen = new Set<string>();
    let row = onPoint.hold({ column: 0, row: 0 });
    for (let r = 0; r < onPoint.rows; r += 1) {
      let cell = onPoint.step(row, 'Home') ?? row;
      for (let c = 0; c < onPoint.columns; c += 1) {
        seen.add(`${cell.column} ${cell.row}`);
        cell = onPoint.step(cell, 'ArrowRight') ?? cell;
      }
      row = onPoint.step(row, 'ArrowDown') ?? row;
    }
    expect(seen.size).toBe(13);
  });

  it('are taken by a box that touches them, slanting or not', () => {
    const half = 6 * Math.SQRT1_2;
    // From the middle of the first to just inside the one between: these two, and no third.
    const two = onPoint.touching({ x: half, y: half }, { x: 1.6 * half, y: 1.6 * half });
    expect(two).toEqual([
      { column: 0, row: 0 },
      { column: 0, row: 1 },
    ]);
    expect(straight.touching({ x: 5, y: 5 }, { x: 7, y: 7 })).toHaveLength(4);
  });

  it('are taken from one to another: those whose middles lie between', () => {
    expect(straight.between({ column: 2, row: 1 }, { column: 0, row: 0 })).toHaveLength(6);
    // Corner to corner of three by three on point: every block.
    expect(onPoint.between({ column: 0, row: 0 }, { column: 2, row: 4 })).toHaveLength(13);
  });

  it('in strips shifted by half a block, those cut off at the ends count', () => {
    const strips = groundOf({ kind: 'strips', run: 'columns', shift: '1/2', motif: ['A'], single: [] });
    // Three whole, two whole and two halves, three whole.
    expect(strips.all()).toHaveLength(3 + 4 + 3);
    expect(strips.at({ x: 7, y: 1 })).toEqual({ column: 1, row: 0 });
  });
});
