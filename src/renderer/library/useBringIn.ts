import type { Imported } from '../../shared/contract.ts';
import { useStudio } from '../state/hooks.tsx';
import { refusalOf } from '../state/host.ts';
import type { Studio } from '../state/studio.ts';

/** One thing on the shelf. */
export interface Picked {
  readonly kind: 'pattern' | 'recipe';
  readonly id: string;
}

/**
 * Brings files into the library one after another and says what came of each.
 * @param onDone what to show of a file that came in; null when all of it was here already
 */
export function useBringIn(
  onDone: (picked: Picked | null) => void,
): (files: readonly Promise<File>[]) => Promise<void> {
  const studio = useStudio();
  return async (files) => {
    for (const file of files) {
      const imported = await bringIn(studio, await file);
      if (imported !== null) onDone(shown(imported));
    }
  };
}

function shown(imported: Imported): Picked | null {
  if (imported.kind !== 'recipes') return imported;
  const [id] = imported.ids;
  return id === undefined ? null : { kind: 'recipe', id };
}

async function bringIn(studio: Studio, file: File): Promise<Imported | null> {
  try {
    const imported = await studio.host.importFile({ name: file.name, text: await file.text() });
    studio.say(`${file.name} is in the library${countWords(imported)}.`);
    return imported;
  } catch (thrown) {
    studio.say(refusalOf(thrown).words, { tone: 'stops' });
    return null;
  }
}

/** What a file of many recipes brought: ": 12 new recipes, 3 were here already". */
function countWords(imported: Imported): string {
  if (imported.kind !== 'recipes') return '';
  const { ids, already } = imported;
  const fresh = ids.length === 1 ? '1 new recipe' : `${ids.length} new recipes`;
  return `: ${fresh}${already === 0 ? '' : `, ${already} ${already === 1 ? 'was' : 'were'} here already`}`;
}
