import type { Migration } from '../migrate.ts';

/**
 * Every saved body of a recipe is kept as a revision, under the recipe's id so that it outlives the recipe. Facets are the
 * terms a recipe is filtered by, worked out elsewhere and kept here; `facets` says by which rules, 0 while they are not. A
 * recipe's facets follow from the recipes it holds, so which holds which is kept too.
 */
export const revisionsAndFacets: Migration = {
  version: 2,
  name: 'revisions-and-facets',
  up(database) {
    database.exec(`
      CREATE TABLE recipe_revision (
        recipe TEXT NOT NULL,
        revision INTEGER NOT NULL,
        changed TEXT NOT NULL,
        body TEXT NOT NULL,
        PRIMARY KEY (recipe, revision)
      ) STRICT;
      INSERT INTO recipe_revision (recipe, revision, changed, body) SELECT id, revision, changed, body FROM recipe;

      CREATE TABLE recipe_holds (
        held TEXT NOT NULL,
        recipe INTEGER NOT NULL REFERENCES recipe (number) ON DELETE CASCADE,
        PRIMARY KEY (held, recipe)
      ) STRICT, WITHOUT ROWID;
      CREATE INDEX recipe_holds_recipe ON recipe_holds (recipe);
      INSERT OR IGNORE INTO recipe_holds (held, recipe)
        SELECT entry.value, recipe.number FROM recipe, json_tree(recipe.body, '$.body') AS entry
        WHERE entry.key = 'recipe' AND entry.type = 'text';

      CREATE TABLE recipe_facet (
        term TEXT NOT NULL,
        recipe INTEGER NOT NULL REFERENCES recipe (number) ON DELETE CASCADE,
        PRIMARY KEY (term, recipe)
      ) STRICT, WITHOUT ROWID;
      CREATE INDEX recipe_facet_recipe ON recipe_facet (recipe);

      ALTER TABLE recipe ADD COLUMN facets INTEGER NOT NULL DEFAULT 0;
      CREATE INDEX recipe_facets ON recipe (facets);
    `);
  },
};
