import type { KeptRecipe, RecipeCard, RecipeRevision } from '../../shared/contract.ts';
import { documentText, recipesText } from '../../shared/pattern/save.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';
import { facetRules } from '../../shared/workroom/recipeFacets.ts';
import type { Reader } from '../reader.ts';
import type { RecipeQuery } from '../store/keptRecipe.ts';
import type { Store } from '../store/store.ts';
import { gone, sound } from './documents.ts';
import { bookFor } from './held.ts';
import type { RecipeWork } from './recipeWork.ts';

/** The calls of the contract that keep and find recipes, for inputs that have been checked. */
export interface RecipeCalls {
  find(search: RecipeQuery): Promise<readonly RecipeCard[]>;
  count(search: RecipeQuery): Promise<number>;
  open(id: string): Recipe;
  kept(ids: readonly string[]): readonly KeptRecipe[];
  revisions(id: string): readonly RecipeRevision[];
  save(recipe: Recipe): { readonly revision: number };
  remove(id: string): void;
  /** Begins no more work by itself. */
  close(): void;
  /** The recipes and all they hold as a file. */
  give(ids: readonly string[]): { readonly name: string; readonly text: string };
}

/** How long after a start the host begins to work out what recipes are filtered by, where it does not know yet, milliseconds. */
const AFTER_START = 500;

export function makeRecipes(store: Store, reader: Reader, work: RecipeWork): RecipeCalls {
  const rules = facetRules();
  const ready = async () => {
    if (store.recipes.facets.left(rules) > 0) await work.ready();
  };
  // What goes wrong here, goes wrong again and is told when a search waits for it.
  const timer = setTimeout(() => void ready().catch(() => {}), AFTER_START);
  timer.unref();

  const open = (id: string): Recipe => {
    const kept = store.recipes.read(id);
    if (kept === null) throw gone('recipe', id);
    return sound(reader.recipe(kept.body));
  };
  return {
    async find(search) {
      if ((search.facets ?? []).length > 0) await ready();
      return store.recipes.find(search).map(({ body, ...found }) => cardOf(found, sound(reader.recipe(body))));
    },
    async count(search) {
      if ((search.facets ?? []).length > 0) await ready();
      return store.recipes.count(search);
    },
    open,
    close: () => clearTimeout(timer),
    kept: (ids) =>
      [...new Set(ids)].flatMap((id) => {
        const kept = store.recipes.read(id);
        return kept === null ? [] : [{ recipe: sound(reader.recipe(kept.body)), revision: kept.revision }];
      }),
    revisions: (id) =>
      store.recipes.revisions(id).map(({ revision, changed, body }) => {
        return { revision, changed, recipe: sound(reader.recipe(body)) };
      }),
    save: (recipe) => ({ revision: store.recipes.save(recipe, false) }),
    remove(id) {
      if (!store.recipes.remove(id)) throw gone('recipe', id);
    },
    give: (ids) => fileOf(ids.map(open), store, reader),
  };
}

function cardOf(found: Omit<RecipeCard, 'name' | 'tags' | 'recipe'>, recipe: Recipe): RecipeCard {
  return { ...found, name: recipe.name, tags: recipe.tags, recipe };
}

/** One recipe that holds no other is a recipe file; anything else a file of recipes. */
function fileOf(recipes: readonly Recipe[], store: Store, reader: Reader): { name: string; text: string } {
  const all = new Map(recipes.map((recipe) => [recipe.id, recipe]));
  for (const recipe of recipes) for (const [id, held] of bookFor(recipe, store, reader)) all.set(id, held);
  const [first] = recipes;
  if (first !== undefined && all.size === 1) return { name: `${first.id}.recipe.json`, text: documentText(first) };
  const called = first !== undefined && recipes.length === 1 ? first.id : 'library';
  return { name: `${called}.recipes.json`, text: recipesText([...all.values()]) };
}
