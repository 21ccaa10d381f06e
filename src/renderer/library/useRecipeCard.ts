import { useEffect, useState } from 'react';
import type { Contract, RecipeCard } from '../../shared/contract.ts';
import { useHost } from '../state/hooks.tsx';
import type { Shelf } from './useShelf.ts';

/** The card of a recipe that may stand further down a long shelf than has been fetched. */
async function fetchCard(host: Contract, id: string): Promise<RecipeCard | null> {
  const { name } = await host.openRecipe(id);
  const cards = await host.recipes({ words: name, atMost: 50 });
  return cards.find((card) => card.id === id) ?? null;
}

/** The card of the recipe that is picked; undefined while none is, or until it has been fetched. */
export function useRecipeCard(id: string | undefined, { recipes, waiting }: Shelf): RecipeCard | undefined {
  const host = useHost();
  const [fetched, setFetched] = useState<RecipeCard | null>(null);
  const here = recipes.find((card) => card.id === id);
  const missing = id !== undefined && here === undefined && !waiting ? id : null;
  useEffect(() => {
    setFetched(null);
    if (missing === null) return;
    let wanted = true;
    fetchCard(host, missing)
      .then((card) => wanted && setFetched(card))
      .catch(() => undefined); // A recipe that is gone has no card.
    return () => {
      wanted = false;
    };
  }, [host, missing]);
  return here ?? (fetched?.id === id ? (fetched ?? undefined) : undefined);
}
