import { type TakenRecipe, takeRecipe } from '../../shared/pattern/edits/index.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';
import { giveFile } from '../parts/giveFile.ts';
import type { Studio } from '../state/studio.ts';
import { attempt } from './patternActs.ts';
import { searchFor, type Wishes } from './wishes.ts';

/** Removes a recipe of the house; patterns that use it carry their own. A note offers the way back. */
export async function removeRecipe(studio: Studio, recipe: Recipe, again: () => void): Promise<void> {
  await attempt(studio, async () => {
    await studio.host.removeRecipe(recipe.id);
    again();
    const run = () => void attempt(studio, () => studio.host.saveRecipe(recipe)).then(again);
    studio.say(`“${recipe.name}” is removed.`, { act: { label: 'Put it back', run } });
  });
}

/** The recipes and all they hold as a file, for keeping elsewhere or for somebody else. */
export async function giveRecipes(studio: Studio, ids: readonly string[]): Promise<void> {
  await attempt(studio, async () => {
    const { name, text } = await studio.host.exportRecipes(ids);
    giveFile({ name, type: 'application/json', parts: [text] });
  });
}

/** Every recipe that was found, not only those in sight, as one file. */
export async function giveFound(studio: Studio, wishes: Wishes): Promise<void> {
  await attempt(studio, async () => {
    const found = await studio.host.recipes(searchFor(wishes));
    await giveRecipes(
      studio,
      found.map(({ id }) => id),
    );
  });
}

/** Keeps a recipe in the library as its newest revision. */
export async function keepRecipe(studio: Studio, recipe: Recipe, again: () => void): Promise<void> {
  await attempt(studio, async () => {
    const { revision } = await studio.host.saveRecipe(recipe);
    again();
    studio.say(`“${recipe.name}” is in the library, revision ${revision}.`);
  });
}

/** Takes the library's recipe into the open pattern; undo takes it back by name. */
export function takeIntoPattern(studio: Studio, taken: TakenRecipe): void {
  studio.act(takeRecipe, taken);
}
