import type { Database } from 'better-sqlite3';
import { Refused } from '../refusal.ts';

/** One numbered change of the library's tables. Numbers run from 1 without a gap. */
export interface Migration {
  readonly version: number;
  readonly name: string;
  /** Runs inside a transaction: it must neither begin nor end one, and leaves no trace when it throws. */
  up(database: Database): void;
}

/** Marks a file as Piecewright's own in the header that SQLite keeps for this ("PIEC"). */
const APPLICATION = 0x50494543;

/** The number of the last migration the file has been through; 0 for a new, empty file. */
export function versionOf(database: Database): number {
  const tables = database.prepare("SELECT count(*) FROM sqlite_schema WHERE type = 'table'").pluck().get() as number;
  if (tables === 0) return 0;
  if (database.pragma('application_id', { simple: true }) !== APPLICATION) {
    throw new Refused(
      'bad-input',
      `${database.name} is a database of another program. It was left as it is; set PIECEWRIGHT_HOME to another folder.`,
    );
  }
  return database.prepare('SELECT max(version) FROM ledger').pluck().get() as number;
}

/**
 * Brings the file up to the last of `migrations`, each change and its row in the ledger in one transaction: a crash
 * leaves the file as it was before that change. `backUp` is called first, with the version the file has now, unless it
 * is new. A file that is newer than the last migration is refused untouched.
 */
export function migrate(
  database: Database,
  migrations: readonly Migration[],
  { now, backUp }: { readonly now: () => Date; readonly backUp: (version: number) => void },
): void {
  const latest = migrations.length;
  const version = versionOf(database);
  if (version > latest) throw newer(database.name, version, latest);
  if (version === latest) return;
  if (version > 0) backUp(version);
  for (const migration of migrations.slice(version)) apply(database, migration, now);
}

function apply(database: Database, migration: Migration, now: () => Date): void {
  database
    .transaction(() => {
      // Another Piecewright may have made this change while this one waited for its turn to write.
      if (versionOf(database) >= migration.version) return;
      if (migration.version === 1) {
        database.pragma(`application_id = ${APPLICATION}`);
        database.exec(
          'CREATE TABLE ledger (version INTEGER PRIMARY KEY, name TEXT NOT NULL, applied TEXT NOT NULL) STRICT',
        );
      }
      migration.up(database);
      database
        .prepare('INSERT INTO ledger (version, name, applied) VALUES (?, ?, ?)')
        .run(migration.version, migration.name, now().toISOString());
    })
    .immediate();
}

function newer(name: string, version: number, latest: number): Refused {
  return new Refused(
    'newer-file',
    `The library ${name} was kept by a newer Piecewright (its number is ${version}; this one knows up to ${latest}). ` +
      'Open it with that newer version, or set PIECEWRIGHT_HOME to another folder. Nothing was changed.',
  );
}
