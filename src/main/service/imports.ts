import type { Reader } from '../reader.ts';
import type { Store } from '../store/store.ts';
import type { Tell } from './publisher.ts';
import type { RecipeWork } from './recipeWork.ts';

/** What bringing a file in needs, and who hears how far it is. */
export interface ImportNeeds {
  readonly store: Store;
  readonly reader: Reader;
  readonly work: RecipeWork;
  readonly tell?: Tell | undefined;
  /** Nothing is kept once it is raised. */
  readonly signal?: AbortSignal | undefined;
}

/** The longest id a document may have. */
const LONGEST = 80;

/** The id itself when nobody has it, else the first of "id-2", "id-3"… that is free. */
export function freshId(id: string, taken: (id: string) => boolean): string {
  if (!taken(id)) return id;
  for (let number = 2; ; number += 1) {
    const ending = `-${number}`;
    const candidate = id.slice(0, LONGEST - ending.length) + ending;
    if (!taken(candidate)) return candidate;
  }
}
