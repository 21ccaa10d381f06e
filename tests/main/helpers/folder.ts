import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach } from 'vitest';
import { openStore, type Store } from '../../../src/main/store/store.ts';

const folders: string[] = [];
const stores: Store[] = [];

afterEach(() => {
  for (const store of stores.splice(0)) store.close();
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** An empty folder that is gone after the test. */
export function freshFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'piecewright-'));
  folders.push(folder);
  return folder;
}

/** A clock that moves on by a minute each time it is read. */
export function tickingClock(start = '2026-03-01T08:00:00.000Z'): () => Date {
  let time = Date.parse(start);
  return () => {
    time += 60_000;
    return new Date(time);
  };
}

/** A store in `folder`, closed after the test. */
export function storeIn(folder: string = freshFolder(), start?: string): Store {
  const store = openStore({ folder, now: tickingClock(start) });
  stores.push(store);
  return store;
}
