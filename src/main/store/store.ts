import { openDatabase } from './database.ts';
import { type Mattresses, mattressesIn } from './mattresses.ts';
import type { Migration } from './migrate.ts';
import { migrations as allMigrations } from './migrations/index.ts';
import { type Patterns, patternsIn } from './patterns.ts';
import { type Photographs, photographsIn } from './photographs.ts';
import { type Recipes, recipesIn } from './recipes.ts';
import { type Settings, settingsIn } from './settings.ts';
import { type Starters, startersIn } from './starters.ts';

/** Everything Piecewright keeps, in one folder. */
export interface Store {
  /** The folder, as the designer would look for it. */
  readonly folder: string;
  readonly patterns: Patterns;
  readonly recipes: Recipes;
  readonly mattresses: Mattresses;
  readonly photographs: Photographs;
  readonly settings: Settings;
  readonly starters: Starters;
  close(): void;
}

export interface StoreOptions {
  readonly folder: string;
  readonly now: () => Date;
  /** The library's own unless a test brings others. */
  readonly migrations?: readonly Migration[];
}

/**
 * Opens the library in `folder`, made if it is not there. Throws `Refused` for a library of a newer Piecewright or a file
 * of another program, and the machine's own error when the folder cannot be read or written; `refusalOf` puts either
 * into words.
 */
export function openStore({ folder, now, migrations = allMigrations }: StoreOptions): Store {
  const database = openDatabase(folder, migrations, now);
  const patterns = patternsIn(database, now);
  const recipes = recipesIn(database, now);
  return {
    folder,
    patterns,
    recipes,
    mattresses: mattressesIn(database),
    photographs: photographsIn(database, now),
    settings: settingsIn(database),
    starters: startersIn(database, patterns, recipes),
    close: () => database.close(),
  };
}
