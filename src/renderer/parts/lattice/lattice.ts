import type { Box, Point } from '../../../shared/drawing/turn.ts';
import type { Cell } from '../../state/selection.ts';

export type { Cell };

/** Columns and rows by their edges, in the units of what is drawn; cell (c, r) lies between edges c and c + 1, r and r + 1. */
export interface Lattice {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
}

/** The edges of spans laid one after another from `start`. */
export function edges(start: number, spans: readonly number[]): readonly number[] {
  let at = start;
  return [start, ...spans.map((span) => (at += span))];
}

/** A lattice of equal cells. */
export function evenLattice(origin: Point, columns: number, rows: number, width: number, height: number): Lattice {
  return {
    xs: Array.from({ length: columns + 1 }, (_, i) => origin.x + i * width),
    ys: Array.from({ length: rows + 1 }, (_, i) => origin.y + i * height),
  };
}

export function columnsOf(lattice: Lattice): number {
  return lattice.xs.length - 1;
}

export function rowsOf(lattice: Lattice): number {
  return lattice.ys.length - 1;
}

export function sameCell(a: Cell, b: Cell): boolean {
  return a.column === b.column && a.row === b.row;
}

export function hasCell(cells: readonly Cell[], cell: Cell): boolean {
  return cells.some((one) => sameCell(one, cell));
}

/** The box of a cell. */
export function cellBox(lattice: Lattice, cell: Cell): Box {
  const { xs, ys } = lattice;
  const [x = 0, right = x] = [xs[cell.column], xs[cell.column + 1]];
  const [y = 0, bottom = y] = [ys[cell.row], ys[cell.row + 1]];
  return { x, y, width: right - x, height: bottom - y };
}

function spanAt(edgeList: readonly number[], at: number): number {
  return edgeList.findIndex((edge, i) => at >= edge && at < (edgeList[i + 1] ?? Number.NEGATIVE_INFINITY));
}

/** The cell under a point, or null outside them all. */
export function cellAt(lattice: Lattice, point: Point): Cell | null {
  const column = spanAt(lattice.xs, point.x);
  const row = spanAt(lattice.ys, point.y);
  return column < 0 || row < 0 ? null : { column, row };
}

function spansWithin(edgeList: readonly number[], from: number, to: number): readonly number[] {
  const spans = edgeList.slice(0, -1).map((_, i) => i);
  return spans.filter((i) => (edgeList[i] ?? 0) < to && (edgeList[i + 1] ?? 0) > from);
}

/** Every cell that a box drawn from one point to another touches. */
export function cellsWithin(lattice: Lattice, a: Point, b: Point): readonly Cell[] {
  const columns = spansWithin(lattice.xs, Math.min(a.x, b.x), Math.max(a.x, b.x));
  const rows = spansWithin(lattice.ys, Math.min(a.y, b.y), Math.max(a.y, b.y));
  return rows.flatMap((row) => columns.map((column) => ({ column, row })));
}

/** Every cell of the rectangle that has these two at its corners. */
export function cellsBetween(a: Cell, b: Cell): readonly Cell[] {
  const columns = count(a.column, b.column);
  return count(a.row, b.row).flatMap((row) => columns.map((column) => ({ column, row })));
}

function count(a: number, b: number): readonly number[] {
  const first = Math.min(a, b);
  return Array.from({ length: Math.abs(a - b) + 1 }, (_, i) => first + i);
}

/** Every cell there is. */
export function allCells(lattice: Lattice): readonly Cell[] {
  return cellsBetween({ column: 0, row: 0 }, { column: columnsOf(lattice) - 1, row: rowsOf(lattice) - 1 });
}

/** The cells with this one taken in, or left out when it was in. */
export function toggled(cells: readonly Cell[], cell: Cell): readonly Cell[] {
  return hasCell(cells, cell) ? cells.filter((one) => !sameCell(one, cell)) : [...cells, cell];
}

const STEPS: Readonly<Record<string, (cell: Cell, last: Cell) => Cell>> = {
  ArrowLeft: ({ column, row }) => ({ column: column - 1, row }),
  ArrowRight: ({ column, row }) => ({ column: column + 1, row }),
  ArrowUp: ({ column, row }) => ({ column, row: row - 1 }),
  ArrowDown: ({ column, row }) => ({ column, row: row + 1 }),
  Home: ({ row }) => ({ column: 0, row }),
  End: ({ row }, last) => ({ column: last.column, row }),
  PageUp: ({ column }) => ({ column, row: 0 }),
  PageDown: ({ column }, last) => ({ column, row: last.row }),
};

/** The cell a key leads to, kept inside; null when the key does not move. */
export function steppedBy(lattice: Lattice, cell: Cell, key: string): Cell | null {
  const step = STEPS[key];
  if (step === undefined) return null;
  const last = { column: columnsOf(lattice) - 1, row: rowsOf(lattice) - 1 };
  return within(step(cell, last), last);
}

/** The cell itself, or the nearest one inside. */
export function within(cell: Cell, last: Cell): Cell {
  const hold = (value: number, most: number) => Math.max(0, Math.min(most, value));
  return {
    column: hold(cell.column, last.column),
    row: hold(cell.row, last.row),
  };
}
