import type { Contract } from '../../shared/contract.ts';
import { blockFigure } from '../../shared/diagrams/blockFigure.ts';
import type { Figure, Ink } from '../../shared/diagrams/figure.ts';
import { inksFor } from '../../shared/diagrams/hatches.ts';
import { quiltFigure } from '../../shared/diagrams/quiltFigure.ts';
import { fabricsForRoles } from '../../shared/pattern/fresh.ts';
import { heldBy } from '../../shared/pattern/recipes.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import { lower } from '../../shared/piecing/lower.ts';
import { layOut } from '../../shared/quilt/layOut.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';
import { workBlocks } from '../../shared/workroom/workBlocks.ts';

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
  const figure = quiltFigure(laid.value, blocks, { borders: true, edges: 'none', name: pattern.title });
  return { figure, inks: inksFor(pattern.fabrics) };
}

/** Every recipe this one holds, directly or through others, asked of the host; those that are gone are left out. */
export async function gatherHeld(host: Contract, recipe: Recipe): Promise<readonly Recipe[]> {
  const found = new Map<string, Recipe | null>([[recipe.id, null]]);
  const open = [...heldBy(recipe)];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (found.has(id)) continue;
    const held = await host.openRecipe(id).catch(() => null);
    found.set(id, held);
    if (held !== null) open.push(...heldBy(held));
  }
  return [...found.values()].filter((held) => held !== null);
}

/** A recipe's block, its roles in colours of their own values; null when it cannot be drawn. */
export function drawRecipe(recipe: Recipe, held: readonly Recipe[]): Drawn | null {
  const lowered = lower(recipe, {}, new Map([recipe, ...held].map((one) => [one.id, one])), '');
  if (!lowered.ok) return null;
  const fabrics = fabricsForRoles(recipe.roles);
  const fabricOf = Object.fromEntries(fabrics.map(({ id }) => [id, id]));
  const grid = 1 / Math.max(lowered.value.drawing.width, lowered.value.drawing.height);
  const figure = blockFigure(lowered.value, grid, fabricOf, { name: recipe.name });
  return { figure, inks: inksFor(fabrics) };
}
