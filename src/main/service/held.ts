import { heldBy } from '../../shared/pattern/recipes.ts';
import type { RecipeBook } from '../../shared/piecing/lowering.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';
import type { Reader } from '../reader.ts';
import type { Store } from '../store/store.ts';

/** A recipe with every recipe it holds, directly or through others, as far as they are kept here and can be read. */
export function bookFor(
  recipe: Recipe,
  store: Store,
  reader: Reader,
  own: ReadonlyMap<string, Recipe> = new Map(),
): RecipeBook {
  const book = new Map([[recipe.id, recipe]]);
  const open = [...heldBy(recipe)];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (book.has(id)) continue;
    const held = own.get(id) ?? readKept(id, store, reader);
    if (held === null) continue;
    book.set(id, held);
    open.push(...heldBy(held));
  }
  return book;
}

function readKept(id: string, store: Store, reader: Reader): Recipe | null {
  const kept = store.recipes.read(id);
  if (kept === null) return null;
  const read = reader.recipe(kept.body);
  return read.ok ? read.value : null;
}
