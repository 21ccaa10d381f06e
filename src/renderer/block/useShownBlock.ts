import { useRef } from 'react';
import type { BlockChoice } from '../../shared/pattern/schema.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';
import type { SizedBlock, WorkedBlock, WorkedSize } from '../../shared/workroom/workedOut.ts';
import { useCurrentSize, usePattern, useSelection, useWorked } from '../state/hooks.tsx';
import type { Selection } from '../state/selection.ts';

/** The block the view is about, as chosen and as worked out. */
export interface ShownBlock {
  readonly choice: BlockChoice;
  readonly recipe: Recipe | undefined;
  /** Missing when the block cannot be drawn. */
  readonly worked: WorkedBlock | undefined;
  /** Missing when the size does not use the block, or cannot be laid out. */
  readonly sized: SizedBlock | undefined;
  readonly size: WorkedSize | null;
}

/** What a block finishes at in a size, inches: blocks may be larger than a place of the setting. */
export function widthIn({ quilt }: WorkedSize, block: string): number {
  return (quilt.measures[block] ?? quilt.block).width;
}

function blockOf(selection: Selection): string | null {
  return 'block' in selection ? selection.block : null;
}

/** The block that is selected, else the one looked at before, else the first. */
export function useShownBlock(): ShownBlock {
  const pattern = usePattern();
  const worked = useWorked();
  const size = useCurrentSize();
  const [selection] = useSelection();
  const last = useRef<string | null>(null);
  const wanted = blockOf(selection) ?? last.current;
  const choice = pattern.blocks.find(({ id }) => id === wanted) ?? (pattern.blocks[0] as BlockChoice);
  last.current = choice.id;
  return {
    choice,
    recipe: pattern.recipes.find(({ id }) => id === choice.recipe),
    worked: worked?.blocks.find(({ id }) => id === choice.id),
    sized: size?.blocks.find(({ id }) => id === choice.id),
    size,
  };
}
