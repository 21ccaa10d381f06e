import { readFile, stat } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import type { Contract, Imported, Refusal } from '../../shared/contract.ts';
import { knownRefusal, Refused } from '../refusal.ts';

/** The largest file that is read, bytes. */
const LARGEST = 32 * 1024 * 1024;

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
  const text = await textOf(path, name);
  const beside = await textsBeside(path, text);
  return service.importFile({ name, text, ...(beside.length === 0 ? {} : { beside: Object.fromEntries(beside) }) });
}

/** The recipe files in the same folder that a pattern names, as far as they can be read; what is missing is told later. */
async function textsBeside(path: string, text: string): Promise<readonly (readonly [string, string])[]> {
  const texts = await Promise.all(
    recipeFilesIn(text).map(async (name) => {
      const read = await textOf(join(dirname(path), name), name).catch(() => null);
      return read === null ? [] : [[name, read] as const];
    }),
  );
  return texts.flat();
}

/** Names only, never paths: a pattern somebody was sent must not reach about on her disk. */
function recipeFilesIn(text: string): readonly string[] {
  try {
    const { recipes } = JSON.parse(text) as { readonly recipes?: readonly { readonly file?: unknown }[] };
    const names = (Array.isArray(recipes) ? recipes : []).map((entry) => entry?.file);
    return names.filter(
      (name): name is string => typeof name === 'string' && /\.json$/i.test(name) && name === basename(name),
    );
  } catch {
    return [];
  }
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
