import { RECIPES_FORMAT, type Recipe } from '../recipe/schema.ts';
import type { Pattern } from './schema.ts';

/** A pattern or recipe as the text of a file: two spaces, a line end at the end. */
export function documentText(document: Pattern | Recipe): string {
  return `${JSON.stringify(document, null, 2)}\n`;
}

/** Many recipes as the text of one file. */
export function recipesText(recipes: readonly Recipe[]): string {
  return `${JSON.stringify({ format: 'piecewright-recipes', version: RECIPES_FORMAT, recipes }, null, 2)}\n`;
}
