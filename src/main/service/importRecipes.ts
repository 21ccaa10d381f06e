import { heldBy, withHeldIds } from '../../shared/pattern/recipes.ts';
import { isAlike } from '../../shared/pattern/revisions.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';
import type { Reader } from '../reader.ts';
import type { Store } from '../store/store.ts';
import { accepted } from './documents.ts';
import { freshId, type ImportNeeds } from './imports.ts';

/** A file's recipe in the library: under which id, and whether it is new there. */
export interface Brought {
  readonly id: string;
  readonly isNew: boolean;
}

/**
 * Keeps the recipes of a file, each under a fresh id if its own is taken; those that are here already, word for word, are
 * left as they are. What holds a recipe of the file goes on holding that one. All are kept, or none.
 * @param file its name, for refusals
 * @param placeOf where a recipe stands in the file
 * @returns one for each recipe of the file, in its order
 * @throws Refused with the file, the recipe and the place, when one of them cannot be drawn and sewn
 */
export async function importRecipes(
  file: string,
  recipes: readonly Recipe[],
  placeOf: (index: number) => string,
  { store, reader, work, tell, signal }: ImportNeeds,
): Promise<readonly Brought[]> {
  const all = recipes.length;
  const wrong = await work.check(
    recipes,
    recipes.map((_, index) => placeOf(index)),
    {
      tell: (done) => tell?.(done / all, `${done.toLocaleString('en-US')} of ${all.toLocaleString('en-US')} recipes`),
      signal,
    },
  );
  signal?.throwIfAborted();
  if (wrong.length > 0) return accepted({ ok: false, findings: wrong, newer: false }, file);
  const taken = idsFor(recipes, store, reader);
  const brought = recipes.map(({ id }) => taken.get(id) as Brought);
  const renamed = (id: string) => taken.get(id)?.id ?? id;
  const fresh = recipes.filter((_, i) => brought[i]?.isNew);
  store.recipes.saveAll(fresh.map((recipe) => ({ ...withHeldIds(recipe, renamed), id: renamed(recipe.id) })));
  return brought;
}

/** The id each recipe of the file gets. One is here already when it and all it holds are, under the very same ids. */
function idsFor(recipes: readonly Recipe[], store: Store, reader: Reader): ReadonlyMap<string, Brought> {
  const own = new Map(recipes.map((recipe) => [recipe.id, recipe]));
  const ids = new Map<string, Brought>();
  const given = new Set<string>();
  const settle = (recipe: Recipe): Brought => {
    const known = ids.get(recipe.id);
    if (known !== undefined) return known;
    const held = heldBy(recipe).flatMap((id) => own.get(id) ?? []);
    const same = held.every((one) => !settle(one).isNew) && isHere(recipe, store, reader);
    const id = same ? recipe.id : freshId(recipe.id, (other) => store.recipes.has(other) || given.has(other));
    given.add(id);
    const brought = { id, isNew: !same };
    ids.set(recipe.id, brought);
    return brought;
  };
  for (const recipe of recipes) settle(recipe);
  return ids;
}

function isHere(recipe: Recipe, store: Store, reader: Reader): boolean {
  const kept = store.recipes.read(recipe.id);
  if (kept === null) return false;
  const read = reader.recipe(kept.body);
  return read.ok && isAlike(read.value, recipe);
}
