import type { z } from 'zod';
import type { Reader } from '../../../src/main/reader.ts';
import { findingsOf } from '../../../src/main/service/issues.ts';
import { accept, type Maybe, refuse } from '../../../src/shared/measure/finding.ts';
import { type Pattern, patternSchema } from '../../../src/shared/pattern/schema.ts';
import { recipeSchema } from '../../../src/shared/recipe/schema.ts';

/** Reads documents by their schemas alone, for tests that are not about reading. */
export const plainReader: Reader = {
  recipe: (text, fileName) => read(recipeSchema, text, fileName),
  pattern: (text, fileName) => {
    const found = read(patternSchema, text, fileName);
    if (!found.ok) return found;
    if (found.value.recipes.some((recipe) => 'file' in recipe)) return refuse('A recipe is in another file.', 'recipes');
    return accept(found.value as Pattern);
  },
};

function read<T>(schema: z.ZodType<T>, text: string, fileName: string): Maybe<T> {
  try {
    const found = schema.safeParse(JSON.parse(text));
    return found.success ? accept(found.data) : { ok: false, findings: findingsOf(found.error) };
  } catch {
    return refuse(`${fileName} is not JSON.`, '');
  }
}
