import type { Database } from 'better-sqlite3';

/** One saved body of a recipe. */
export interface KeptRevision {
  readonly revision: number;
  /** ISO date and time it was saved. */
  readonly changed: string;
  readonly body: string;
}

/** What was saved of a recipe, revision by revision; it stays when the recipe is removed. */
export interface Revisions {
  /** The newest first. */
  all(recipe: string): readonly KeptRevision[];
  /** Notes a body, unless it says what the last one said. Answers the revision that holds it. */
  note(recipe: string, body: string, changed: string): number;
}

export function revisionsIn(database: Database): Revisions {
  const all = database.prepare<[string], KeptRevision>(
    'SELECT revision, changed, body FROM recipe_revision WHERE recipe = ? ORDER BY revision DESC',
  );
  const last = database.prepare<[string], Pick<KeptRevision, 'revision' | 'body'>>(
    'SELECT revision, body FROM recipe_revision WHERE recipe = ? ORDER BY revision DESC LIMIT 1',
  );
  const add = database.prepare('INSERT INTO recipe_revision (recipe, revision, changed, body) VALUES (?, ?, ?, ?)');
  return {
    all: (recipe) => all.all(recipe),
    note(recipe, body, changed) {
      const before = last.get(recipe);
      if (before?.body === body) return before.revision;
      const revision = (before?.revision ?? 0) + 1;
      add.run(recipe, revision, changed, body);
      return revision;
    },
  };
}
