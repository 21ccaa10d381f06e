import type { Amount, Recipe } from '../recipe/schema.ts';

/**
 * The widths of a grid recipe's columns and the heights of its rows, in the recipe's own grid units.
 * @param parameters values for its parameters; those left out take their defaults
 * @returns null when the recipe is no grid, or a width names no parameter
 */
export function gridSpans(
  recipe: Recipe,
  parameters: Readonly<Record<string, number>>,
): { readonly columns: readonly number[]; readonly rows: readonly number[] } | null {
  const { body } = recipe;
  if (body.kind !== 'grid') return null;
  const usual = new Map(recipe.parameters.map((parameter) => [parameter.id, parameter.default]));
  const read = (amount: Amount) => (typeof amount === 'number' ? amount : (parameters[amount] ?? usual.get(amount)));
  const columns = body.columns.map(read);
  const rows = body.rows.map(read);
  const known = (spans: readonly (number | undefined)[]): spans is readonly number[] => !spans.includes(undefined);
  return known(columns) && known(rows) ? { columns, rows } : null;
}
