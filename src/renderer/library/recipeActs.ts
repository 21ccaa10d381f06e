import type { Recipe } from '../../shared/recipe/schema.ts';
import type { Studio } from '../state/studio.ts';
import { attempt } from './patternActs.ts';

/** Removes a recipe of the house; patterns that use it carry their own. A note offers the way back. */
export async function removeRecipe(studio: Studio, recipe: Recipe, again: () => void): Promise<void> {
  await attempt(studio, async () => {
    await studio.host.removeRecipe(recipe.id);
    again();
    const run = () => void attempt(studio, () => studio.host.saveRecipe(recipe)).then(again);
    studio.say(`“${recipe.name}” is removed.`, { act: { label: 'Put it back', run } });
  });
}
