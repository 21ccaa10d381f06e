import { describe, expect, it } from 'vitest';
import {
  allCells,
  cellAt,
  cellBox,
  cellsBetween,
  cellsWithin,
  edges,
  evenLattice,
  steppedBy,
  toggled,
} from '../../../src/renderer/parts/lattice/lattice.ts';

const quilt = evenLattice({ x: 6, y: 6 }, 3, 4, 12, 12);

describe('the blocks of a quilt as a lattice', () => {
  it('finds the block under a point and none in the border', () => {
    expect(cellAt(quilt, { x: 6, y: 6 })).toEqual({ column: 0, row: 0 });
    expect(cellAt(quilt, { x: 41.9, y: 53.9 })).toEqual({ column: 2, row: 3 });
    expect(cellAt(quilt, { x: 3, y: 20 })).toBeNull();
    expect(cellAt(quilt, { x: 42, y: 20 })).toBeNull();
  });

  it('takes every block that a drawn box touches, whichever corner it began at', () => {
    const four = [
      { column: 0, row: 0 },
      { column: 1, row: 0 },
      { column: 0, row: 1 },
      { column: 1, row: 1 },
    ];
    expect(cellsWithin(quilt, { x: 10, y: 10 }, { x: 20, y: 20 })).toEqual(four);
    expect(cellsWithin(quilt, { x: 20, y: 10 }, { x: 10, y: 20 })).toEqual(four);
  });

  it('moves by the keys and stops at the edge', () => {
    expect(steppedBy(quilt, { column: 0, row: 0 }, 'ArrowLeft')).toEqual({
      column: 0,
      row: 0,
    });
    expect(steppedBy(quilt, { column: 0, row: 0 }, 'ArrowDown')).toEqual({
      column: 0,
      row: 1,
    });
    expect(steppedBy(quilt, { column: 0, row: 1 }, 'End')).toEqual({
      column: 2,
      row: 1,
    });
    expect(steppedBy(quilt, { column: 0, row: 1 }, 'x')).toBeNull();
  });

  it('spans a rectangle from one block to another', () => {
    expect(cellsBetween({ column: 2, row: 1 }, { column: 1, row: 0 })).toHaveLength(4);
    expect(allCells(quilt)).toHaveLength(12);
  });

  it('takes a block in and leaves it out again', () => {
    const one = { column: 1, row: 1 };
    expect(toggled([], one)).toEqual([one]);
    expect(toggled([one], { column: 1, row: 1 })).toEqual([]);
  });
});

describe('a grid recipe with uneven columns', () => {
  it('gives each cell its own box', () => {
    const grid = { xs: edges(0, [1, 2, 1]), ys: edges(0, [2, 2]) };
    expect(cellBox(grid, { column: 1, row: 1 })).toEqual({
      x: 1,
      y: 2,
      width: 2,
      height: 2,
    });
  });
});
