import type { Maybe } from '../shared/measure/finding.ts';
import type { Pattern } from '../shared/pattern/schema.ts';
import type { Recipe } from '../shared/recipe/schema.ts';

/** How the text of a file becomes a document; older formats are brought up, newer ones refused. */
export interface Reader {
  recipe(text: string, fileName: string): Maybe<Recipe>;
  /** A pattern may name starter recipes without carrying them; the one answered carries all it needs. */
  pattern(text: string, fileName: string): Maybe<Pattern>;
}
