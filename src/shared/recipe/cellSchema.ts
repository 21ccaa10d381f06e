import { z } from 'zod';

/** What names a recipe, a role, a method: a short name for a file. */
export const identifierSchema = z
  .string()
  .regex(/^[a-z0-9][a-z0-9-]*$/, 'use small letters, digits and hyphens')
  .max(80)
  .describe('A short name for the file: small letters, digits and hyphens.');

/** A whole number of grid units, or the name of a parameter that holds one. */
export const amountSchema = z
  .union([z.number().positive().max(400), z.string().min(1).max(40)])
  .describe('A number of grid units, or the name of one of the recipe’s parameters.');

export const sideSchema = z.enum(['top', 'right', 'bottom', 'left']);

/** Which corners of a stitch-and-flip rectangle are flipped, clockwise from the top left. */
const cornerSchema = z.enum(['top-left', 'top-right', 'bottom-right', 'bottom-left']);

const role = identifierSchema;
const two = z.tuple([role, role]).describe('Two roles of the recipe.');
const three = z.tuple([role, role, role]).describe('Three roles of the recipe.');
const four = z.tuple([role, role, role, role]).describe('Four roles of the recipe.');
const method = z.string().optional().describe('The way this unit is made; left out, the house chooses.');
const many = z.number().int().min(2).max(12);

/** What one cell of a grid holds: a unit the trade knows, or another recipe. Lying as the trade draws it. */
export const cellSchema = z.union([
  z.strictObject({ unit: z.literal('plain'), role }).describe('One plain square or rectangle.'),
  z
    .strictObject({ unit: z.literal('hst'), roles: two, method })
    .describe('Half-square triangle: the first role fills the top left, the second the bottom right.'),
  z
    .strictObject({ unit: z.literal('geese'), roles: two, method })
    .describe('Flying geese, pointing up: the goose, then the sky. Twice as wide as high.'),
  z
    .strictObject({
      unit: z.literal('corners'),
      role: role.describe('The rectangle’s role.'),
      corners: z
        .array(z.strictObject({ at: cornerSchema, role, size: amountSchema }))
        .min(1)
        .max(4)
        .describe('Which corners, each with its role and how far it reaches along the sides.'),
      method,
    })
    .describe('A rectangle with one to four corners sewn on by stitch-and-flip.'),
  z
    .strictObject({ unit: z.literal('four-patch'), roles: two, method })
    .describe('Four squares: the first role top left and bottom right, the second in the other two.'),
  z
    .strictObject({ unit: z.literal('qst'), roles: four, method })
    .describe('Quarter-square triangle: the roles of the triangles top, right, bottom, left.'),
  z
    .strictObject({ unit: z.literal('three-patch'), roles: three, method })
    .describe('Half a square and two quarters: the half bottom right, the quarters top and left.'),
  z
    .strictObject({
      unit: z.literal('square-in-square'),
      role: role.describe('The square in the middle.'),
      roles: four.describe('The corners clockwise from the top left.'),
      method,
    })
    .describe('A square on its point in a square.'),
  z
    .strictObject({
      unit: z.literal('half-rectangle'),
      roles: two,
      diagonal: z.enum(['rising', 'falling']).describe('Whether the seam rises or falls to the right.'),
      method,
    })
    .describe('A rectangle cut from corner to corner: the upper triangle, then the lower.'),
  z
    .strictObject({ unit: z.literal('nine-patch'), roles: three, method })
    .describe('Three by three squares: the corners, the middles of the sides, the middle.'),
  z
    .strictObject({ unit: z.literal('checkerboard'), roles: two, columns: many, rows: many, method })
    .describe('Equal squares that alternate, more than two by two: the first role top left.'),
  z
    .strictObject({
      unit: z.literal('rails'),
      roles: z.array(role).min(2).max(12).describe('From the top down.'),
      method,
    })
    .describe('Equal strips, each as long as the cell is wide.'),
  z
    .strictObject({
      unit: z.literal('quarter-circle'),
      roles: two,
      radius: amountSchema.describe('The radius in grid units.'),
      method,
    })
    .describe('A quarter of a circle about the top left corner of a square, then the rest.'),
  z
    .strictObject({
      recipe: identifierSchema,
      parameters: z
        .record(z.string(), z.number().int().positive())
        .optional()
        .describe('Its parameters, where they differ from its own.'),
      roles: z.record(role, role).optional().describe('Its roles, each to one of this recipe’s roles.'),
    })
    .describe('Another recipe, scaled to fill the cell.'),
]);

export type Cell = z.infer<typeof cellSchema>;
export type UnitCell = Exclude<Cell, { recipe: string }>;
export type Corner = z.infer<typeof cornerSchema>;
export type Side = z.infer<typeof sideSchema>;
export type Amount = z.infer<typeof amountSchema>;
