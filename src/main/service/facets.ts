import { setImmediate as rest } from 'node:timers/promises';
import { facetTerms } from '../../shared/workroom/facetTerms.ts';
import { facetRules, recipeFacets } from '../../shared/workroom/recipeFacets.ts';
import type { Reader } from '../reader.ts';
import type { KeptRecipe } from '../store/keptRecipe.ts';
import type { Store } from '../store/store.ts';
import { bookFor } from './held.ts';

/** How long the host works at facets before it answers other calls, milliseconds; one recipe is never cut short. */
const AT_A_TIME = 10;

/** How long after a start the host begins to work out what it does not know yet, milliseconds. */
const AFTER_START = 500;

/** Keeps the terms that recipes are filtered by as the recipes are. */
export interface FacetKeeper {
  /** Answers once the terms of every recipe are worked out; other calls are answered meanwhile. */
  ready(): Promise<void>;
  /** Stops soon. */
  close(): Promise<void>;
}

export function keepFacets(store: Store, reader: Reader, report: (error: unknown) => void): FacetKeeper {
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
  const ready = () => {
    working ??= work().finally(() => {
      working = null;
    });
    return working;
  };
  // What goes wrong here, goes wrong again and is told when a search waits for it.
  const timer = setTimeout(() => void ready().catch(() => {}), AFTER_START);
  timer.unref();
  return {
    ready,
    close: async () => {
      closed = true;
      clearTimeout(timer);
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
