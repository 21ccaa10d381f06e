import type { Database } from 'better-sqlite3';
import { type FoundRecipe, keptOf, type RecipeQuery, type Row } from './keptRecipe.ts';
import { searchQuery } from './search.ts';

const TAGGED = '(@tag IS NULL OR rowid IN (SELECT recipe FROM recipe_tag WHERE tag = @tag))';

/** Whether a recipe has every one of the terms asked for. */
const HAS_FACETS = `(@wanted = 0 OR rowid IN (
  SELECT recipe FROM recipe_facet WHERE term IN (SELECT value FROM json_each(@facets))
  GROUP BY recipe HAVING count(*) = @wanted))`;

const SUITS = `${TAGGED} AND ${HAS_FACETS}`;
const SAYS_WORDS = 'recipe_words MATCH @query';

/** What the statements are asked with. */
interface Asked {
  readonly query: string;
  readonly tag: string | null;
  readonly from: number;
  readonly atMost: number;
  /** A JSON list of terms. */
  readonly facets: string;
  readonly wanted: number;
}

/** Finds recipes by words, tag and facets, or only counts them. */
export function finderOf(database: Database): {
  find(search: RecipeQuery): readonly FoundRecipe[];
  count(search: RecipeQuery): number;
} {
  // The numbers are found, ranked and cut to the part asked for before any recipe's text is read.
  const byWords = database.prepare<Asked, Row>(`
    SELECT id, starter, revision, body FROM (
      SELECT rowid AS found, rank AS nearness FROM recipe_words
      WHERE ${SAYS_WORDS} AND rank MATCH 'bm25(10, 5, 1)' AND ${SUITS}
      ORDER BY rank, rowid LIMIT @atMost OFFSET @from)
    JOIN recipe ON recipe.number = found ORDER BY nearness, found`);
  const byName = database.prepare<Asked, Row>(`
    SELECT id, starter, revision, body FROM recipe WHERE ${SUITS}
    ORDER BY name COLLATE NOCASE, number LIMIT @atMost OFFSET @from`);
  const counted = 'SELECT count(*) FROM';
  const withWords = database.prepare<Asked, number>(`${counted} recipe_words WHERE ${SAYS_WORDS} AND ${SUITS}`).pluck();
  const every = database.prepare<Asked, number>(`${counted} recipe WHERE ${SUITS}`).pluck();
  const users = usersOf(database);
  return {
    find(search) {
      const asked = askedOf(search);
      const rows = asked.query === '' ? byName.all(asked) : byWords.all(asked);
      const usedIn = users(rows.map((row) => row.id));
      return rows.map((row) => ({ ...keptOf(row), usedIn: usedIn.get(row.id) ?? [] }));
    },
    count(search) {
      const asked = askedOf(search);
      return (asked.query === '' ? every.get(asked) : withWords.get(asked)) ?? 0;
    },
  };
}

function askedOf({ words, tag, facets = [], from = 0, atMost = -1 }: RecipeQuery): Asked {
  const terms = [...new Set(facets)];
  return {
    query: searchQuery(words),
    tag: tag ?? null,
    from,
    atMost,
    facets: JSON.stringify(terms),
    wanted: terms.length,
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
