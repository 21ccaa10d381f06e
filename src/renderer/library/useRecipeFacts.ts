import { useEffect, useState } from 'react';
import type { RecipeCard, RecipeRevision } from '../../shared/contract.ts';
import type { RecipeFacets } from '../../shared/workroom/recipeFacets.ts';
import { useHost, useStudio } from '../state/hooks.tsx';
import { gatherHeld } from './gather.ts';

/** What follows from a recipe's construction; null until it is worked out, or when it cannot be sewn. */
export function useRecipeFacets({ recipe }: RecipeCard): RecipeFacets | null {
  const { away } = useStudio();
  const host = useHost();
  const [facets, setFacets] = useState<RecipeFacets | null>(null);
  useEffect(() => {
    const stop = new AbortController();
    const { signal } = stop;
    void gatherHeld(host, recipe)
      .then((held) =>
        away('recipeFacets', [recipe, new Map([...held, recipe].map((one) => [one.id, one]))], { signal }),
      )
      .catch(() => null)
      .then((found) => signal.aborted || setFacets(found));
    return () => stop.abort();
  }, [away, host, recipe]);
  return facets;
}

/** Every saved revision of a recipe, the newest first; none until they are here. */
export function useRevisions({ id, revision }: RecipeCard): readonly RecipeRevision[] {
  const host = useHost();
  const [revisions, setRevisions] = useState<readonly RecipeRevision[]>([]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new revision asks for the list again
  useEffect(() => {
    let wanted = true;
    void host
      .recipeRevisions(id)
      .catch(() => [])
      .then((found) => wanted && setRevisions(found));
    return () => {
      wanted = false;
    };
  }, [host, id, revision]);
  return revisions;
}
