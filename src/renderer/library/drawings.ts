import type { Contract, KeptRecipe } from '../../shared/contract.ts';
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
export async function gatherKept(host: Contract, recipe: Recipe): Promise<readonly KeptRecipe[]> {
  const found = new Map<string, KeptRecipe>();
  let wanted = heldBy(recipe);
  while (wanted.length > 0) {
    const kept = await host.keptRecipes(wanted);
    for (const one of kept) found.set(one.recipe.id, one);
    const held = new Set(kept.flatMap((one) => heldBy(one.recipe)));
    wanted = [...held].filter((id) => id !== recipe.id && !found.has(id));
  }
  return [...found.values()];
}

/** The recipes alone. */
export async function gatherHeld(host: Contract, recipe: Recipe): Promise<readonly Recipe[]> {
  return (await gatherKept(host, recipe)).map((kept) => kept.recipe);
}

/** The library's revision of each of these, by id. */
export function revisionsOf(kept: readonly KeptRecipe[]): Readonly<Record<string, number>> {
  return Object.fromEntries(kept.map(({ recipe, revision }) => [recipe.id, revision]));
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
