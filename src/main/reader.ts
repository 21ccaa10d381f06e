import { kindOfText, type Reading, readPatternText, readRecipesText, readRecipeText } from '../shared/pattern/load.ts';
import type { Pattern } from '../shared/pattern/schema.ts';
import type { Recipe } from '../shared/recipe/schema.ts';

/** How a text becomes a document; older formats are brought up, newer ones refused. */
export interface Reader {
  recipe(text: string): Reading<Recipe>;
  /** One recipe, a list of them, or a file of recipes. */
  recipes(text: string): Reading<readonly Recipe[]>;
  /**
   * A pattern may name starter recipes without carrying them, and recipe files that came along with it (`beside`: their
   * texts by name); the one answered carries all it needs.
   */
  pattern(text: string, beside?: ReadonlyMap<string, string>): Reading<Pattern>;
  kind(text: string): 'pattern' | 'recipe' | 'recipes' | null;
}

/**
 * Reads texts that came without a folder of their own: of files beside a pattern only those are known that came along.
 * @param starterTexts the starter recipes as their files have them; one that cannot be read is passed over here, and is
 * told of when it should be put into the library
 */
export function makeReader(starterTexts: readonly string[]): Reader {
  const starters = starterTexts.flatMap((text) => {
    const read = readRecipeText(text);
    return read.ok ? [read.value] : [];
  });
  return {
    recipe: readRecipeText,
    recipes: readRecipesText,
    pattern: (text, beside) => readPatternText(text, { starters, beside: (name) => beside?.get(name) ?? null }),
    kind: kindOfText,
  };
}
