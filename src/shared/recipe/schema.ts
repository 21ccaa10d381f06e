import { z } from 'zod';

/** The format number written into every saved recipe. A change that old programs cannot read raises it. */
export const RECIPE_FORMAT = 1;

/** The format number of a file that holds many recipes. */
export const RECIPES_FORMAT = 1;

const identifier = z
  .string()
  .regex(/^[a-z0-9][a-z0-9-]*$/, 'use small letters, digits and hyphens')
  .max(80)
  .describe('A short name for the file: small letters, digits and hyphens.');

/** A name or a title: one line, which no control character breaks. */
const words = z
  .string()
  .trim()
  .min(1)
  .max(200)
  .regex(/^\P{Cc}*$/u, 'keep it on one line');

/** A whole number of grid units, or the name of a parameter that holds one. */
const amountSchema = z
  .union([z.number().positive().max(400), z.string().min(1).max(40)])
  .describe('A number of grid units, or the name of one of the recipe’s parameters.');

export const valueSchema = z.enum(['light', 'medium', 'dark']).describe('How light or dark the fabric is.');

export const roleSchema = z.strictObject({
  id: identifier,
  name: words.describe('What the pattern calls this fabric, for example “Background”.'),
  value: valueSchema,
});

export const parameterSchema = z.strictObject({
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

export const unitKindSchema = z.enum(['plain', 'hst', 'geese', 'corners', 'four-patch']);

/** Which corners of a stitch-and-flip rectangle are flipped, clockwise from the top left. */
export const cornerSchema = z.enum(['top-left', 'top-right', 'bottom-right', 'bottom-left']);

const TWO_ROLES = 'Two roles of the recipe.';
const METHOD_WORDS = 'The way this unit is made; left out, the house chooses.';

/** What one cell of a grid holds: a unit the trade knows, or another recipe. */
export const cellSchema = z.union([
  z.strictObject({ unit: z.literal('plain'), role: identifier }).describe('One plain square or rectangle.'),
  z
    .strictObject({
      unit: z.literal('hst'),
      roles: z.tuple([identifier, identifier]).describe(TWO_ROLES),
      method: z.string().optional().describe(METHOD_WORDS),
    })
    .describe('Half-square triangle: the first role fills the top left, the second the bottom right.'),
  z
    .strictObject({
      unit: z.literal('geese'),
      roles: z.tuple([identifier, identifier]).describe(TWO_ROLES),
      method: z.string().optional().describe(METHOD_WORDS),
    })
    .describe('Flying geese, pointing up: the goose, then the sky. Twice as wide as high.'),
  z
    .strictObject({
      unit: z.literal('corners'),
      role: identifier.describe('The rectangle’s role.'),
      corners: z
        .array(z.strictObject({ at: cornerSchema, role: identifier, size: amountSchema }))
        .min(1)
        .max(4)
        .describe('Which corners, each with its role and how far it reaches along the sides.'),
      method: z.string().optional().describe(METHOD_WORDS),
    })
    .describe('A rectangle with one to four corners sewn on by stitch-and-flip.'),
  z
    .strictObject({
      unit: z.literal('four-patch'),
      roles: z.tuple([identifier, identifier]).describe(TWO_ROLES),
      method: z.string().optional().describe(METHOD_WORDS),
    })
    .describe('Four squares: the first role top left and bottom right, the second in the other two.'),
  z
    .strictObject({
      recipe: identifier,
      parameters: z
        .record(z.string(), z.number().int().positive())
        .optional()
        .describe('Its parameters, where they differ from its own.'),
      roles: z.record(identifier, identifier).optional().describe('Its roles, each to one of this recipe’s roles.'),
    })
    .describe('Another recipe, scaled to fill the cell.'),
]);

const tokenWords =
  'Names of the key, set apart by spaces, one for each column. A name may carry a turn: “A:90” is turned a quarter ' +
  'clockwise; “A:m” is mirrored left to right; “A:m180” is mirrored, then turned.';

export const gridBodySchema = z.strictObject({
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

export const sideSchema = z.enum(['top', 'right', 'bottom', 'left']);

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

export const drawnPatchSchema = z.strictObject({
  role: identifier,
  corners: z.array(drawnCornerSchema).min(2).max(400).describe('The corners in order, either way round.'),
});

export const drawnSplitSchema = z.strictObject({
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

export { identifier as identifierSchema, words as wordsSchema };
export type Recipe = z.infer<typeof recipeSchema>;
export type RecipeInput = z.input<typeof recipeSchema>;
export type Role = z.infer<typeof roleSchema>;
export type Value = z.infer<typeof valueSchema>;
export type Parameter = z.infer<typeof parameterSchema>;
export type Body = z.infer<typeof bodySchema>;
export type GridBody = z.infer<typeof gridBodySchema>;
export type RoundsBody = z.infer<typeof roundsBodySchema>;
export type DrawingBody = z.infer<typeof drawingBodySchema>;
export type Cell = z.infer<typeof cellSchema>;
export type UnitCell = Exclude<Cell, { recipe: string }>;
export type UnitKind = z.infer<typeof unitKindSchema>;
export type Corner = z.infer<typeof cornerSchema>;
export type Side = z.infer<typeof sideSchema>;
export type Amount = z.infer<typeof amountSchema>;
