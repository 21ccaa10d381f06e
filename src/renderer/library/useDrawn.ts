import { useCallback, useEffect, useMemo, useState } from 'react';
import type { PatternCard, RecipeCard } from '../../shared/contract.ts';
import { useHost, useStudioState } from '../state/hooks.tsx';
import { type Drawn, drawPattern, drawRecipe, gatherHeld } from './drawings.ts';

type Drawings = Map<string, Drawn | null>;

/** Pictures already drawn, so that the shelf is there at once when the designer comes back to it. */
const drawnPatterns: Drawings = new Map();
const drawnRecipes: Drawings = new Map();

function usePicture(key: string, drawn: Drawings, draw: () => Promise<Drawn | null>): Drawn | null {
  const [, setCount] = useState(0);
  useEffect(() => {
    if (drawn.has(key)) return;
    let wanted = true;
    void draw()
      .catch(() => null)
      .then((picture) => {
        drawn.set(key, picture);
        if (wanted) setCount((before) => before + 1);
      });
    return () => {
      wanted = false;
    };
  }, [key, drawn, draw]);
  return drawn.get(key) ?? null;
}

/** The quilt on a pattern's card. The open pattern is drawn as it is now. */
export function usePatternPicture({ id, revision }: PatternCard): Drawn | null {
  const host = useHost();
  const open = useStudioState(({ history }) => (history?.now.id === id ? history.now : null));
  const now = useMemo(() => (open === null ? null : drawPattern(open)), [open]);
  const draw = useCallback(
    () => (open === null ? host.lookAtPattern(id).then(drawPattern) : Promise.resolve(null)),
    [host, id, open],
  );
  const kept = usePicture(open === null ? `${id} ${revision}` : '', drawnPatterns, draw);
  return now ?? kept;
}

/** The block on a recipe's card. */
export function useRecipePicture({ recipe }: Pick<RecipeCard, 'recipe'>): Drawn | null {
  const host = useHost();
  const key = useMemo(() => JSON.stringify(recipe), [recipe]);
  const draw = useCallback(() => gatherHeld(host, recipe).then((held) => drawRecipe(recipe, held)), [host, recipe]);
  return usePicture(key, drawnRecipes, draw);
}
