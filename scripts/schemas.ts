// Writes the JSON Schemas in resources/schemas, so that a text editor can help whoever writes a file by hand.
// They are made from the same zod schemas that read the files; tests/tooling/schemas.test.ts refuses old ones.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { z } from 'zod';
import { patternSchema } from '../src/shared/pattern/schema.ts';
import { recipeSchema } from '../src/shared/recipe/schema.ts';

export const schemaFolder = resolve(import.meta.dirname, '../resources/schemas');

/** Each schema file's name and its text, as it is written to disk. */
export function schemaFiles(): ReadonlyMap<string, string> {
  return new Map([
    ['pattern.schema.json', written('Piecewright pattern', 'A pattern in all its sizes.', patternSchema)],
    ['recipe.schema.json', written('Piecewright recipe', 'A block recipe.', recipeSchema)],
  ]);
}

/** What may stand in a file: defaults may be left out, so it is the schema of the input. */
function written(title: string, description: string, schema: z.ZodType): string {
  const { $schema, ...rest } = z.toJSONSchema(schema, { io: 'input' });
  return `${JSON.stringify({ $schema, title, description, ...rest }, null, 2)}\n`;
}

if (import.meta.main) {
  mkdirSync(schemaFolder, { recursive: true });
  for (const [name, text] of schemaFiles()) {
    writeFileSync(join(schemaFolder, name), text);
    console.log(`resources/schemas/${name}`);
  }
}
