import { blockFigure } from '../../../shared/diagrams/blockFigure.ts';
import type { Figure, Ink } from '../../../shared/diagrams/figure.ts';
import { inksFor } from '../../../shared/diagrams/hatches.ts';
import { quiltFigure } from '../../../shared/diagrams/quiltFigure.ts';
import { unitsOn } from '../../../shared/measure/metric.ts';
import { fabricsForRoles } from '../../../shared/pattern/fresh.ts';
import type { Pattern } from '../../../shared/pattern/schema.ts';
import { lower } from '../../../shared/piecing/lower.ts';
import { layOut } from '../../../shared/quilt/layOut.ts';
import type { Recipe } from '../../../shared/recipe/schema.ts';
import { workBlocks } from '../../../shared/workroom/workBlocks.ts';

/** A figure and the colours it is drawn in. */
export interface Drawn {
  readonly figure: Figure;
  readonly inks: readonly Ink[];
}

/** A pattern's quilt in its middle size, drawn small; null when none of it can be laid out. */
export function drawPattern(pattern: Pattern): Drawn | null {
  const { blocks } = workBlocks(pattern);
  const index = Math.floor((pattern.sizes.length - 1) / 2);
  const size = pattern.sizes[index];
  if (size === undefined || blocks.length < pattern.blocks.length) return null;
  const laid = layOut(pattern, size, new Map(blocks.map(({ id, piecing }) => [id, piecing])), `sizes[${index}]`);
  if (!laid.ok) return null;
  const figure = quiltFigure(laid.value, blocks, {
    borders: true,
    edges: 'none',
    name: pattern.title,
    units: unitsOn(pattern.house.step),
  });
  return { figure, inks: inksFor(pattern.fabrics) };
}

/** A recipe's block, its roles in colours of their own values; null when it cannot be drawn. */
export function drawRecipe(recipe: Recipe, held: readonly Recipe[]): Drawn | null {
  const lowered = lower(recipe, {}, new Map([...held, recipe].map((one) => [one.id, one])), '');
  if (!lowered.ok) return null;
  const fabrics = fabricsForRoles(recipe.roles);
  const fabricOf = Object.fromEntries(fabrics.map(({ id }) => [id, id]));
  const grid = 1 / Math.max(lowered.value.drawing.width, lowered.value.drawing.height);
  const figure = blockFigure(lowered.value, grid, fabricOf, { name: recipe.name });
  return { figure, inks: inksFor(fabrics) };
}
