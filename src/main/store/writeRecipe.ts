import type { Database } from 'better-sqlite3';
import { heldBy } from '../../shared/pattern/recipes.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';
import { facetsIn } from './facets.ts';
import { revisionsIn } from './revisions.ts';

/** Writes one recipe with everything it is found by, and answers its revision. To be run inside a transaction. */
export function writerOf(database: Database, now: () => Date): (recipe: Recipe, starter: boolean) => number {
  const write = database.prepare<Record<string, string | number>, number>(`
    INSERT INTO recipe (id, name, tags, summary, starter, changed, revision, body)
      VALUES (@id, @name, @tags, @summary, @starter, @changed, @revision, @body)
    ON CONFLICT (id) DO UPDATE SET name = @name, tags = @tags, summary = @summary, starter = @starter,
      changed = @changed, revision = @revision, body = @body
    RETURNING number`);
  write.pluck();
  const tagList = listOf(database, 'recipe_tag', 'tag');
  const heldList = listOf(database, 'recipe_holds', 'held');
  const revisions = revisionsIn(database);
  const facets = facetsIn(database);
  return (recipe, starter) => {
    const { id, name, tags, summary } = recipe;
    const changed = now().toISOString();
    const body = JSON.stringify(recipe);
    const revision = revisions.note(id, body, changed);
    const row = { id, name, tags: tags.join(' · '), summary, starter: starter ? 1 : 0, changed, revision, body };
    const number = write.get(row);
    if (number === undefined) throw new Error(`the recipe ${id} was written and did not come back`);
    tagList(number, tags);
    heldList(number, heldBy(recipe));
    facets.forget(id);
    return revision;
  };
}

/** Keeps a list of words of a recipe in a table of its own. */
function listOf(database: Database, table: string, column: string): (recipe: number, words: readonly string[]) => void {
  const clear = database.prepare(`DELETE FROM ${table} WHERE recipe = ?`);
  const add = database.prepare(`INSERT OR IGNORE INTO ${table} (${column}, recipe) VALUES (?, ?)`);
  return (recipe, words) => {
    clear.run(recipe);
    for (const word of words) add.run(word, recipe);
  };
}
