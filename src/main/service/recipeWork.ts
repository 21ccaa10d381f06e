import { setImmediate as rest } from 'node:timers/promises';
import type { Finding } from '../../shared/measure/finding.ts';
import type { Reading } from '../../shared/pattern/load.ts';
import { heldBy } from '../../shared/pattern/recipes.ts';
import { lower } from '../../shared/piecing/lower.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';
import { facetTerms } from '../../shared/workroom/facetTerms.ts';
import { facetRules, recipeFacets } from '../../shared/workroom/recipeFacets.ts';
import type { Reader } from '../reader.ts';
import type { KeptRecipe } from '../store/keptRecipe.ts';
import type { Store } from '../store/store.ts';
import { bookFor } from './held.ts';

/** Hears how far a check is, and stops it. */
export interface Listening {
  readonly tell?: ((done: number) => void) | undefined;
  /** The check then rejects with the signal's reason. */
  readonly signal?: AbortSignal | undefined;
}

/** What a file is, and the recipes in it when it is one of recipes. */
export type FileRead =
  | { readonly kind: 'pattern' | null }
  | { readonly kind: 'recipe' | 'recipes'; readonly recipes: Reading<readonly Recipe[]> };

/** What takes long about the library's recipes. */
export interface RecipeWork {
  /** Looks what a file is and reads its recipes. */
  read(text: string): Promise<FileRead>;
  /** Answers once the terms that recipes are filtered by are worked out for every one of them. */
  ready(): Promise<void>;
  /**
   * What is wrong with recipes that are to be brought in: each is drawn and sewn, with what it holds from among them or from
   * the library.
   * @param places where each stands in its file
   */
  check(recipes: readonly Recipe[], places: readonly string[], listening?: Listening): Promise<readonly Finding[]>;
  /** Stops soon. */
  close(): Promise<void>;
}

/** How long this is at work before other calls are answered, milliseconds; one recipe is never cut short. */
const AT_A_TIME = 10;

/** The work done here, on this thread. */
export function recipeWorkIn(store: Store, reader: Reader, report: (error: unknown) => void): RecipeWork {
  let closed = false;
  let working: Promise<void> | null = null;
  const rules = facetRules();
  const derive = (kept: KeptRecipe) => termsOf(kept, store, reader, report);
  const work = async () => {
    for (;;) {
      if (closed) return;
      const until = performance.now() + AT_A_TIME;
      const left = store.recipes.facets.workOut(rules, derive, () => performance.now() > until);
      if (left === 0) return;
      await rest();
    }
  };
  return {
    ready: () => {
      working ??= work().finally(() => {
        working = null;
      });
      return working;
    },
    read: async (text) => fileRead(text, reader),
    check: (recipes, places, listening = {}) => findingsIn(recipes, places, { store, reader, ...listening }),
    close: async () => {
      closed = true;
      await working?.catch(() => {});
    },
  };
}

/** No terms for a recipe that cannot be read or sewn: it is found by its words all the same. */
function termsOf(kept: KeptRecipe, store: Store, reader: Reader, report: (error: unknown) => void): readonly string[] {
  const read = reader.recipe(kept.body);
  if (!read.ok) return [];
  try {
    const facets = recipeFacets(read.value, bookFor(read.value, store, reader));
    return facets === null ? [] : facetTerms(facets);
  } catch (error) {
    report(error);
    return [];
  }
}

function fileRead(text: string, reader: Reader): FileRead {
  const kind = reader.kind(text);
  if (kind === 'recipes') return { kind, recipes: reader.recipes(text) };
  if (kind !== 'recipe') return { kind };
  const read = reader.recipe(text);
  return { kind, recipes: read.ok ? { ok: true, value: [read.value] } : read };
}

interface CheckedIn extends Listening {
  readonly store: Store;
  readonly reader: Reader;
}

async function findingsIn(
  recipes: readonly Recipe[],
  places: readonly string[],
  { store, reader, tell, signal }: CheckedIn,
): Promise<readonly Finding[]> {
  const own = new Map(recipes.map((recipe) => [recipe.id, recipe]));
  const findings: Finding[] = [];
  let until = performance.now() + AT_A_TIME;
  for (const [index, recipe] of recipes.entries()) {
    const book = bookFor(recipe, store, reader, own);
    const missing = heldBy(recipe).filter((id) => !book.has(id));
    const path = places[index] ?? '';
    if (missing.length > 0) findings.push(...missing.map((id) => missingFinding(recipe, id, path)));
    else {
      const lowered = lower(recipe, {}, book, path);
      if (!lowered.ok)
        findings.push(...lowered.findings.map((one) => ({ ...one, what: `“${recipe.name}”: ${one.what}` })));
    }
    if (performance.now() < until) continue;
    tell?.(index + 1);
    await rest();
    signal?.throwIfAborted();
    until = performance.now() + AT_A_TIME;
  }
  return findings;
}

function missingFinding(recipe: Recipe, id: string, path: string): Finding {
  const what = `“${recipe.name}” holds the recipe “${id}”, which is neither in this file nor in the library.`;
  return { level: 'stops', what, where: { path }, mend: 'Bring both in, in one file.' };
}
