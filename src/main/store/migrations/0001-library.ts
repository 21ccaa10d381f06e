import type { Migration } from '../migrate.ts';

/** The first library: patterns, recipes with full text search, settings, and what was put in at the first start. */
export const library: Migration = {
  version: 1,
  name: 'library',
  up(database) {
    database.exec(`
      CREATE TABLE pattern (
        id TEXT PRIMARY KEY,
        title TEXT NOT NULL,
        designer TEXT NOT NULL,
        sizes INTEGER NOT NULL,
        changed TEXT NOT NULL,
        revision INTEGER NOT NULL,
        body TEXT NOT NULL
      ) STRICT;
      CREATE INDEX pattern_changed ON pattern (changed DESC, id);

      CREATE TABLE pattern_recipe (
        recipe TEXT NOT NULL,
        pattern TEXT NOT NULL REFERENCES pattern (id) ON DELETE CASCADE,
        PRIMARY KEY (recipe, pattern)
      ) STRICT, WITHOUT ROWID;
      CREATE INDEX pattern_recipe_pattern ON pattern_recipe (pattern);

      CREATE TABLE recipe (
        number INTEGER PRIMARY KEY,
        id TEXT NOT NULL UNIQUE,
        name TEXT NOT NULL,
        tags TEXT NOT NULL,
        summary TEXT NOT NULL,
        starter INTEGER NOT NULL,
        changed TEXT NOT NULL,
        revision INTEGER NOT NULL,
        body TEXT NOT NULL
      ) STRICT;
      CREATE INDEX recipe_name ON recipe (name COLLATE NOCASE, number);

      CREATE TABLE recipe_tag (
        tag TEXT NOT NULL COLLATE NOCASE,
        recipe INTEGER NOT NULL REFERENCES recipe (number) ON DELETE CASCADE,
        PRIMARY KEY (tag, recipe)
      ) STRICT, WITHOUT ROWID;
      CREATE INDEX recipe_tag_recipe ON recipe_tag (recipe);

      CREATE VIRTUAL TABLE recipe_words USING fts5 (
        name, tags, summary,
        content = 'recipe', content_rowid = 'number',
        tokenize = 'unicode61 remove_diacritics 2',
        prefix = '1 2 3'
      );
      CREATE TRIGGER recipe_words_in AFTER INSERT ON recipe BEGIN
        INSERT INTO recipe_words (rowid, name, tags, summary) VALUES (new.number, new.name, new.tags, new.summary);
      END;
      CREATE TRIGGER recipe_words_out AFTER DELETE ON recipe BEGIN
        INSERT INTO recipe_words (recipe_words, rowid, name, tags, summary)
          VALUES ('delete', old.number, old.name, old.tags, old.summary);
      END;
      CREATE TRIGGER recipe_words_new AFTER UPDATE OF name, tags, summary ON recipe BEGIN
        INSERT INTO recipe_words (recipe_words, rowid, name, tags, summary)
          VALUES ('delete', old.number, old.name, old.tags, old.summary);
        INSERT INTO recipe_words (rowid, name, tags, summary) VALUES (new.number, new.name, new.tags, new.summary);
      END;

      CREATE TABLE setting (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;

      CREATE TABLE starter (
        kind TEXT NOT NULL,
        id TEXT NOT NULL,
        hash TEXT NOT NULL,
        PRIMARY KEY (kind, id)
      ) STRICT, WITHOUT ROWID;
    `);
  },
};
