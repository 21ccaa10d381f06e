import type { Migration } from '../migrate.ts';

/** Photographs of fabrics, by the SHA-256 of their bytes: one that two patterns show is kept once. */
export const photographs: Migration = {
  version: 4,
  name: 'photographs',
  up(database) {
    database.exec(`
      CREATE TABLE photograph (
        id TEXT PRIMARY KEY,
        width INTEGER NOT NULL,
        height INTEGER NOT NULL,
        added TEXT NOT NULL,
        bytes BLOB NOT NULL
      ) STRICT;
    `);
  },
};
