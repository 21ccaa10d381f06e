import { turnSize } from '../../../shared/drawing/turn.ts';
import { usualSpans } from '../../../shared/recipe/cellFit.ts';
import type { Cell as Held, Recipe } from '../../../shared/recipe/schema.ts';
import { readRow, type Token } from '../../../shared/recipe/token.ts';
import type { Cell } from '../../parts/lattice/lattice.ts';

/** Cells of a grid that were picked: what stands in them and how large they are. */
export interface PickedCells {
  readonly recipe: Recipe;
  readonly cells: readonly Cell[];
  /** What all of them hold; null when they hold different things. */
  readonly holds: Held | null;
  readonly token: Token | null;
  /** Of the first cell, in grid units, as what it holds lies before it is turned. */
  readonly width: number;
  readonly height: number;
}

/** Null for a recipe that is no grid, and where the layout cannot be read. */
export function pickedCells(recipe: Recipe | undefined, cells: readonly Cell[]): PickedCells | null {
  const spans = recipe === undefined ? null : usualSpans(recipe);
  const [first] = cells;
  if (recipe?.body.kind !== 'grid' || spans === null || first === undefined) return null;
  const { layout, key } = recipe.body;
  const tokens = cells.map(({ column, row }) => readRow(layout[row] ?? '')[column]);
  const [token] = tokens;
  if (token === undefined || typeof token === 'string') return null;
  const alike = tokens.every((one) => typeof one === 'object' && one.name === token.name);
  const [width = 1, height = 1] = [spans.columns[first.column], spans.rows[first.row]];
  const lying = turnSize(width, height, token.turn);
  return { recipe, cells, holds: alike ? (key[token.name] ?? null) : null, token, ...lying };
}
