import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { statSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import BetterSqlite from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { refusalOf } from '../../../src/main/refusal.ts';
import { openDatabase } from '../../../src/main/store/database.ts';
import { migrations } from '../../../src/main/store/migrations/index.ts';
import { patternsIn } from '../../../src/main/store/patterns.ts';
import { freshFolder, storeIn } from '../helpers/folder.ts';
import { samplePattern } from '../helpers/samples.ts';

/** Runs the program that saves for ever, kills it after it has told of so many saves, and answers the last it told of. */
async function killAfter(folder: string, saves: number): Promise<number> {
  const child = spawn(process.execPath, [join(import.meta.dirname, 'savesForever.ts'), folder], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = once(child, 'exit');
  let told = 0;
  for await (const line of createInterface({ input: child.stdout })) {
    told = Number(line);
    if (told === saves) child.kill('SIGKILL');
  }
  await ended;
  return told;
}

describe('a program killed while it saves', () => {
  it.each([1, 7, 60, 150])('loses no save it has answered: killed after %i', async (saves) => {
    const folder = freshFolder();
    const told = await killAfter(folder, saves);
    expect(told).toBeGreaterThanOrEqual(saves);

    const store = storeIn(folder);
    const kept = store.patterns.read('slack-water');
    expect(kept?.revision).toBeGreaterThanOrEqual(told);
    // The document is whole, and it is the one of its revision.
    expect(JSON.parse(kept?.body ?? '').words.introduction).toBe(`Save ${kept?.revision}. `.repeat(400));
    // The recipe, its tags and its index went together.
    const recipe = JSON.parse(store.recipes.read('mooring')?.body ?? '');
    expect(store.recipes.find({ words: recipe.name, tag: recipe.tags[0] })).toHaveLength(1);
    expect(store.recipes.find({ words: 'mooring' })).toHaveLength(1);
  });

  it('leaves a file that SQLite finds sound, with its search index', async () => {
    const folder = freshFolder();
    await killAfter(folder, 100);
    storeIn(folder);
    const database = new BetterSqlite(join(folder, 'library.db'));
    expect(database.pragma('integrity_check', { simple: true })).toBe('ok');
    database.exec("INSERT INTO recipe_words (recipe_words) VALUES ('integrity-check')");
    expect(database.pragma('foreign_key_check')).toEqual([]);
    database.close();
  });
});

describe('several programs that begin at once on a new folder', () => {
  it('make one library, and each can save into it', async () => {
    const folder = freshFolder();
    const programs = Array.from({ length: 4 }, (_, at) =>
      spawn(process.execPath, [join(import.meta.dirname, 'savesOnce.ts'), folder, `pattern-${at}`], {
        stdio: 'inherit',
      }),
    );
    const codes = await Promise.all(programs.map(async (program) => (await once(program, 'exit'))[0]));
    expect(codes).toEqual([0, 0, 0, 0]);
    const ids = storeIn(folder)
      .patterns.cards()
      .map((card) => card.id);
    expect(ids.sort()).toEqual(['pattern-0', 'pattern-1', 'pattern-2', 'pattern-3']);
  });
});

describe('an open library', () => {
  it('answers a commit only when the disk has it, and keeps its references whole', () => {
    const database = openDatabase(freshFolder(), migrations, () => new Date(0));
    const asked = (name: string) => database.pragma(name, { simple: true });
    // SQLite's documentation of PRAGMA synchronous: 2 is FULL.
    expect([asked('journal_mode'), asked('synchronous'), asked('fullfsync'), asked('foreign_keys')]).toEqual([
      'wal',
      2,
      1,
      1,
    ]);
    database.close();
  });

  it('is for its owner’s eyes only', () => {
    const folder = join(freshFolder(), 'a', 'b');
    storeIn(folder);
    if (process.platform !== 'win32') expect(statSync(folder).mode & 0o077).toBe(0);
  });
});

describe('a full disk', () => {
  it('refuses the save in words, keeps what was saved before, and takes the next one when there is room', () => {
    const database = openDatabase(freshFolder(), migrations, () => new Date(0));
    const patterns = patternsIn(database, () => new Date(0));
    patterns.save(samplePattern(), null);
    const pages = database.pragma('page_count', { simple: true });
    database.pragma(`max_page_count = ${pages}`);
    const introduction = 'Too much to say. '.repeat(400);
    const large = samplePattern({ words: { ...samplePattern().words, introduction, notes: introduction } });
    const refusal = refusalThrown(() => patterns.save(large, 1));
    expect(refusal).toMatchObject({ kind: 'no-room', words: expect.stringContaining('disk is full') });
    expect(patterns.read('slack-water')).toEqual({ body: JSON.stringify(samplePattern()), revision: 1 });
    database.pragma('max_page_count = 100000');
    expect(patterns.save(large, 1)).toEqual({ revision: 2 });
    database.close();
  });
});

function refusalThrown(act: () => unknown) {
  try {
    act();
  } catch (error) {
    return refusalOf(error);
  }
  throw new Error('it was not refused');
}
