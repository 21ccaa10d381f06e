import type { Imported, RecipeCard } from '../../shared/contract.ts';
import type { Reading } from '../../shared/pattern/load.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';
import type { Reader } from '../reader.ts';
import { Refused } from '../refusal.ts';
import type { RecipeQuery } from '../store/recipes.ts';
import type { Store } from '../store/store.ts';
import { freshId } from './imports.ts';

type Revised = { readonly revision: number };

/** The calls of the contract that keep and find documents, for inputs that have been checked. */
export interface Library {
  first(): string;
  openPattern(id: string): Pattern;
  lookAtPattern(id: string): Pattern;
  savePattern(request: { readonly pattern: Pattern; readonly revision: number | null }): Revised;
  removePattern(id: string): void;
  recipes(search: RecipeQuery): readonly RecipeCard[];
  openRecipe(id: string): Recipe;
  saveRecipe(recipe: Recipe): Revised;
  removeRecipe(id: string): void;
  importFile(file: { readonly name: string; readonly text: string }): Imported;
}

export function makeLibrary(store: Store, reader: Reader): Library {
  return {
    first: () => firstToOpen(store),
    openPattern(id) {
      const pattern = readPattern(store, reader, id);
      remember(store, id);
      return pattern;
    },
    lookAtPattern: (id) => readPattern(store, reader, id),
    savePattern: (request) => savePattern(store, request),
    removePattern(id) {
      if (!store.patterns.remove(id)) throw gone('pattern', id);
    },
    recipes: (search) =>
      store.recipes.find(search).map(({ body, ...found }) => cardOf(found, sound(reader.recipe(body)))),
    openRecipe(id) {
      const kept = store.recipes.read(id);
      if (kept === null) throw gone('recipe', id);
      return sound(reader.recipe(kept.body));
    },
    saveRecipe: (recipe) => ({ revision: store.recipes.save(recipe, false) }),
    removeRecipe(id) {
      if (!store.recipes.remove(id)) throw gone('recipe', id);
    },
    importFile: (file) => importFile(store, reader, file),
  };
}

function readPattern(store: Store, reader: Reader, id: string): Pattern {
  const kept = store.patterns.read(id);
  if (kept === null) throw gone('pattern', id);
  return sound(reader.pattern(kept.body));
}

/** The last one open, or the demo, or the last changed; empty when no pattern is kept. */
function firstToOpen({ patterns, settings, starters }: Store): string {
  const last = settings.read('last-open');
  if (last !== null && patterns.has(last)) return last;
  return starters.demo() ?? patterns.cards()[0]?.id ?? '';
}

/** Not worth failing an opening for: on a full disk a pattern can still be read. */
function remember(store: Store, id: string): void {
  try {
    store.settings.write('last-open', id);
  } catch {
    // The next start opens on another pattern; nothing is lost.
  }
}

function savePattern(store: Store, request: { readonly pattern: Pattern; readonly revision: number | null }): Revised {
  const { pattern, revision } = request;
  const saved = store.patterns.save(pattern, revision);
  if ('revision' in saved) {
    if (revision === null) remember(store, pattern.id);
    return saved;
  }
  if (saved.refused === 'removed') {
    throw new Refused('not-found', `“${pattern.title}” was removed elsewhere. Save it as a new pattern to keep it.`);
  }
  throw new Refused(
    'changed-elsewhere',
    `“${pattern.title}” was changed in another window after it was opened here. Nothing was overwritten: open it again, or keep this one under another name.`,
  );
}

function importFile(
  store: Store,
  reader: Reader,
  { name, text }: { readonly name: string; readonly text: string },
): Imported {
  if (reader.kind(text) === 'recipe') {
    const recipe = accepted(reader.recipe(text), name);
    const id = freshId(recipe.id, store.recipes.has);
    store.recipes.save({ ...recipe, id }, false);
    return { kind: 'recipe', id };
  }
  const pattern = accepted(reader.pattern(text), name);
  const id = freshId(pattern.id, store.patterns.has);
  store.patterns.save({ ...pattern, id }, null);
  return { kind: 'pattern', id };
}

function cardOf(found: Omit<RecipeCard, 'name' | 'tags' | 'recipe'>, recipe: Recipe): RecipeCard {
  return { ...found, name: recipe.name, tags: recipe.tags, recipe };
}

function gone(what: string, id: string): Refused {
  return new Refused('not-found', `There is no ${what} “${id}” here any more.`);
}

/** A file the designer chose, or a refusal that names the file and every place that is not as it should be. */
function accepted<T>(read: Reading<T>, name: string): T {
  if (read.ok) return read.value;
  const [first] = read.findings;
  const mend = first?.mend === undefined ? '' : ` ${first.mend}`;
  throw new Refused(read.newer ? 'newer-file' : 'bad-input', `${name}: ${first?.what ?? ''}${mend}`, read.findings);
}

/** A document from the library, which only takes what is sound. */
function sound<T>(read: Reading<T>): T {
  if (read.ok) return read.value;
  const words = `The library holds a document that cannot be read. ${read.findings[0]?.what ?? ''}`;
  throw new Refused(read.newer ? 'newer-file' : 'broken', words, read.findings);
}
