import { useEffect, useState } from 'react';
import type { RecipeCard } from '../../../shared/contract.ts';
import { putCells } from '../../../shared/pattern/edits/index.ts';
import type { Recipe } from '../../../shared/recipe/schema.ts';
import { gatherKept, revisionsOf } from '../../library/gather.ts';
import { Rows } from '../../parts/Rows.tsx';
import { Search } from '../../parts/Search.tsx';
import { usePattern, useStudio } from '../../state/hooks.tsx';
import type { PickedCells } from './pickedCells.ts';

/** How many recipes are offered at once. */
const AT_ONCE = 6;

/** Another recipe for the cells: from the pattern or the library, found by its words. */
export function OtherRecipe({ picked }: { readonly picked: PickedCells }) {
  const studio = useStudio();
  const pattern = usePattern();
  const [words, setWords] = useState('');
  const found = useFound(words);
  const { recipe, cells, token } = picked;
  const choose = async (id: string) => {
    const card = found.find((one) => one.id === id);
    const known = pattern.recipes.find((one) => one.id === id);
    const holds = { recipe: id, roles: rolesFor(known ?? card?.recipe, recipe) };
    const turn = token === null ? {} : { turn: token.turn };
    try {
      const kept =
        card === undefined || known !== undefined ? [] : [card, ...(await gatherKept(studio.host, card.recipe))];
      studio.act(putCells, {
        recipe: recipe.id,
        cells,
        holds,
        ...turn,
        carried: kept.map((one) => one.recipe),
        revisions: revisionsOf(kept),
      });
    } catch (thrown) {
      studio.sayWhy(thrown);
    }
  };
  const own = pattern.recipes.filter(({ id, name }) => id !== recipe.id && matches(name, words));
  const others = found.filter(({ id }) => id !== recipe.id && own.every((one) => one.id !== id));
  const rows = [
    ...own.map(({ id, name }) => ({ id, name, end: 'in this pattern' })),
    ...others.map(({ id, name }) => ({ id, name, end: 'library' })),
  ].slice(0, AT_ONCE);
  return (
    <>
      <Search label="Find a recipe" value={words} onChange={setWords} />
      <Rows
        label="Recipes for these cells"
        rows={rows.map((row) => ({ ...row, onPress: () => void choose(row.id) }))}
      />
    </>
  );
}

function matches(name: string, words: string): boolean {
  return name.toLocaleLowerCase().includes(words.trim().toLocaleLowerCase());
}

/** Each role of the held recipe to the recipe's role of the same name, else of the same value, else its first. */
function rolesFor(held: Recipe | undefined, { roles }: Recipe): Record<string, string> {
  const pairs = (held?.roles ?? []).map(({ id, value }) => {
    const same = roles.find((role) => role.id === id) ?? roles.find((role) => role.value === value) ?? roles[0];
    return [id, same?.id ?? id] as const;
  });
  return Object.fromEntries(pairs);
}

function useFound(words: string): readonly RecipeCard[] {
  const studio = useStudio();
  const [found, setFound] = useState<readonly RecipeCard[]>([]);
  useEffect(() => {
    let wanted = true;
    studio.host
      .recipes({ words, atMost: AT_ONCE + 1 })
      .then((cards) => wanted && setFound(cards))
      .catch((thrown) => wanted && studio.sayWhy(thrown));
    return () => {
      wanted = false;
    };
  }, [studio, words]);
  return found;
}
