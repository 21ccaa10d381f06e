import type { Recipe } from '../recipe/schema.ts';
import type { Pattern } from './schema.ts';

/** A pattern or recipe as the text of a file: two spaces, a line end at the end. */
export function documentText(document: Pattern | Recipe): string {
  return `${JSON.stringify(document, null, 2)}\n`;
}
