import type { Imported } from '../../shared/contract.ts';
import { useStudio } from '../state/hooks.tsx';
import type { Studio } from '../state/studio.ts';

/** Brings files into the library one after another and says what came of each. */
export function useBringIn(onDone: (imported: Imported) => void): (files: readonly Promise<File>[]) => Promise<void> {
  const studio = useStudio();
  return async (files) => {
    for (const file of files) {
      const imported = await bringIn(studio, await file);
      if (imported !== null) onDone(imported);
    }
  };
}

async function bringIn(studio: Studio, file: File): Promise<Imported | null> {
  try {
    const imported = await studio.host.importFile({ name: file.name, text: await file.text() });
    studio.say(`${file.name} is in the library.`);
    return imported;
  } catch (thrown) {
    studio.sayWhy(thrown);
    return null;
  }
}
