// Writes the JSON Schemas in resources/schemas, so that a text editor can help whoever writes a file by hand.
// They are made from the same zod schemas that read the files; tests/tooling/schemas.test.ts refuses old ones.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { z } from 'zod';
import { mattressTableSchema } from '../src/shared/pattern/mattresses.ts';
import { motifTemplateSchema } from '../src/shared/pattern/motifTemplate.ts';
import { PATTERN_FORMAT, patternSchema } from '../src/shared/pattern/schema.ts';
import { RECIPE_FORMAT, RECIPES_FORMAT, recipeSchema, recipesFileSchema } from '../src/shared/recipe/schema.ts';

export const schemaFolder = resolve(import.meta.dirname, '../resources/schemas');

/** The program reads each recipe by itself, so as to name it; a text editor is told all at once. */
const recipesSchema = recipesFileSchema.extend({
  recipes: z.array(recipeSchema).min(1).max(5000).describe('The recipes.'),
});

/** Each schema file's name and its text, as it is written to disk. */
export function schemaFiles(): ReadonlyMap<string, string> {
  return new Map([
    ['pattern.schema.json', written('pattern', PATTERN_FORMAT, 'A quilt pattern in all its sizes.', patternSchema)],
    ['recipe.schema.json', written('recipe', RECIPE_FORMAT, 'How one block is made.', recipeSchema)],
    ['mattresses.schema.json', written('mattresses', 1, 'A table of mattresses.', mattressTableSchema)],
    ['motif.schema.json', written('motif', 1, 'A classic setting of blocks.', motifTemplateSchema)],
    ['recipes.schema.json', written('recipes', RECIPES_FORMAT, 'Many recipes in one file.', recipesSchema)],
  ]);
}

/** What may stand in a file: defaults may be left out, so it is the schema of the input. */
function written(kind: string, version: number, description: string, schema: z.ZodType): string {
  const { $schema, properties, ...rest } = z.toJSONSchema(schema, { io: 'input' });
  const named = { $schema, $id: `urn:piecewright:${kind}:${version}`, title: `Piecewright ${kind}`, description };
  const text = JSON.stringify({ ...named, ...rest, properties: { $schema: OWN_SCHEMA, ...properties } }, null, 2);
  return `${text}\n`;
}

/** A file may say which schema an editor is to hold it against. */
const OWN_SCHEMA = { description: 'Where the schema of this file lies, for text editors.', type: 'string' };

if (import.meta.main) {
  mkdirSync(schemaFolder, { recursive: true });
  for (const [name, text] of schemaFiles()) {
    writeFileSync(join(schemaFolder, name), text);
    console.log(`resources/schemas/${name}`);
  }
}
