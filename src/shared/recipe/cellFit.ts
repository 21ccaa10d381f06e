import { same } from '../measure/inches.ts';
import type { Amount, Recipe, UnitCell } from './schema.ts';

const SQUARE: Partial<Readonly<Record<UnitCell['unit'], string>>> = {
  hst: 'A half-square triangle needs a square cell',
  'four-patch': 'A four-patch needs a square cell',
  qst: 'A quarter-square triangle needs a square cell',
  'three-patch': 'A three-patch quarter-square triangle needs a square cell',
  'square-in-square': 'A square in a square needs a square cell',
  'nine-patch': 'A nine-patch needs a square cell',
  'quarter-circle': 'A quarter circle needs a square cell',
};

/** Why a unit cannot fill a cell of this width and height, in words; null when it can. */
export function whyNot(cell: UnitCell, width: number, height: number): string | null {
  const square = same(width, height);
  const needed = SQUARE[cell.unit];
  if (needed !== undefined) return square ? null : needed;
  if (cell.unit === 'geese') return same(width, 2 * height) ? null : 'Flying geese need a cell twice as wide as high';
  if (cell.unit === 'half-rectangle')
    return square ? 'In a square cell, a half-rectangle triangle is a half-square triangle' : null;
  if (cell.unit !== 'checkerboard') return null;
  const { columns, rows } = cell;
  if (columns * rows <= 4) return 'A checkerboard of two by two is a four-patch';
  return same(width / columns, height / rows)
    ? null
    : `The squares of a checkerboard of ${columns} by ${rows} need a cell of that shape`;
}

/**
 * Widths of a grid's columns and heights of its rows in grid units, its parameters as the recipe has them.
 * @returns null when the recipe is no grid, or an amount names no parameter
 */
export function usualSpans(
  recipe: Recipe,
): { readonly columns: readonly number[]; readonly rows: readonly number[] } | null {
  const { body } = recipe;
  if (body.kind !== 'grid') return null;
  const usual = new Map(recipe.parameters.map((parameter) => [parameter.id, parameter.default]));
  const read = (amount: Amount) => (typeof amount === 'number' ? amount : (usual.get(amount) ?? Number.NaN));
  const [columns, rows] = [body.columns.map(read), body.rows.map(read)];
  return [...columns, ...rows].some(Number.isNaN) ? null : { columns, rows };
}
