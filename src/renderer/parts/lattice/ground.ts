import type { Box, Point } from '../../../shared/drawing/turn.ts';
import {
  allCells,
  type Cell,
  cellAt,
  cellBox,
  cellsBetween,
  cellsWithin,
  columnsOf,
  type Lattice,
  rowsOf,
  steppedBy,
  within,
} from './lattice.ts';

/** Where a cell lies: a box, and how far it is turned about its middle, degrees clockwise. */
export interface Lying {
  readonly box: Box;
  readonly tilt?: number;
}

/** Cells that can be picked, however they lie. */
export interface Ground {
  readonly columns: number;
  readonly rows: number;
  readonly at: (point: Point) => Cell | null;
  /** Every cell that a box drawn from one point to another touches. */
  readonly touching: (a: Point, b: Point) => readonly Cell[];
  /** Every cell of the rectangle that has these two at its corners. */
  readonly between: (a: Cell, b: Cell) => readonly Cell[];
  readonly all: () => readonly Cell[];
  /** The cell a key leads to; null when the key does not move. */
  readonly step: (cell: Cell, key: string) => Cell | null;
  /** The cell itself, or the nearest there is. */
  readonly hold: (cell: Cell) => Cell;
  readonly lie: (cell: Cell) => Lying | null;
}

/** The ground of columns and rows. */
export function latticeGround(lattice: Lattice): Ground {
  const last = { column: columnsOf(lattice) - 1, row: rowsOf(lattice) - 1 };
  return {
    columns: columnsOf(lattice),
    rows: rowsOf(lattice),
    at: (point) => cellAt(lattice, point),
    touching: (a, b) => cellsWithin(lattice, a, b),
    between: cellsBetween,
    all: () => allCells(lattice),
    step: (cell, key) => steppedBy(lattice, cell, key),
    hold: (cell) => within(cell, last),
    lie: (cell) => ({ box: cellBox(lattice, cell) }),
  };
}
