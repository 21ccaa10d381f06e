import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { About } from '../shared/contract.ts';
import type { Finding } from '../shared/measure/finding.ts';
import { mattressTables } from './mattressTables.ts';
import { workerPublisher } from './publish/workerPublisher.ts';
import { makeReader } from './reader.ts';
import { workerRecipes } from './recipes/workerRecipes.ts';
import { makeService, type Service } from './service.ts';
import { dataFolder, surroundings } from './store/folder.ts';
import { starterFiles } from './store/starters.ts';
import { openStore } from './store/store.ts';

/** The folder that holds `resources` and `package.json`: two up, from the source and from what is built of it. */
export const programFolder = join(import.meta.dirname, '..', '..');

/**
 * The service on the user's own data folder, as both the desktop window and the browser host use it, with the starter
 * recipes and the demo put in. Throws as `openStore` does.
 */
export function openService(host: About['host'], report: (error: unknown) => void): Service {
  const resources = join(programFolder, 'resources');
  const files = starterFiles(resources);
  const reader = makeReader(files.recipes.map((file) => file.text));
  const store = openStore({ folder: dataFolder(surroundings()), now: () => new Date() });
  try {
    for (const finding of store.starters.putIn(files, reader)) report(unreadable(finding));
  } catch (error) {
    // A full disk must not keep the designer from the patterns that are already there.
    report(error);
  }
  return makeService({
    store,
    reader,
    publisher: workerPublisher(),
    recipeWork: workerRecipes(store.folder, report),
    mattressTables: mattressTables(resources),
    host,
    version: version(),
    report,
  });
}

function unreadable({ what }: Finding): Error {
  return new Error(`A file that comes with Piecewright cannot be read. ${what}`);
}

function version(): string {
  const about: unknown = JSON.parse(readFileSync(join(programFolder, 'package.json'), 'utf8'));
  const named = typeof about === 'object' && about !== null && 'version' in about ? about.version : null;
  return typeof named === 'string' ? named : '';
}
