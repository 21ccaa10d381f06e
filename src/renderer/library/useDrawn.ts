import { useCallback, useEffect, useMemo, useState } from 'react';
import type { PatternCard, RecipeCard } from '../../shared/contract.ts';
import type { Drawn } from '../state/away/pictures.ts';
import { useAway } from '../state/away/useAway.ts';
import { useStudio, useStudioState } from '../state/hooks.tsx';
import { gatherHeld } from './gather.ts';

type Drawings = Map<string, Drawn | null>;

/** Draws away from the window's thread, until the signal says that nobody looks any more. */
type Draw = (signal: AbortSignal) => Promise<Drawn | null>;

/** Pictures already drawn, so that the shelf is there at once when the designer comes back to it. */
const drawnPatterns: Drawings = new Map();
const drawnRecipes: Drawings = new Map();

/** A picture; null when it cannot be drawn, undefined until that is known. */
function usePicture(key: string, drawn: Drawings, draw: Draw): Drawn | null | undefined {
  const [, setCount] = useState(0);
  useEffect(() => {
    if (drawn.has(key)) return;
    const stop = new AbortController();
    const { signal } = stop;
    void draw(signal)
      .catch(() => null)
      .then((picture) => {
        if (signal.aborted) return;
        drawn.set(key, picture);
        setCount((before) => before + 1);
      });
    return () => stop.abort();
  }, [key, drawn, draw]);
  return drawn.get(key);
}

/** The quilt on a pattern's card. The open pattern is drawn as it is now. */
export function usePatternPicture({ id, revision }: PatternCard): Drawn | null | undefined {
  const { away, host } = useStudio();
  const open = useStudioState(({ history }) => (history?.now.id === id ? history.now : null));
  const now = useAway('drawPattern', open === null ? null : [open]);
  const draw: Draw = useCallback(
    async (signal) => (open === null ? away('drawPattern', [await host.lookAtPattern(id)], { signal }) : null),
    [away, host, id, open],
  );
  const kept = usePicture(open === null ? `${id} ${revision}` : '', drawnPatterns, draw);
  if (open === null) return kept;
  return now.answer ?? (now.working ? undefined : null);
}

/** The block on a recipe's card. */
export function useRecipePicture({ recipe }: Pick<RecipeCard, 'recipe'>): Drawn | null | undefined {
  const { away, host } = useStudio();
  const key = useMemo(() => JSON.stringify(recipe), [recipe]);
  const draw: Draw = useCallback(
    async (signal) => away('drawRecipe', [recipe, await gatherHeld(host, recipe)], { signal }),
    [away, host, recipe],
  );
  return usePicture(key, drawnRecipes, draw);
}
