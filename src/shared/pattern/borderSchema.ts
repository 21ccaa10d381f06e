import { z } from 'zod';
import { identifierSchema, wordsSchema } from '../recipe/schema.ts';

const piecedSchema = z
  .strictObject({
    units: z
      .string()
      .describe('Block letters with turns, as they lie along the top from the left; they repeat along every side.'),
    corner: z
      .string()
      .optional()
      .describe('The block in the top left corner, with its turn; left out, plain squares of the border’s fabric.'),
    run: z
      .enum(['round', 'middle'])
      .optional()
      .describe(
        'The units run on round the quilt (the usual), or start in the middle of every side and are reflected.',
      ),
  })
  .describe('A border of blocks; its width is how high they finish.');

export const borderSchema = z.strictObject({
  id: identifierSchema,
  name: wordsSchema.describe('What the printed pattern calls the border.'),
  fabric: identifierSchema,
  width: z.number().positive().max(400).describe('Finished width, inches.'),
  ends: z
    .number()
    .positive()
    .max(400)
    .optional()
    .describe('Finished width of the top and bottom strips where it is another, inches.'),
  first: z.enum(['sides', 'ends']).default('sides').describe('Which two strips are sewn on first.'),
  corners: z
    .enum(['butted', 'cornerstones', 'mitred'])
    .optional()
    .describe('How its strips meet: one over the other (the usual), at a square, or in a diagonal seam.'),
  cornerstones: identifierSchema
    .optional()
    .describe('The fabric of the squares in its corners; left out, the border’s own.'),
  lengthwise: z
    .boolean()
    .optional()
    .describe('Cut along the cloth, each strip in one piece; left out, across it and joined where it is too narrow.'),
  joins: z
    .enum(['straight', 'diagonal'])
    .optional()
    .describe(
      'How strips are joined end to end where the cloth is too narrow: straight (the usual) or on the diagonal.',
    ),
  pieced: piecedSchema.optional(),
});

export type Border = z.infer<typeof borderSchema>;
