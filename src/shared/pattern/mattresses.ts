import { z } from 'zod';
import { identifierSchema, wordsSchema } from '../recipe/schema.ts';

const inches = z.number().positive().max(400);

/** A mattress a quilt is to lie on. */
export const mattressSchema = z.strictObject({
  id: identifierSchema,
  name: wordsSchema.describe('What the mattress is called.'),
  width: inches.describe('Width, inches.'),
  length: inches.describe('Length, inches.'),
});

/** A table of mattresses: those that come with the studio, or the designer's own. */
export const mattressTableSchema = z.strictObject({
  format: z.literal('piecewright-mattresses').describe('Says that this is a table of mattresses.'),
  version: z.literal(1).describe('The number of the format.'),
  name: wordsSchema.describe('What the table is called.'),
  source: wordsSchema.describe('Where the measures come from.'),
  mattresses: z.array(mattressSchema).min(1).max(200).describe('The mattresses, in the order they are offered.'),
});

export type MattressTable = z.infer<typeof mattressTableSchema>;
export type Mattress = z.infer<typeof mattressSchema>;
