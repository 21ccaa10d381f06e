import { type FileHandle, open, rename, unlink } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { Refused } from '../refusal.ts';

/** The file system's calls that writing needs. */
export interface Disk {
  open(path: string, flags: 'w' | 'r'): Promise<Pick<FileHandle, 'writeFile' | 'sync' | 'close'>>;
  rename(from: string, to: string): Promise<void>;
  unlink(path: string): Promise<void>;
}

const DISK: Disk = { open, rename, unlink };

/** Two writings of one file at once do not share a fresh file. */
let writings = 0;

/** A file that is written and not yet in its place. */
interface Fresh {
  readonly path: string;
  readonly fresh: string;
}

/**
 * Writes files whole or not at all: all of them to fresh files beside their places, onto the disk, and only then each into
 * its place. Whatever was there before stays until then.
 * @param files the bytes of each file, by its path
 * @throws Refused naming the folder when it is full, may not be written to or is not there
 */
export async function writeWhole(files: ReadonlyMap<string, Uint8Array>, disk: Disk = DISK): Promise<void> {
  const written: Fresh[] = [];
  let at = '';
  try {
    for (const [path, bytes] of files) {
      at = path;
      const fresh = freshName(path);
      written.push({ path, fresh });
      await writeSafely(fresh, bytes, disk);
    }
    for (const { path, fresh } of written) {
      at = path;
      await disk.rename(fresh, path);
    }
  } catch (error) {
    for (const { fresh } of written) await disk.unlink(fresh).catch(() => undefined);
    throw refusalFor(error, dirname(at), basename(at)) ?? error;
  }
  for (const folder of new Set([...files.keys()].map((path) => dirname(path)))) await settleFolder(folder, disk);
}

function freshName(path: string): string {
  writings += 1;
  return join(dirname(path), `.${basename(path)}.${process.pid}-${writings}.part`);
}

async function writeSafely(path: string, bytes: Uint8Array, disk: Disk): Promise<void> {
  const file = await disk.open(path, 'w');
  try {
    await file.writeFile(bytes);
    await file.sync();
  } finally {
    await file.close();
  }
}

/** The new name itself reaches the disk; systems that cannot sync a folder do so in their own time. */
async function settleFolder(folder: string, disk: Disk): Promise<void> {
  try {
    const handle = await disk.open(folder, 'r');
    try {
      await handle.sync();
    } finally {
      await handle.close();
    }
  } catch {
    // The file is whole under its name either way.
  }
}

const UNCHANGED = 'Nothing was written, and nothing that was there before is lost.';

function refusalFor(error: unknown, folder: string, name: string): Refused | null {
  const code = error instanceof Error && 'code' in error ? error.code : '';
  switch (code) {
    case 'ENOSPC':
    case 'EDQUOT':
      return new Refused(
        'no-room',
        `There is no room left for “${name}” in ${folder}. ${UNCHANGED} Make room and try again.`,
      );
    case 'EROFS':
    case 'EACCES':
    case 'EPERM':
      return new Refused(
        'no-room',
        `The folder ${folder} cannot be written to. ${UNCHANGED} Choose another folder for “${name}”.`,
      );
    case 'ENOENT':
    case 'ENOTDIR':
      return new Refused(
        'not-found',
        `There is no folder ${folder}. ${UNCHANGED} Make it first, or choose another for “${name}”.`,
      );
    case 'EISDIR':
    case 'ENOTEMPTY':
      return new Refused('bad-input', `“${name}” in ${folder} is a folder. ${UNCHANGED} Give the file another name.`);
    default:
      return null;
  }
}
