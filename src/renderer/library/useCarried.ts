import { useEffect, useState } from 'react';
import type { KeptRecipe } from '../../shared/contract.ts';
import { type Standing, standingOf } from '../../shared/pattern/revisions.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';
import { useHost } from '../state/hooks.tsx';

/** A recipe the open pattern carries, and the library's of the same id. */
export interface Carried {
  readonly recipe: Recipe;
  /** Null when the library has none. */
  readonly kept: KeptRecipe | null;
  readonly standing: Standing | null;
}

/**
 * How the recipes of a pattern stand to the library's; none until the library has answered.
 * @param asked changes when the library may have changed
 */
export function useCarried(pattern: Pattern | undefined, asked: unknown): readonly Carried[] {
  const host = useHost();
  const [kept, setKept] = useState<readonly KeptRecipe[] | null>(null);
  const ids = pattern?.recipes.map(({ id }) => id).join(' ') ?? '';
  // biome-ignore lint/correctness/useExhaustiveDependencies: `asked` asks the library anew
  useEffect(() => {
    let wanted = true;
    void host
      .keptRecipes(ids.split(' ').filter((id) => id !== ''))
      .catch(() => null)
      .then((found) => wanted && setKept(found));
    return () => {
      wanted = false;
    };
  }, [host, ids, asked]);
  if (kept === null || pattern === undefined) return [];
  return pattern.recipes.map((recipe) => {
    const own = kept.find((one) => one.recipe.id === recipe.id) ?? null;
    return { recipe, kept: own, standing: own === null ? null : standingOf(pattern, own.recipe, own.revision) };
  });
}
