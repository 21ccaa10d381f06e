import type { FileText, Imported } from '../../shared/contract.ts';
import { seemsOther } from '../../shared/pattern/seems.ts';
import { bare, picturesIn } from '../photograph/carried.ts';
import type { Reader } from '../reader.ts';
import type { Store } from '../store/store.ts';
import { accepted } from './documents.ts';
import { importRecipes } from './importRecipes.ts';
import { freshId } from './imports.ts';
import type { RecipeWork } from './recipeWork.ts';

/** Keeps what a file holds that the designer chose: a pattern, a recipe, or many recipes. All of it or nothing. */
export async function importFile(
  store: Store,
  reader: Reader,
  { name, text, beside = {} }: FileText,
  work: RecipeWork,
): Promise<Imported> {
  const kind = reader.kind(text);
  const other = kind === null ? seemsOther(text) : null;
  if (other !== null) return accepted({ ok: false, findings: [other], newer: false }, name);
  if (kind === 'recipes') {
    const placeOf = (index: number) => (text.trimStart().startsWith('[') ? `[${index}]` : `recipes[${index}]`);
    const brought = await importRecipes(store, reader, name, accepted(reader.recipes(text), name), placeOf, work);
    const ids = brought.flatMap(({ id, isNew }) => (isNew ? [id] : []));
    return { kind, ids, already: brought.length - ids.length };
  }
  if (kind === 'recipe') {
    const recipe = accepted(reader.recipe(text), name);
    const [brought] = await importRecipes(store, reader, name, [recipe], () => '', work);
    return { kind, id: brought?.id ?? recipe.id };
  }
  // Revisions are counted by the library they were saved in, which may be another.
  const { revisions: _theirs, ...pattern } = accepted(reader.pattern(text, new Map(Object.entries(beside))), name);
  const pictures = await picturesIn(pattern, name);
  const id = freshId(pattern.id, store.patterns.has);
  store.photographs.keep(pictures);
  store.patterns.save({ ...bare(pattern), id }, null);
  return { kind: 'pattern', id };
}
