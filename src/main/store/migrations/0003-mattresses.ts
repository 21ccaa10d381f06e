import type { Migration } from '../migrate.ts';

/** The designer's own mattresses, in the order she put them in. Lengths are inches. */
export const mattresses: Migration = {
  version: 3,
  name: 'mattresses',
  up(database) {
    database.exec(`
      CREATE TABLE mattress (
        number INTEGER PRIMARY KEY,
        id TEXT NOT NULL UNIQUE,
        name TEXT NOT NULL,
        width REAL NOT NULL,
        length REAL NOT NULL
      ) STRICT;
    `);
  },
};
