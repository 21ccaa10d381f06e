import { useState } from 'react';
import type { KeptRecipe } from '../../shared/contract.ts';
import { PanelPart } from '../app/SidePanel.tsx';
import { Rows } from '../parts/Rows.tsx';
import { useStudio, useStudioState } from '../state/hooks.tsx';
import { keepRecipe } from './recipeActs.ts';
import { TakeRecipe } from './TakeRecipe.tsx';
import { type Carried, useCarried } from './useCarried.ts';
import type { Shelf } from './useShelf.ts';

/** The open pattern's recipes that are not as in the library, and what can be done about each. */
export function CarriedRecipes({ shelf }: { readonly shelf: Shelf }) {
  const studio = useStudio();
  const pattern = useStudioState(({ history }) => history?.now);
  const carried = useCarried(pattern, shelf);
  const [news, setNews] = useState<KeptRecipe | null>(null);
  const apart = carried.filter(({ standing }) => standing !== 'same');
  if (apart.length === 0) return null;
  const rows = apart.map((one) => ({
    id: one.recipe.id,
    name: one.recipe.name,
    more: standingWords(one),
    end: actWords(one),
    onPress: () => {
      if (one.standing === 'newer' || one.standing === 'apart') setNews(one.kept);
      else void keepRecipe(studio, one.recipe, shelf.again);
    },
  }));
  return (
    <PanelPart title="Recipes it carries">
      <Rows label="Recipes that are not as in the library" rows={rows} />
      {news === null ? null : <TakeRecipe news={news} onClose={() => setNews(null)} />}
    </PanelPart>
  );
}

function standingWords({ kept, standing }: Carried): string {
  if (kept === null) return 'Not in the library';
  if (standing === 'newer') return `Revision ${kept.revision} is newer`;
  return standing === 'own' ? 'Changed in this pattern' : `Differs from the library’s revision ${kept.revision}`;
}

function actWords({ standing }: Carried): string {
  return standing === 'newer' || standing === 'apart' ? 'See what changes' : 'Keep in the library';
}
