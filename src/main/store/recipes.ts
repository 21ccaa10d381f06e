import type { Database } from 'better-sqlite3';
import type { Recipe } from '../../shared/recipe/schema.ts';
import { type Facets, facetsIn } from './facets.ts';
import { finderOf } from './findRecipes.ts';
import { type FoundRecipe, type KeptRecipe, keptOf, type RecipeQuery, type Row } from './keptRecipe.ts';
import { type KeptRevision, revisionsIn } from './revisions.ts';
import { writerOf } from './writeRecipe.ts';

/** The recipes of the library. Every call that changes something answers once the change is on disk. */
export interface Recipes {
  find(search: RecipeQuery): readonly FoundRecipe[];
  /** How many there are to find, in whatever part they are asked for. */
  count(search: RecipeQuery): number;
  read(id: string): KeptRecipe | null;
  /**
   * Answers the revision: the next one, or the last when the recipe says what it said then. A starter recipe that the
   * designer saves is hers from then on.
   */
  save(recipe: Recipe, starter: boolean): number;
  /** Keeps all of them or, when one cannot be written, none. */
  saveAll(recipes: readonly Recipe[]): void;
  /** Whether there was one to remove. Its revisions stay. */
  remove(id: string): boolean;
  has(id: string): boolean;
  /** Every saved body of a recipe, the newest first. */
  revisions(id: string): readonly KeptRevision[];
  readonly facets: Facets;
}

export function recipesIn(database: Database, now: () => Date): Recipes {
  const read = database.prepare<[string], Row>('SELECT id, starter, revision, body FROM recipe WHERE id = ?');
  const there = database.prepare<[string], number>('SELECT 1 FROM recipe WHERE id = ?').pluck();
  const facets = facetsIn(database);
  const write = writerOf(database, now);
  const save = database.transaction(write);
  const saveAll = database.transaction((recipes: readonly Recipe[]) => {
    for (const recipe of recipes) write(recipe, false);
  });
  const remove = database.transaction((id: string): boolean => {
    facets.forget(id);
    return database.prepare('DELETE FROM recipe WHERE id = ?').run(id).changes > 0;
  });
  return {
    ...finderOf(database),
    read: (id) => {
      const row = read.get(id);
      return row === undefined ? null : keptOf(row);
    },
    save: (recipe, starter) => save.immediate(recipe, starter),
    saveAll: (recipes) => saveAll.immediate(recipes),
    remove: (id) => remove.immediate(id),
    has: (id) => there.get(id) !== undefined,
    revisions: revisionsIn(database).all,
    facets,
  };
}
