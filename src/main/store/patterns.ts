import type { Database } from 'better-sqlite3';
import type { PatternCard } from '../../shared/contract.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';

/** A pattern as it is kept: the saved document's text, and how often it has been saved. */
export interface KeptPattern {
  readonly body: string;
  readonly revision: number;
}

/** What became of a save: the new revision, or why it was not made. */
export type Saved = { readonly revision: number } | { readonly refused: 'changed-elsewhere' | 'removed' };

/** The patterns of the library. Every call that changes something answers once the change is on disk. */
export interface Patterns {
  /** Last changed first. */
  cards(): readonly PatternCard[];
  read(id: string): KeptPattern | null;
  /** `revision` is the one last seen, `null` for a pattern that is not kept yet. */
  save(pattern: Pattern, revision: number | null): Saved;
  /** Whether there was one to remove. */
  remove(id: string): boolean;
  has(id: string): boolean;
}

export function patternsIn(database: Database, now: () => Date): Patterns {
  const cards = database.prepare<[], PatternCard>(
    'SELECT id, title, designer, sizes, changed, revision FROM pattern ORDER BY changed DESC, id',
  );
  const read = database.prepare<[string], KeptPattern>('SELECT body, revision FROM pattern WHERE id = ?');
  const revisionOf = database.prepare<[string], number>('SELECT revision FROM pattern WHERE id = ?').pluck();
  const write = database.prepare(`
    INSERT INTO pattern (id, title, designer, sizes, changed, revision, body)
      VALUES (@id, @title, @designer, @sizes, @changed, @revision, @body)
    ON CONFLICT (id) DO UPDATE SET title = @title, designer = @designer, sizes = @sizes, changed = @changed,
      revision = @revision, body = @body`);
  const remove = database.prepare('DELETE FROM pattern WHERE id = ?');
  const carries = carriedRecipes(database);

  const save = database.transaction((pattern: Pattern, body: string, seen: number | null): Saved => {
    const kept = revisionOf.get(pattern.id) ?? null;
    if (kept === null && seen !== null) return { refused: 'removed' };
    if (kept !== seen) return { refused: 'changed-elsewhere' };
    const revision = (kept ?? 0) + 1;
    write.run({ ...cardOf(pattern), changed: now().toISOString(), revision, body });
    carries(pattern);
    return { revision };
  });

  return {
    cards: () => cards.all(),
    read: (id) => read.get(id) ?? null,
    save: (pattern, revision) => save.immediate(pattern, JSON.stringify(pattern), revision),
    remove: (id) => remove.run(id).changes > 0,
    has: (id) => revisionOf.get(id) !== undefined,
  };
}

function cardOf(pattern: Pattern) {
  return { id: pattern.id, title: pattern.title, designer: pattern.words.designer, sizes: pattern.sizes.length };
}

/** Keeps the list of which pattern carries which recipe, writing only when it has changed. */
function carriedRecipes(database: Database): (pattern: Pattern) => void {
  const listed = database
    .prepare<[string], string>('SELECT recipe FROM pattern_recipe WHERE pattern = ? ORDER BY recipe')
    .pluck();
  const clear = database.prepare('DELETE FROM pattern_recipe WHERE pattern = ?');
  const add = database.prepare('INSERT INTO pattern_recipe (recipe, pattern) VALUES (?, ?)');
  return ({ id, recipes }) => {
    const wanted = [...new Set(recipes.map((recipe) => recipe.id))].sort();
    if (JSON.stringify(listed.all(id)) === JSON.stringify(wanted)) return;
    clear.run(id);
    for (const recipe of wanted) add.run(recipe, id);
  };
}
