import type { Imported } from '../../shared/contract.ts';
import { useStudio } from '../state/hooks.tsx';
import type { Studio } from '../state/studio.ts';

/** One thing on the shelf. */
export interface Picked {
  readonly kind: 'pattern' | 'recipe';
  readonly id: string;
}

/**
 * Brings files into the library one after another, recipes first, and says what came of each.
 * @param onDone what to show of a file that came in; null when all of it was here already
 */
export function useBringIn(
  onDone: (picked: Picked | null) => void,
): (files: readonly Promise<File>[]) => Promise<void> {
  const studio = useStudio();
  return async (chosen) => {
    const files = (await Promise.all(chosen)).sort((a, b) => Number(isRecipe(b)) - Number(isRecipe(a)));
    for (const file of files) {
      const imported = await bringIn(studio, file, files);
      if (imported !== null) onDone(shown(imported));
    }
  };
}

function shown(imported: Imported): Picked | null {
  if (imported.kind !== 'recipes') return imported;
  const [id] = imported.ids;
  return id === undefined ? null : { kind: 'recipe', id };
}

/** A pattern may need recipe files that were chosen along with it. */
async function bringIn(studio: Studio, file: File, all: readonly File[]): Promise<Imported | null> {
  try {
    const recipes = isRecipe(file) ? [] : all.filter((other) => other !== file && isRecipe(other));
    const texts = await Promise.all(recipes.map(async (recipe) => [recipe.name, await recipe.text()] as const));
    const beside = texts.length === 0 ? {} : { beside: Object.fromEntries(texts) };
    const imported = await studio.host.importFile({ name: file.name, text: await file.text(), ...beside });
    studio.say(`${file.name} is in the library${countWords(imported)}.`);
    return imported;
  } catch (thrown) {
    studio.sayWhy(thrown);
    return null;
  }
}

function isRecipe({ name }: File): boolean {
  return name.endsWith('.recipe.json');
}

/** What a file of many recipes brought: ": 12 new recipes, 3 were here already". */
function countWords(imported: Imported): string {
  if (imported.kind !== 'recipes') return '';
  const { ids, already } = imported;
  const fresh = ids.length === 1 ? '1 new recipe' : `${ids.length} new recipes`;
  return `: ${fresh}${already === 0 ? '' : `, ${already} ${already === 1 ? 'was' : 'were'} here already`}`;
}
