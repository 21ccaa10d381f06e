import { spawnSync } from 'node:child_process';
import { copyFileSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import BetterSqlite from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { Refused, refusalOf } from '../../../src/main/refusal.ts';
import type { Migration } from '../../../src/main/store/migrate.ts';
import { migrations } from '../../../src/main/store/migrations/index.ts';
import { openStore } from '../../../src/main/store/store.ts';
import { freshFolder, storeIn, tickingClock } from '../helpers/folder.ts';
import { samplePattern } from '../helpers/samples.ts';

const next: Migration = {
  version: migrations.length + 1,
  name: 'test',
  up: (database) => database.exec('CREATE TABLE edition (id TEXT PRIMARY KEY) STRICT'),
};

/** The ledger as this program keeps it. */
const ours = migrations.map(({ version, name }) => ({ version, name }));

function openNewer(folder: string, more: readonly Migration[] = [next]) {
  return openStore({ folder, now: tickingClock(), migrations: [...migrations, ...more] });
}

function folderWithPattern(): string {
  const folder = freshFolder();
  storeIn(folder).patterns.save(samplePattern(), null);
  return folder;
}

function refusalFor(open: () => unknown) {
  try {
    open();
  } catch (error) {
    return refusalOf(error);
  }
  throw new Error('it was not refused');
}

function inspect<T>(file: string, look: (database: BetterSqlite.Database) => T): T {
  const database = new BetterSqlite(file, { readonly: true });
  try {
    return look(database);
  } finally {
    database.close();
  }
}

const ledgerOf = (file: string) =>
  inspect(file, (database) => database.prepare('SELECT version, name FROM ledger ORDER BY version').all());
const tableThere = (file: string, name: string) =>
  inspect(file, (database) => database.prepare('SELECT 1 FROM sqlite_schema WHERE name = ?').get(name) !== undefined);

describe('every library kept by an older Piecewright', () => {
  it('numbers its changes from 1 without a gap', () => {
    expect(migrations.map((migration) => migration.version)).toEqual(migrations.map((_, at) => at + 1));
  });

  it.each(migrations.map(({ version }) => version))('opens with all that version %i kept in it', (version) => {
    const folder = freshFolder();
    // Kept by keepFixture.ts when that version was the newest.
    copyFileSync(join(import.meta.dirname, 'fixtures', `version-${version}.library`), join(folder, 'library.db'));
    const store = storeIn(folder);
    expect(store.patterns.cards()).toEqual([
      {
        id: 'slack-water',
        title: 'Slack Water at Night',
        designer: 'Saltmarsh & Thread',
        sizes: 2,
        changed: '2026-03-01T08:00:00.000Z',
        revision: 2,
      },
    ]);
    expect(store.recipes.find({ words: 'moor' })).toMatchObject([
      { id: 'mooring', starter: true, usedIn: ['Slack Water at Night'] },
    ]);
    expect(store.recipes.find({ words: '', tag: 'rope' })).toMatchObject([{ id: 'hawser', starter: false }]);
    expect(store.recipes.find({ words: '', facets: ['unit:hst'] })).toEqual([]);
    expect(store.recipes.revisions('mooring').map(({ revision }) => revision)).toEqual([1]);
    expect(store.recipes.revisions('mooring')[0]?.body).toBe(store.recipes.read('mooring')?.body);
    expect(store.settings.read('last-open')).toBe('slack-water');
    expect(store.patterns.save(samplePattern(), 2)).toEqual({ revision: 3 });
  });
});

describe('a library that an older program kept', () => {
  it('is copied before it is changed, and the change is noted', () => {
    const folder = folderWithPattern();
    openNewer(folder).close();
    expect(ledgerOf(join(folder, 'library.db'))).toEqual([...ours, { version: next.version, name: 'test' }]);
    const copies = readdirSync(join(folder, 'backups'));
    expect(copies).toEqual([expect.stringMatching(`^library-${ours.length}-20260301T\\d{6}\\.db$`)]);
    const copy = join(folder, 'backups', copies[0] ?? '');
    expect(ledgerOf(copy)).toEqual(ours);
    expect(inspect(copy, (database) => database.prepare('SELECT id FROM pattern').pluck().all())).toEqual([
      'slack-water',
    ]);
  });

  it('is changed once, and copied once, however often it is opened', () => {
    const folder = folderWithPattern();
    for (let start = 0; start < 3; start += 1) openNewer(folder).close();
    expect(readdirSync(join(folder, 'backups'))).toHaveLength(1);
  });

  it('stays as it was when a change fails half way', () => {
    const folder = folderWithPattern();
    const fails: Migration = {
      ...next,
      up(database) {
        next.up(database);
        database.exec('DELETE FROM pattern');
        throw new Error('half way');
      },
    };
    expect(() => openNewer(folder, [fails])).toThrow('half way');
    expect(tableThere(join(folder, 'library.db'), 'edition')).toBe(false);
    expect(storeIn(folder).patterns.cards()).toHaveLength(1);
  });

  it('stays as it was when the program is killed half way', () => {
    const folder = folderWithPattern();
    const killed = spawnSync(process.execPath, [join(import.meta.dirname, 'diesMigrating.ts'), folder]);
    expect(killed.signal).toBe('SIGKILL');
    expect(tableThere(join(folder, 'library.db'), 'edition')).toBe(false);
    expect(ledgerOf(join(folder, 'library.db'))).toEqual(ours);
    expect(storeIn(folder).patterns.cards()).toHaveLength(1);
  });

  it('keeps what earlier changes did when a later one fails', () => {
    const folder = folderWithPattern();
    const fails: Migration = {
      version: next.version + 1,
      name: 'fails',
      up: () => {
        throw new Error('the second');
      },
    };
    expect(() => openNewer(folder, [next, fails])).toThrow('the second');
    expect(ledgerOf(join(folder, 'library.db'))).toHaveLength(migrations.length + 1);
  });
});

describe('a file that is not for this program', () => {
  it('is refused with advice when a newer Piecewright kept it, and left as it is', () => {
    const folder = folderWithPattern();
    openNewer(folder).close();
    const before = readFileSync(join(folder, 'library.db'));
    const refusal = refusalFor(() => storeIn(folder));
    expect(refusal.kind).toBe('newer-file');
    expect(refusal.words).toContain(join(folder, 'library.db'));
    expect(refusal.words).toContain('PIECEWRIGHT_HOME');
    expect(readFileSync(join(folder, 'library.db')).equals(before)).toBe(true);
  });

  it('is refused when it is another program’s database', () => {
    const folder = freshFolder();
    const other = new BetterSqlite(join(folder, 'library.db'));
    other.exec('CREATE TABLE ledger (version INTEGER)');
    other.close();
    expect(() => storeIn(folder)).toThrow(Refused);
    expect(tableThere(join(folder, 'library.db'), 'pattern')).toBe(false);
  });

  it('is refused when it is no database at all', () => {
    const folder = freshFolder();
    writeFileSync(join(folder, 'library.db'), 'Dear diary, today I cut into the good cloth.'.repeat(100));
    const refusal = refusalFor(() => storeIn(folder));
    expect(refusal).toMatchObject({ kind: 'broken', words: expect.stringContaining('backups') });
    expect(readFileSync(join(folder, 'library.db'), 'utf8')).toContain('Dear diary');
  });
});
