import { readFile, stat } from 'node:fs/promises';
import { basename, resolve } from 'node:path';
import type { Contract, Imported, Refusal } from '../../shared/contract.ts';
import { knownRefusal, Refused } from '../refusal.ts';

/** The largest file that is read, bytes. */
const LARGEST = 16 * 1024 * 1024;

/** What Piecewright opens from the desktop. */
export const FILE_ENDINGS = ['json'];

/** The pattern and recipe files among the words a program was started with in `folder`, as whole paths. */
export function filesAmong(words: readonly string[], folder: string): readonly string[] {
  return words
    .filter((word) => /\.(pattern|recipes?)\.json$/i.test(word) && !word.startsWith('-'))
    .map((word) => resolve(folder, word));
}

/** Keeps the pattern or recipe in the file at `path`; rejects with a `Refused` that names the file. */
export async function importFrom(path: string, service: Pick<Contract, 'importFile'>): Promise<Imported> {
  const name = basename(path);
  return service.importFile({ name, text: await textOf(path, name) });
}

async function textOf(path: string, name: string): Promise<string> {
  try {
    const { size } = await stat(path);
    if (size <= LARGEST) return await readFile(path, 'utf8');
  } catch {
    throw new Refused('not-found', `${name} cannot be read. Is it still there, and may you read it?`);
  }
  throw new Refused('bad-input', `${name} is too large to be a pattern or a recipe.`);
}

/** A refusal as the lines of a message: what is so, and each place that is not as it should be. */
export function messageOf(error: unknown): { readonly message: string; readonly detail: string } {
  const refusal: Refusal = knownRefusal(error) ?? { kind: 'broken', words: 'The file could not be opened.' };
  const more = (refusal.findings ?? []).slice(1, 6).map((finding) => finding.what);
  return { message: refusal.words, detail: more.join('\n') };
}
