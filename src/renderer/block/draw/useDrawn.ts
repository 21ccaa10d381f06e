import { useMemo } from 'react';
import type { Drawing } from '../../../shared/drawing/drawing.ts';
import type { BlockChoice, Pattern } from '../../../shared/pattern/schema.ts';
import { readDrawnBody } from '../../../shared/recipe/drawn.ts';
import type { DrawingBody, Recipe } from '../../../shared/recipe/schema.ts';
import { usePattern } from '../../state/hooks.tsx';
import type { ShownBlock } from '../useShownBlock.ts';

/** A block that is drawn freely, as the drawing table needs it. */
export interface DrawnBlock {
  readonly block: string;
  readonly recipe: Recipe;
  readonly body: DrawingBody;
  readonly drawing: Drawing;
  /** What a role is called, and the colour of its fabric in this pattern. */
  readonly roleName: (role: string) => string;
  readonly colourOf: (role: string) => string;
}

/** The block's drawing; null when its recipe is no drawing, or one that cannot be read. */
export function useDrawn({ choice, recipe }: Pick<ShownBlock, 'choice' | 'recipe'>): DrawnBlock | null {
  const colourOf = useColourOf(choice);
  return useMemo(() => drawnBlock(choice.id, recipe, colourOf), [choice.id, recipe, colourOf]);
}

/** The colour each role of a block is cut from in this pattern. */
export function useColourOf(choice: BlockChoice): (role: string) => string {
  const { fabrics } = usePattern();
  return useMemo(() => colours(choice.fabrics, fabrics), [choice.fabrics, fabrics]);
}

function colours(chosen: BlockChoice['fabrics'], fabrics: Pattern['fabrics']): (role: string) => string {
  return (role) => {
    const fabric = chosen[role] ?? role;
    return (fabrics.find(({ id }) => id === fabric) ?? fabrics[0])?.colour ?? '#ffffff';
  };
}

function drawnBlock(block: string, recipe: Recipe | undefined, colourOf: (role: string) => string): DrawnBlock | null {
  if (recipe?.body.kind !== 'drawing') return null;
  const read = readDrawnBody(recipe.body, 'body');
  if (!read.ok) return null;
  const roleName = (role: string) => recipe.roles.find(({ id }) => id === role)?.name ?? role;
  return { block, recipe, body: recipe.body, drawing: read.value, roleName, colourOf };
}
