import { readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { Refused } from '../refusal.ts';

/** A file somebody named, and its text. */
export interface Source {
  /** As it was named. */
  readonly path: string;
  readonly text: string;
}

/** The largest file that is read, bytes: a large pattern with sixty photographs. */
const LARGEST = 32_000_000;

/**
 * The text of a file.
 * @throws Refused naming the file when it is missing, no file, too large, unreadable or no text
 */
export function readSource(path: string): Source {
  try {
    const about = statSync(path);
    if (about.isDirectory()) throw refused(`“${path}” is a folder, not a file.`);
    if (!about.isFile()) throw refused(`“${path}” is not a file that can be read whole.`);
    if (about.size > LARGEST) throw refused(tooLarge(path, about.size));
    return { path, text: textOf(readFileSync(path), path) };
  } catch (error) {
    throw refusalFor(error, path) ?? error;
  }
}

/** Reads files of the same folder; null for one that is not there or cannot be read. */
export function besideOf(path: string): (name: string) => string | null {
  return (name) => {
    try {
      return readSource(join(dirname(path), name)).text;
    } catch (error) {
      if (error instanceof Refused) return null;
      throw error;
    }
  };
}

function refused(words: string): Refused {
  return new Refused('bad-input', words);
}

function tooLarge(path: string, bytes: number): string {
  const megabytes = (size: number) => `${(size / 1_000_000).toLocaleString('en', { maximumFractionDigits: 1 })} MB`;
  return `“${path}” has ${megabytes(bytes)}; a pattern or recipe has ${megabytes(LARGEST)} at most.`;
}

function textOf(bytes: Uint8Array, path: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw refused(`“${path}” is not text in UTF-8. Save it as UTF-8 and try again.`);
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  ENOTDIR: 'there is no such file',
  EACCES: 'you may not read it',
  EPERM: 'you may not read it',
  EISDIR: 'it is a folder, not a file',
  ELOOP: 'its links lead round in a circle',
  ENAMETOOLONG: 'no file has a name that long',
};

function refusalFor(error: unknown, path: string): Refused | null {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  const reason = REASONS[code] ?? (code === 'ERR_INVALID_ARG_VALUE' ? 'that is no name of a file' : undefined);
  return reason === undefined ? null : refused(`“${path}” cannot be read: ${reason}.`);
}
