import { closeSync, fsyncSync, openSync } from 'node:fs';

/** Answers when the file's bytes are on the disk itself and not only in the machine's memory. */
export function syncToDisk(path: string): void {
  const file = openSync(path, 'r+');
  try {
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}
