import { mkdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Database } from 'better-sqlite3';
import { syncToDisk } from './disk.ts';

/**
 * Writes a whole copy of the library into `folder` and answers its path. The copy appears under its name only when it is
 * complete and on disk.
 */
export function backUp(database: Database, folder: string, version: number, now: Date): string {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const stamp = now.toISOString().replace(/[-:]/g, '').slice(0, 15);
  const path = join(folder, `library-${version}-${stamp}.db`);
  const unfinished = `${path}.part`;
  rmSync(unfinished, { force: true });
  // VACUUM INTO sees one consistent state, including what is still only in the write-ahead log.
  database.prepare('VACUUM INTO ?').run(unfinished);
  syncToDisk(unfinished);
  renameSync(unfinished, path);
  return path;
}
