import type { FileText, Imported } from '../../shared/contract.ts';
import { seemsOther } from '../../shared/pattern/seems.ts';
import { bare, picturesIn } from '../photograph/carried.ts';
import { accepted } from './documents.ts';
import { importRecipes } from './importRecipes.ts';
import { freshId, type ImportNeeds } from './imports.ts';
import type { FileRead } from './recipeWork.ts';

/** Keeps what a file holds that the designer chose: a pattern, a recipe, or many recipes. All of it or nothing. */
export async function importFile({ name, text, beside = {} }: FileText, needs: ImportNeeds): Promise<Imported> {
  const { store, reader, work, tell, signal } = needs;
  tell?.(0, 'Reading the file');
  const file = await work.read(text);
  signal?.throwIfAborted();
  if (file.kind === 'recipe' || file.kind === 'recipes') return keepRecipes(name, text, file, needs);
  const other = file.kind === null ? seemsOther(text) : null;
  if (other !== null) return accepted({ ok: false, findings: [other], newer: false }, name);
  // Revisions are counted by the library they were saved in, which may be another.
  const { revisions: _theirs, ...pattern } = accepted(reader.pattern(text, new Map(Object.entries(beside))), name);
  const pictures = await picturesIn(pattern, name);
  signal?.throwIfAborted();
  const id = freshId(pattern.id, store.patterns.has);
  store.photographs.keep(pictures);
  store.patterns.save({ ...bare(pattern), id }, null);
  return { kind: 'pattern', id };
}

async function keepRecipes(
  name: string,
  text: string,
  file: Extract<FileRead, { kind: 'recipe' | 'recipes' }>,
  needs: ImportNeeds,
): Promise<Imported> {
  const inFile = text.trimStart().startsWith('[') ? '' : 'recipes';
  const placeOf = (index: number) => (file.kind === 'recipe' ? '' : `${inFile}[${index}]`);
  const brought = await importRecipes(name, accepted(file.recipes, name), placeOf, needs);
  if (file.kind === 'recipe') return { kind: 'recipe', id: brought[0]?.id ?? '' };
  const ids = brought.flatMap(({ id, isNew }) => (isNew ? [id] : []));
  return { kind: 'recipes', ids, already: brought.length - ids.length };
}
