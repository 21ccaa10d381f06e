import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import BetterSqlite, { type Database } from 'better-sqlite3';
import { isBusy } from '../refusal.ts';
import { backUp } from './backup.ts';
import { type Migration, migrate, versionOf } from './migrate.ts';

const LIBRARY_FILE = 'library.db';
const BACKUPS = 'backups';

/** How long one Piecewright waits for another that is writing to the same folder, milliseconds. */
const PATIENCE = 5000;

/** Opens the library in `folder`, made if it is not there, and brings it up to the last migration. */
export function openDatabase(folder: string, migrations: readonly Migration[], now: () => Date): Database {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const database = new BetterSqlite(join(folder, LIBRARY_FILE), { timeout: PATIENCE });
  try {
    // Asked first, so that a file of another program or of a newer version is refused before anything is set in it.
    if (versionOf(database) <= migrations.length) makeCrashSafe(database);
    migrate(database, migrations, {
      now,
      backUp: (version) => backUp(database, join(folder, BACKUPS), version, now()),
    });
    return database;
  } catch (error) {
    database.close();
    throw error;
  }
}

/**
 * A commit is answered only when it is on disk. In WAL mode a commit appends checksummed pages to the log; a log cut
 * short by a crash ends, for the next reader, at its last whole commit. `synchronous = FULL` waits for the log to reach
 * the disk at every commit. NORMAL would be as consistent but waits only at checkpoints, so that a power cut could take
 * back the last edits the designer was told were saved; FULL costs about a millisecond here. `fullfsync` makes macOS
 * empty the disk's own cache as well; elsewhere it does nothing.
 */
function makeCrashSafe(database: Database): void {
  turnOnLog(database);
  database.pragma('synchronous = FULL');
  database.pragma('fullfsync = ON');
  database.pragma('foreign_keys = ON');
  database.pragma('trusted_schema = OFF');
}

/** SQLite does not wait for its turn when it changes the kind of log, so two programs that begin at once must ask again. */
function turnOnLog(database: Database): void {
  const until = Date.now() + PATIENCE;
  for (;;) {
    try {
      database.pragma('journal_mode = WAL');
      return;
    } catch (error) {
      if (!isBusy(error) || Date.now() > until) throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 10);
    }
  }
}
