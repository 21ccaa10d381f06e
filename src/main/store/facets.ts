import type { Database } from 'better-sqlite3';
import { type KeptRecipe, keptOf, type Row } from './keptRecipe.ts';

/** The terms recipes are filtered by. The store keeps them; whoever knows how works them out. */
export interface Facets {
  /**
   * Works out the terms of recipes that have none of these rules yet: at least one recipe, and more until `enough` says so.
   * Answers how many are left. A recipe that changes meanwhile in another program is asked for again.
   * @param rules the number of the rules they are worked out by
   */
  workOut(rules: number, derive: (recipe: KeptRecipe) => readonly string[], enough: () => boolean): number;
  /** How many recipes have no terms of these rules yet. */
  left(rules: number): number;
  /** The terms of a recipe and of every recipe that holds it are to be worked out anew. To be run inside a transaction. */
  forget(id: string): void;
}

export function facetsIn(database: Database): Facets {
  const stale = database.prepare<[number, number], Row & { readonly number: number }>(
    'SELECT number, id, starter, revision, body FROM recipe WHERE facets <> ? AND number > ? ORDER BY number LIMIT 1',
  );
  const left = database.prepare<[number], number>('SELECT count(*) FROM recipe WHERE facets <> ?').pluck();
  const clear = database.prepare('DELETE FROM recipe_facet WHERE recipe = ?');
  const add = database.prepare('INSERT OR IGNORE INTO recipe_facet (term, recipe) VALUES (?, ?)');
  const mark = database.prepare('UPDATE recipe SET facets = ? WHERE number = ?');
  const forget = database.prepare(`
    WITH RECURSIVE holder (id) AS (
      SELECT ? UNION SELECT recipe.id FROM holder
        JOIN recipe_holds ON recipe_holds.held = holder.id JOIN recipe ON recipe.number = recipe_holds.recipe)
    UPDATE recipe SET facets = 0 WHERE id IN (SELECT id FROM holder)`);
  /** Another number once another connection has changed anything. */
  const version = () => database.pragma('data_version', { simple: true });
  const keep = database.transaction((made: ReadonlyMap<number, readonly string[]>, rules: number, seen: unknown) => {
    // What the terms followed from may be gone: the recipes are asked for again.
    if (version() !== seen) return;
    for (const [number, terms] of made) {
      clear.run(number);
      for (const term of terms) add.run(term, number);
      mark.run(rules, number);
    }
  });
  const leftBy = (rules: number) => left.get(rules) ?? 0;
  return {
    left: leftBy,
    // Nobody waits for a turn to write while terms are worked out, only while they are written down.
    workOut: (rules, derive, enough) => {
      const seen = version();
      const made = new Map<number, readonly string[]>();
      let last = 0;
      do {
        const row = stale.get(rules, last);
        if (row === undefined) break;
        const { number, ...kept } = row;
        made.set(number, derive(keptOf(kept)));
        last = number;
      } while (!enough());
      if (made.size > 0) keep.immediate(made, rules, seen);
      return leftBy(rules);
    },
    forget: (id) => {
      forget.run(id);
    },
  };
}
