import { existsSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import { inject } from 'vitest';
import { buildWindow } from '../e2e/openStudio.ts';

/**
 * The folder of the built window, built once in a run. Two files that start together may both build it: the first to
 * finish wins.
 */
export async function builtWindow(): Promise<string> {
  const folder = join(inject('runFolder'), 'window');
  if (existsSync(folder)) return folder;
  const built = await buildWindow();
  try {
    renameSync(built.folder, folder);
  } catch (error) {
    built.remove();
    if (!existsSync(folder)) throw error;
  }
  return folder;
}
