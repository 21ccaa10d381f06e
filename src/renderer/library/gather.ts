import type { Contract, KeptRecipe } from '../../shared/contract.ts';
import { heldBy } from '../../shared/pattern/recipes.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';

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
