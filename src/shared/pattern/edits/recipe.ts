import type { Edit } from '../edit.ts';
import { withRevisions } from '../revisions.ts';
import { type OfRecipe, recipeName, withRecipe } from './drawn.ts';
import { lengthWithin, named, whole, withFields } from './list.ts';

export const renameRecipe: Edit<OfRecipe & { readonly name: string }> = {
  id: 'rename-recipe',
  name: ({ recipe, name }, pattern) => `Call the recipe ${recipeName(pattern, recipe)} “${name.trim()}”`,
  apply: (pattern, { recipe, name }) =>
    withRecipe(pattern, recipe, (one) => withFields(one, { name: named(name, one.name) })),
};

/** What the block usually measures, finished, inches. */
export const setUsualSize: Edit<OfRecipe & { readonly finished: number }> = {
  id: 'set-usual-size',
  name: ({ recipe }, pattern) => `Change the usual size of ${recipeName(pattern, recipe)}`,
  apply: (pattern, { recipe, finished }) => {
    const inches = lengthWithin(finished, 1 / 2, 120);
    return inches === null ? pattern : withRecipe(pattern, recipe, (one) => withFields(one, { finished: inches }));
  },
};

/** Notes which revision of the library's a recipe now is, once it has been kept there. */
export const noteRevision: Edit<OfRecipe & { readonly revision: number }> = {
  id: 'note-revision',
  name: ({ recipe }, pattern) => `Keep ${recipeName(pattern, recipe)} in the library`,
  apply: (pattern, { recipe, revision }) => {
    const kept = pattern.recipes.filter(({ id }) => id === recipe);
    return withRevisions(pattern, kept, { [recipe]: whole(revision, 1, 1_000_000) });
  },
};
