import type { Database } from 'better-sqlite3';
import type { Recipe } from '../../shared/recipe/schema.ts';
import { searchQuery } from './search.ts';

/** A recipe as it is kept: the saved document's text, and whether it came with the program. */
export interface KeptRecipe {
  readonly id: string;
  readonly starter: boolean;
  readonly body: string;
}

/** A kept recipe with the titles of the patterns that carry it. */
export interface FoundRecipe extends KeptRecipe {
  readonly usedIn: readonly string[];
}

/** A `RecipeSearch` as it came in from outside. */
export interface RecipeQuery {
  readonly words: string;
  readonly tag?: string | undefined;
  readonly from?: number | undefined;
  readonly atMost?: number | undefined;
}

/** The recipes of the library. Every call that changes something answers once the change is on disk. */
export interface Recipes {
  find(search: RecipeQuery): readonly FoundRecipe[];
  read(id: string): KeptRecipe | null;
  /** Answers the new revision. A starter recipe that the designer saves is hers from then on. */
  save(recipe: Recipe, starter: boolean): number;
  /** Whether there was one to remove. */
  remove(id: string): boolean;
  has(id: string): boolean;
}

interface Row {
  readonly id: string;
  readonly starter: number;
  readonly body: string;
}

export function recipesIn(database: Database, now: () => Date): Recipes {
  const read = database.prepare<[string], Row>('SELECT id, starter, body FROM recipe WHERE id = ?');
  const there = database.prepare<[string], number>('SELECT 1 FROM recipe WHERE id = ?').pluck();
  const remove = database.prepare('DELETE FROM recipe WHERE id = ?');
  const save = writerOf(database);
  const find = finderOf(database);
  return {
    find,
    read: (id) => {
      const row = read.get(id);
      return row === undefined ? null : { ...row, starter: row.starter === 1 };
    },
    save: (recipe, starter) => save(recipe, starter, now()),
    remove: (id) => remove.run(id).changes > 0,
    has: (id) => there.get(id) !== undefined,
  };
}

function writerOf(database: Database): (recipe: Recipe, starter: boolean, when: Date) => number {
  const write = database.prepare<Record<string, string | number>, { number: number; revision: number }>(`
    INSERT INTO recipe (id, name, tags, summary, starter, changed, revision, body)
      VALUES (@id, @name, @tags, @summary, @starter, @changed, 1, @body)
    ON CONFLICT (id) DO UPDATE SET name = @name, tags = @tags, summary = @summary, starter = @starter,
      changed = @changed, revision = revision + 1, body = @body
    RETURNING number, revision`);
  const clearTags = database.prepare('DELETE FROM recipe_tag WHERE recipe = ?');
  const addTag = database.prepare('INSERT OR IGNORE INTO recipe_tag (tag, recipe) VALUES (?, ?)');
  const save = database.transaction((recipe: Recipe, starter: boolean, when: Date): number => {
    const { id, name, tags, summary } = recipe;
    const row = { id, name, tags: tags.join(' · '), summary, starter: starter ? 1 : 0, changed: when.toISOString() };
    const written = write.get({ ...row, body: JSON.stringify(recipe) });
    if (written === undefined) throw new Error(`the recipe ${id} was written and did not come back`);
    clearTags.run(written.number);
    for (const tag of tags) addTag.run(tag, written.number);
    return written.revision;
  });
  return (recipe, starter, when) => save.immediate(recipe, starter, when);
}

const TAGGED = '(@tag IS NULL OR rowid IN (SELECT recipe FROM recipe_tag WHERE tag = @tag))';

function finderOf(database: Database): (search: RecipeQuery) => readonly FoundRecipe[] {
  // The numbers are found, ranked and cut to the part asked for before any recipe's text is read.
  const byWords = database.prepare<Record<string, string | number | null>, Row>(`
    SELECT id, starter, body FROM (
      SELECT rowid AS found, rank AS nearness FROM recipe_words
      WHERE recipe_words MATCH @query AND rank MATCH 'bm25(10, 5, 1)' AND ${TAGGED}
      ORDER BY rank, rowid LIMIT @atMost OFFSET @from)
    JOIN recipe ON recipe.number = found ORDER BY nearness, found`);
  const byName = database.prepare<Record<string, string | number | null>, Row>(`
    SELECT id, starter, body FROM recipe WHERE ${TAGGED}
    ORDER BY name COLLATE NOCASE, number LIMIT @atMost OFFSET @from`);
  const users = usersOf(database);
  return ({ words, tag = null, from = 0, atMost = -1 }) => {
    const query = searchQuery(words);
    const rows = query === '' ? byName.all({ tag, from, atMost }) : byWords.all({ query, tag, from, atMost });
    const usedIn = users(rows.map((row) => row.id));
    return rows.map((row) => ({ ...row, starter: row.starter === 1, usedIn: usedIn.get(row.id) ?? [] }));
  };
}

/** For each of the recipes, the titles of the patterns that carry it, in the order of the alphabet. */
function usersOf(database: Database): (ids: readonly string[]) => ReadonlyMap<string, readonly string[]> {
  const users = database.prepare<[string], { recipe: string; title: string }>(`
    SELECT recipe, title FROM pattern_recipe JOIN pattern ON pattern.id = pattern_recipe.pattern
    WHERE recipe IN (SELECT value FROM json_each(?)) ORDER BY title COLLATE NOCASE, pattern.id`);
  return (ids) => {
    const titles = new Map<string, string[]>();
    for (const { recipe, title } of users.all(JSON.stringify(ids))) {
      titles.set(recipe, [...(titles.get(recipe) ?? []), title]);
    }
    return titles;
  };
}
