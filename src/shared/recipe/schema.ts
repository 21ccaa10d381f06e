import { z } from 'zod';
import { amountSchema, cellSchema, identifierSchema as identifier, sideSchema } from './cellSchema.ts';

/** The format number written into every saved recipe. A change that old programs cannot read raises it. */
export const RECIPE_FORMAT = 1;

/** The format number of a file that holds many recipes. */
export const RECIPES_FORMAT = 1;

/** A name or a title: one line, which no control character breaks. */
const words = z
  .string()
  .trim()
  .min(1)
  .max(200)
  .regex(/^\P{Cc}*$/u, 'keep it on one line');

export const valueSchema = z.enum(['light', 'medium', 'dark']).describe('How light or dark the fabric is.');

const roleSchema = z.strictObject({
  id: identifier,
  name: words.describe('What the pattern calls this fabric, for example “Background”.'),
  value: valueSchema,
});

const parameterSchema = z.strictObject({
  id: z
    .string()
    .regex(/^[a-z][a-z0-9-]*$/, 'use small letters, digits and hyphens')
    .max(40)
    .describe('What amounts in the body call it.'),
  name: words.describe('What the studio calls it, for example “Rounds”.'),
  default: z.number().int().min(1).max(200).describe('Its value where a pattern gives none.'),
  least: z.number().int().min(1).max(200).default(1).describe('The least it may be.'),
  most: z.number().int().min(1).max(200).default(24).describe('The most it may be.'),
});

const tokenWords =
  'Names of the key, set apart by spaces, one for each column. A name may carry a turn: “A:90” is turned a quarter ' +
  'clockwise; “A:m” is mirrored left to right; “A:m180” is mirrored, then turned.';

const gridBodySchema = z.strictObject({
  kind: z.literal('grid').describe('Rows and columns of cells.'),
  columns: z.array(amountSchema).min(1).max(60).describe('Widths of the columns in grid units.'),
  rows: z.array(amountSchema).min(1).max(60).describe('Heights of the rows in grid units.'),
  key: z
    .record(
      z
        .string()
        .regex(/^[A-Za-z][A-Za-z0-9]*$/)
        .max(20),
      cellSchema,
    )
    .describe('What each name in the layout stands for.'),
  layout: z.array(z.string()).min(1).max(60).describe(tokenWords),
});

export const roundsBodySchema = z.strictObject({
  kind: z.literal('rounds').describe('Rounds of logs about a middle.'),
  core: cellSchema.describe('The middle: a unit or another recipe.'),
  coreWidth: amountSchema.describe('Width of the middle in grid units, or a parameter.'),
  coreHeight: amountSchema.describe('Height of the middle in grid units, or a parameter.'),
  strip: amountSchema.describe('Finished width of each log in grid units.'),
  rounds: amountSchema.describe('How often the logs go all the way round, or a parameter.'),
  order: z.array(sideSchema).length(4).describe('The sides in the order the logs are sewn, the same in every round.'),
  logs: z.tuple([identifier, identifier, identifier, identifier]).describe('The roles of those four logs.'),
});

/** A place on the grid; a corner of four numbers is reached from the one before it along an arc about the last two. */
const coordinate = z.number().min(-400).max(800);
const placeSchema = z.tuple([coordinate, coordinate]).describe('Grid units across and down.');
const drawnCornerSchema = z.union([placeSchema, z.tuple([coordinate, coordinate, coordinate, coordinate])]);

const drawnPatchSchema = z.strictObject({
  role: identifier,
  corners: z.array(drawnCornerSchema).min(2).max(400).describe('The corners in order, either way round.'),
});

const drawnSplitSchema = z.strictObject({
  inside: placeSchema.describe('A place inside the patch that is cut.'),
  from: placeSchema,
  to: placeSchema,
  through: z.array(placeSchema).max(40).optional().describe('Corners of the cut on its way.'),
  centre: placeSchema.optional().describe('The cut is an arc about this place.'),
  role: identifier.describe('The role of what lies to the right of the cut, looking from its start to its end.'),
});

export const drawingBodySchema = z.strictObject({
  kind: z.literal('drawing'),
  width: z.number().int().min(1).max(400).describe('Grid units across.'),
  height: z.number().int().min(1).max(400).describe('Grid units down.'),
  patches: z.array(drawnPatchSchema).min(1).max(1500).optional().describe('The patches as polygons.'),
  role: identifier.optional().describe('With splits: the role of the whole before it is cut.'),
  splits: z.array(drawnSplitSchema).max(1500).optional().describe('The cuts, in order.'),
  pins: z
    .array(
      z.strictObject({
        first: z
          .tuple([placeSchema, placeSchema])
          .optional()
          .describe('This seam is the last one of its part: both sides are made first.'),
        unit: z
          .tuple([placeSchema, placeSchema])
          .optional()
          .describe('The part between these two corners is one unit.'),
        method: z.string().max(80).optional().describe('And is made by this method.'),
      }),
    )
    .max(60)
    .optional()
    .describe('What the designer fixes of the sewing.'),
});

export const bodySchema = z.union([gridBodySchema, roundsBodySchema, drawingBodySchema]);

export const recipeSchema = z.strictObject({
  format: z.literal('piecewright-recipe').describe('Says that this is a recipe.'),
  version: z.literal(RECIPE_FORMAT).describe('The number of the format.'),
  id: identifier,
  name: words.describe('What the house calls the block.'),
  summary: z.string().trim().max(600).default('').describe('One sentence for the library.'),
  tags: z.array(z.string().trim().min(1).max(40)).max(20).default([]).describe('Words to find it by.'),
  finished: z.number().positive().max(120).describe('The usual finished width of the block, in inches.'),
  parameters: z.array(parameterSchema).max(12).default([]).describe('Whole numbers that a pattern may choose.'),
  roles: z.array(roleSchema).min(1).max(40).describe('The fabrics of the block, by the part they play.'),
  body: bodySchema.describe('What the block is made of.'),
});

/** A file of many recipes. Each is checked by itself, against `recipeSchema`. */
export const recipesFileSchema = z.strictObject({
  format: z.literal('piecewright-recipes').describe('Says that this file holds recipes.'),
  version: z.literal(RECIPES_FORMAT).describe('The format number of this file.'),
  recipes: z.array(z.unknown()).min(1).max(5000).describe('The recipes, each as in a recipe file.'),
});

export type { Amount, Cell, Corner, Side, UnitCell } from './cellSchema.ts';
export { identifierSchema } from './cellSchema.ts';
export { words as wordsSchema };
export type Recipe = z.infer<typeof recipeSchema>;
export type RecipeInput = z.input<typeof recipeSchema>;
export type Role = z.infer<typeof roleSchema>;
export type Value = z.infer<typeof valueSchema>;
export type Body = z.infer<typeof bodySchema>;
export type GridBody = z.infer<typeof gridBodySchema>;
export type RoundsBody = z.infer<typeof roundsBodySchema>;
export type DrawingBody = z.infer<typeof drawingBodySchema>;
