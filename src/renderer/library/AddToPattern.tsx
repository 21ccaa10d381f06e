import type { RecipeCard } from '../../shared/contract.ts';
import { addBlock } from '../../shared/pattern/edits/index.ts';
import { Button } from '../parts/Button.tsx';
import { useStudio, useStudioState } from '../state/hooks.tsx';
import { gatherKept, revisionsOf } from './gather.ts';
import { attempt } from './patternActs.ts';

/** Puts the recipe into the open pattern as one more block, and goes to it. */
export function AddToPattern({ card }: { readonly card: RecipeCard }) {
  const studio = useStudio();
  const open = useStudioState(({ history }) => history?.now);
  if (open === undefined || open.blocks.length >= 26) return null;
  const add = () =>
    attempt(studio, async () => {
      const { recipe, revision } = card;
      const held = await gatherKept(studio.host, recipe);
      const revisions = revisionsOf([{ recipe, revision }, ...held]);
      studio.act(addBlock, { recipe, others: held.map((kept) => kept.recipe), revisions });
      const block = studio.store.getState().history?.now.blocks.at(-1);
      if (block === undefined) return;
      studio.select({ kind: 'block', block: block.id });
      studio.show('block');
    });
  return <Button onPress={() => void add()}>Add it to “{open.title}”</Button>;
}
