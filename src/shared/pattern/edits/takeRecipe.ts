import type { Recipe } from '../../recipe/schema.ts';
import type { Edit } from '../edit.ts';
import { isAlike, withRevisions } from '../revisions.ts';
import type { BlockChoice, Pattern } from '../schema.ts';
import { fabricFor } from './blocks.ts';

/** What is taken from the library into a pattern. */
export interface TakenRecipe {
  readonly recipe: Recipe;
  /** Every recipe it holds, directly or through others: those the pattern has not are carried from now on. */
  readonly held?: readonly Recipe[];
  /** The library's revision of each, where it is known. */
  readonly revisions?: Readonly<Record<string, number>>;
}

/**
 * Takes another revision of a recipe the pattern carries. Blocks keep their fabrics, methods and parameters as far as the
 * recipe still has those roles and parameters; a new role is cut from a fabric of its own name or value.
 */
export const takeRecipe: Edit<TakenRecipe> = {
  id: 'take-recipe',
  name: ({ recipe, revisions }) => {
    const revision = revisions?.[recipe.id];
    return `Take ${revision === undefined ? 'the library’s' : `revision ${revision} of`} ${recipe.name}`;
  },
  apply: (pattern, { recipe, held = [], revisions = {} }) => {
    const carried = pattern.recipes.find(({ id }) => id === recipe.id);
    if (carried === undefined) return pattern;
    const known = new Set(pattern.recipes.map(({ id }) => id));
    const missing = held.filter(({ id }) => !known.has(id));
    const noted = withRevisions(pattern, [recipe, ...missing], revisions);
    if (missing.length === 0 && isAlike(carried, recipe)) return noted;
    const others = noted.recipes.map((one) => (one === carried ? recipe : one));
    const blocks = noted.blocks.map((block) => (block.recipe === recipe.id ? refit(block, recipe, pattern) : block));
    return { ...noted, recipes: [...others, ...missing], blocks };
  },
};

/** The block's choices as far as the recipe still asks for them. */
function refit(block: BlockChoice, recipe: Recipe, pattern: Pattern): BlockChoice {
  const fabrics = recipe.roles.map((role) => [role.id, block.fabrics[role.id] ?? fabricFor(pattern, role)] as const);
  const parameters = recipe.parameters.flatMap(({ id, least, most }) => {
    const chosen = block.parameters[id];
    return chosen === undefined ? [] : [[id, Math.max(least, Math.min(most, chosen))] as const];
  });
  return { ...block, fabrics: Object.fromEntries(fabrics), parameters: Object.fromEntries(parameters) };
}
