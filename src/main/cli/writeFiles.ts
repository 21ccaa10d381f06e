import { existsSync, mkdirSync, rmdirSync, statSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { writeWhole } from '../paper/writeWhole.ts';
import { Refused } from '../refusal.ts';

/** Refuses a folder that cannot be one, before anything is worked out for it. */
export function checkFolder(folder: string): void {
  if (folder === '') throw new Refused('bad-input', 'Say which folder the files go to: --out FOLDER.');
  if (existsSync(folder) && !isFolder(folder)) {
    throw new Refused('bad-input', `“${folder}” is a file, so nothing can be put into it. Choose a folder.`);
  }
}

function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() === true;
}

/**
 * Writes files into a folder, which is made when it is not there: all of them, or none and no folder either.
 * @param files bytes by name
 * @returns their paths, in order
 */
export async function writeFiles(folder: string, files: ReadonlyMap<string, Uint8Array>): Promise<readonly string[]> {
  const paths = new Map([...files].map(([name, bytes]) => [join(folder, name), bytes]));
  const inTheWay = [...paths.keys()].find(isFolder);
  if (inTheWay !== undefined)
    throw new Refused('bad-input', `“${inTheWay}” is a folder. Nothing was written; move it away.`);
  const made = makeFolder(folder);
  try {
    await writeWhole(paths);
  } catch (error) {
    removeFolders(folder, made);
    throw error;
  }
  return [...paths.keys()];
}

/**
 * The outermost folder that had to be made; null when none had. One by one from the outermost: where a folder can never
 * be made, as under /proc, Node's own way of making several at once never ends.
 */
function makeFolder(folder: string): string | null {
  const missing: string[] = [];
  for (let now = resolve(folder); !existsSync(now) && now !== dirname(now); now = dirname(now)) missing.unshift(now);
  try {
    for (const one of missing) mkdirSync(one);
    return missing[0] ?? null;
  } catch (error) {
    // Whatever the machine's reason, and some systems give odd ones, there is no folder.
    if (!(error instanceof Error && 'syscall' in error)) throw error;
    throw new Refused('no-room', `The folder ${folder} cannot be made, so nothing was written. Choose another folder.`);
  }
}

/** From the innermost outwards; one that somebody else has put something into stays. */
function removeFolders(folder: string, outermost: string | null): void {
  if (outermost === null) return;
  try {
    for (let now = resolve(folder); ; now = dirname(now)) {
      rmdirSync(now);
      if (now === resolve(outermost)) return;
    }
  } catch {
    // What is left is empty, or somebody else's.
  }
}
