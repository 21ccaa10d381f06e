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
  /** The terms of a recipe and of every recipe that holds it are to be worked out anew. To be run inside a transaction. */
  forget(id: string): void;
}

export function facetsIn(database: Database): Facets {
  const stale = database.prepare<[number], Row & { readonly number: number }>(
    'SELECT number, id, starter, revision, body FROM recipe WHERE facets <> ? LIMIT 1',
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
  const workOut = database.transaction(
    (rules: number, derive: (recipe: KeptRecipe) => readonly string[], enough: () => boolean): number => {
      do {
        const row = stale.get(rules);
        if (row === undefined) return 0;
        const { number, ...kept } = row;
        const terms = derive(keptOf(kept));
        clear.run(number);
        for (const term of terms) add.run(term, number);
        mark.run(rules, number);
      } while (!enough());
      return left.get(rules) ?? 0;
    },
  );
  return {
    workOut: (rules, derive, enough) => {
      // Nothing to do is found without waiting for a turn to write.
      if ((left.get(rules) ?? 0) === 0) return 0;
      return workOut.immediate(rules, derive, enough);
    },
    forget: (id) => {
      forget.run(id);
    },
  };
}
