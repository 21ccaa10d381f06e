import { addBlock } from '../../shared/pattern/edits/index.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';
import { Button } from '../parts/Button.tsx';
import { useStudio, useStudioState } from '../state/hooks.tsx';
import { gatherHeld } from './drawings.ts';
import { attempt } from './patternActs.ts';

/** Puts the recipe into the open pattern as one more block, and goes to it. */
export function AddToPattern({ recipe }: { readonly recipe: Recipe }) {
  const studio = useStudio();
  const open = useStudioState(({ history }) => history?.now);
  if (open === undefined || open.blocks.length >= 26) return null;
  const add = () =>
    attempt(studio, async () => {
      const others = await gatherHeld(studio.host, recipe);
      studio.act(addBlock, { recipe, others });
      const block = studio.store.getState().history?.now.blocks.at(-1);
      if (block === undefined) return;
      studio.select({ kind: 'block', block: block.id });
      studio.show('block');
    });
  return <Button onPress={() => void add()}>Add it to “{open.title}”</Button>;
}
