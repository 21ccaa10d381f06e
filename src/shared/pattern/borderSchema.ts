import { z } from 'zod';
import { identifierSchema, wordsSchema } from '../recipe/schema.ts';

export const borderSchema = z.strictObject({
  id: identifierSchema,
  name: wordsSchema.describe('What the printed pattern calls the border.'),
  fabric: identifierSchema,
  width: z.number().positive().max(400).describe('Finished width, inches.'),
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
});

export type Border = z.infer<typeof borderSchema>;
