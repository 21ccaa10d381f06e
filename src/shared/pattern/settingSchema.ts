import { z } from 'zod';
import { identifierSchema } from '../recipe/schema.ts';

const inches = z.number().positive().max(400);

const tokenRow = z
  .string()
  .describe('Block letters, set apart by spaces; “A:90” is turned a quarter clockwise, “A:m” mirrored left to right.');

const placedTurnSchema = z.strictObject({
  column: z.number().int().min(0).describe('Counted from 0 at the left.'),
  row: z.number().int().min(0).describe('Counted from 0 at the top.'),
  block: z.string().describe('Letter and turn, as in the motif.'),
  size: z.string().optional().describe('The id of the one size it is for; left out, all sizes.'),
});

const sashingSchema = z
  .strictObject({
    strips: z
      .array(z.strictObject({ fabric: identifierSchema, width: inches.describe('Finished width, inches.') }))
      .min(1)
      .max(3)
      .describe('One to three strips that lie side by side in every sashing, from the left or the top.'),
    cornerstones: identifierSchema
      .optional()
      .describe('The fabric of the squares where sashings cross; left out, sashings run through.'),
    outside: z.boolean().optional().describe('Also round the outside of the blocks.'),
  })
  .describe('Strips between the blocks.');

/** What every setting has: the blocks, by a motif that repeats. */
const laidShape = {
  motif: z.array(tokenRow).min(1).max(24).describe('A small grid of blocks and turns that repeats across and down.'),
  single: z.array(placedTurnSchema).max(2000).default([]).describe('Single blocks that differ from the motif.'),
  reflect: z
    .enum(['across', 'down', 'both'])
    .optional()
    .describe(
      'The motif starts in the middle of the quilt and is reflected: to the left, to the top, or both; left out, it ' +
        'starts in the top left corner and is not.',
    ),
  reflected: z
    .enum(['mirrored', 'falling', 'rising'])
    .optional()
    .describe(
      'What a reflected block is: “mirrored” (the usual), or only turned, for blocks that are alike on both sides of ' +
        'their diagonal, “falling” from the top left or “rising” from the bottom left, such as log cabins.',
    ),
};

const straightSchema = z.strictObject({
  kind: z.literal('straight').describe('Blocks in rows and columns.'),
  ...laidShape,
  sashing: sashingSchema.optional(),
  sewn: z
    .enum(['rows', 'columns'])
    .optional()
    .describe('Whether blocks are sewn into rows or columns; left out, whichever way sews better.'),
});

const trianglesSchema = z
  .strictObject({
    fabric: identifierSchema.describe('Of the side triangles.'),
    corners: identifierSchema.optional().describe('Of the corner triangles; left out, as the side triangles.'),
    fit: z
      .enum(['rounded-up', 'exact', 'floating'])
      .optional()
      .describe(
        'How far they reach: “rounded-up” (the usual) lets the setting end on the next mark of the ruler, “exact” at the ' +
          'points of the blocks, “floating” further out.',
      ),
    float: inches.optional().describe('How far blocks float inside the edge, finished inches; only with “floating”.'),
  })
  .describe('The triangles that fill the edges of a setting on point.');

const onPointSchema = z.strictObject({
  kind: z.literal('on-point').describe('Blocks stand on their corners, in diagonal rows.'),
  ...laidShape,
  between: z
    .array(tokenRow)
    .min(1)
    .max(24)
    .optional()
    .describe('The motif of the blocks that stand between the others; left out, the same motif.'),
  sashing: sashingSchema.optional(),
  triangles: trianglesSchema,
});

export const stripsSchema = z.strictObject({
  kind: z.literal('strips').describe('Strips of blocks side by side, shifted or with sashing between them.'),
  ...laidShape,
  run: z.enum(['rows', 'columns']).describe('Whether the strips are rows or columns.'),
  shift: z
    .string()
    .regex(/^(?:1\/2|[12]\/3|[13]\/4|[1-4]\/5|[15]\/6)$/, 'use a part of a block such as 1/2, 1/3 or 3/4')
    .optional()
    .describe(
      'How much further on each strip begins than the one before it, as part of a block: “1/2”, “1/3”, “3/4” ….',
    ),
  fill: identifierSchema
    .optional()
    .describe('The fabric of plain pieces at the ends of shifted strips; left out, blocks are cut off there.'),
  sashing: sashingSchema.optional(),
});

export const settingSchema = z.discriminatedUnion('kind', [straightSchema, onPointSchema, stripsSchema]);

export type Setting = z.infer<typeof settingSchema>;
export type StraightSetting = z.infer<typeof straightSchema>;
export type OnPointSetting = z.infer<typeof onPointSchema>;
export type StripsSetting = z.infer<typeof stripsSchema>;
export type Sashing = z.infer<typeof sashingSchema>;
