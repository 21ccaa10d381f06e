import { z } from 'zod';
import { identifierSchema, recipeSchema, valueSchema, wordsSchema } from '../recipe/schema.ts';
import { borderSchema } from './borderSchema.ts';
import { keptPlanSchema } from './keptPlan.ts';
import { carriedSchema, photographSchema } from './photograph.ts';
import { settingSchema } from './settingSchema.ts';

/** The format number written into every saved pattern. A change that old programs cannot read raises it. */
export const PATTERN_FORMAT = 1;

const inches = z.number().positive().max(400);
const longText = z.string().max(8000);
const colour = z
  .string()
  .regex(/^#[0-9a-fA-F]{6}$/, 'write the colour as #rrggbb')
  .describe('Its colour on screen and paper: #rrggbb.');

const price = z.number().min(0).max(100_000);

/** Inches by a kind of unit, or by one unit. */
const oversizeSchema = z
  .record(z.string(), z.number().min(0).max(2))
  .optional()
  .describe(
    'Inches added to the pieces of units that are trimmed to size, by the kind of unit or by one unit; 0 for none.',
  );

export const houseSchema = z.strictObject({
  seam: inches.max(1).default(0.25).describe('Seam allowance, inches.'),
  step: z.number().positive().max(1).default(0.125).describe('The ruler’s step, inches: 0.125, 0.0625 or 0.25.'),
  usableWidth: inches.default(40).describe('Usable width of the cloth, inches: the narrowest the pattern is good for.'),
  squaring: z.number().min(0).max(36).default(2).describe('Extra length for squaring up the cut end, inches.'),
  yardStep: z.number().positive().max(1).default(0.125).describe('Yardage is rounded up to this part of a yard.'),
  shrinkage: z
    .number()
    .min(0)
    .max(15)
    .optional()
    .describe('How much of its length cloth is planned to lose in the wash, in a hundred; left out, nothing.'),
  spares: z
    .number()
    .int()
    .min(0)
    .max(20)
    .optional()
    .describe(
      'Pieces for the blocks cut of every kind beyond those that are sewn, in case one goes wrong; left out, none.',
    ),
  methods: z.record(z.string(), z.string()).default({}).describe('The way this house makes each kind of unit.'),
  oversize: oversizeSchema,
});

/** A cut piece of cloth that a shop sells by itself. */
const sheetSchema = z.strictObject({
  name: wordsSchema.default('fat quarter').describe('What one is called.'),
  width: inches
    .max(120)
    .default(18)
    .describe('What of its width may be counted on, inches; a print with a direction stands along it.'),
  height: inches.max(120).default(21).describe('The same of its height.'),
});

const fabricSchema = z.strictObject({
  id: identifierSchema,
  name: wordsSchema.describe('What the printed pattern calls it.'),
  value: valueSchema,
  colour,
  direction: z
    .enum(['one-way', 'two-way'])
    .optional()
    .describe('How its print runs: one-way has a top, two-way runs in lines; left out, it looks alike every way.'),
  photograph: photographSchema
    .optional()
    .describe('A photograph of it; its `colour` is then the mean of what it shows.'),
  price: price.optional().describe('What a yard, or a sheet, costs, in whatever money the designer counts in.'),
  sheet: sheetSchema.optional().describe('Set when it is bought in sheets: fat quarters, for example.'),
  scraps: z
    .array(z.strictObject({ name: wordsSchema, colour }))
    .min(2)
    .max(60)
    .optional()
    .describe('The many fabrics that a scrappy fabric is made up of; left out, it is one cloth.'),
  spread: z
    .number()
    .int()
    .min(0)
    .max(1_000_000)
    .optional()
    .describe('Which of the ways to spread its scraps; the same number spreads them the same way. Left out, 0.'),
});

const blockSchema = z.strictObject({
  id: z
    .string()
    .regex(/^[A-Z]$/, 'use one capital letter')
    .describe('The block’s letter.'),
  name: wordsSchema.describe('What the printed pattern calls the block.'),
  recipe: identifierSchema,
  parameters: z
    .record(z.string(), z.number().int().positive())
    .default({})
    .describe('The recipe’s parameters, where they differ from its own.'),
  methods: z.record(z.string(), z.string()).default({}).describe('The way one kind of unit, or one unit, is made.'),
  oversize: oversizeSchema,
  fabrics: z.record(identifierSchema, identifierSchema).default({}).describe('Each role of the recipe to a fabric.'),
  places: z
    .number()
    .int()
    .min(1)
    .max(12)
    .optional()
    .describe('How many places of the setting it fills each way: 2 for a block twice as large as the others.'),
});

const stripCount = z.number().int().min(0).max(400).default(0);

/** What a designer knows of a bundle of precut strips, and how the pattern uses it. */
const bundleSchema = z.strictObject({
  strip: inches.max(12).default(2.5).describe('How wide the strips are, inches.'),
  length: inches.max(60).default(42).describe('How long a strip may be counted on to be, inches.'),
  values: z
    .strictObject({ light: stripCount, medium: stripCount, dark: stripCount })
    .describe('How many strips of the bundle are light, medium and dark.'),
  fabrics: z
    .array(identifierSchema)
    .max(60)
    .optional()
    .describe(
      'The fabrics cut from the bundle; left out, every fabric, as far as its pieces are no wider than a strip.',
    ),
  match: z
    .array(identifierSchema)
    .max(60)
    .default([])
    .describe('Fabrics that must be one and the same within a block: all the background of one star.'),
  price: price.optional().describe('What a bundle costs.'),
});

const sizeSchema = z.strictObject({
  id: identifierSchema,
  name: wordsSchema.describe('What the printed pattern calls the size.'),
  across: z.number().int().min(1).max(200).describe('Blocks across.'),
  down: z.number().int().min(1).max(200).describe('Blocks down.'),
  block: inches.describe('Finished width of a block, inches.'),
  borders: z
    .record(identifierSchema, z.number().min(0).max(60))
    .default({})
    .describe('Widths that differ here, inches; 0 leaves a border out.'),
  borderEnds: z
    .record(identifierSchema, z.number().min(0).max(60))
    .optional()
    .describe('Widths of the top and bottom strips where they are not as wide as the sides here, inches.'),
  sashing: z
    .array(z.number().min(0).max(60).nullable())
    .max(3)
    .optional()
    .describe('Finished widths of the sashing’s strips, inches; null where a strip is as usual, 0 to leave it out.'),
});

const wordsOfPatternSchema = z.strictObject({
  introduction: longText.default('').describe('The first words of the printed pattern.'),
  designer: wordsSchema.describe('The designer or studio, as printed on the cover.'),
  contact: z.string().max(300).default('').describe('Where a maker may write about corrections.'),
  copyright: z.string().max(1000).default('').describe('What others may do with the pattern.'),
  notes: longText.default('').describe('The designer’s own closing words.'),
  cautions: z.array(z.string().max(1000)).max(20).default([]).describe('Cautions added to the usual ones.'),
  withoutUsualCautions: z.boolean().default(false).describe('Leave the usual cautions out, on purpose.'),
});

export const patternSchema = z.strictObject({
  format: z.literal('piecewright-pattern').describe('Says that this is a pattern.'),
  version: z.literal(PATTERN_FORMAT).describe('The number of the format.'),
  id: identifierSchema,
  title: wordsSchema.describe('The title on the cover.'),
  edition: z
    .strictObject({
      number: z.number().int().min(1).max(999).describe('1 for the first edition.'),
      date: z.iso.date().describe('YYYY-MM-DD'),
    })
    .describe('Which edition this is.'),
  house: houseSchema.prefault({}).describe('How this house sews and cuts; left out, the usual way.'),
  words: wordsOfPatternSchema.describe('What is printed in the designer’s own words.'),
  recipes: z
    .array(z.union([recipeSchema, z.strictObject({ file: z.string().min(1).max(300) })]))
    .max(60)
    .describe(
      'Recipes written here in full, or the name of a recipe file beside this one. Starter recipes need neither.',
    ),
  revisions: z
    .record(identifierSchema, z.number().int().min(1))
    .optional()
    .describe('The revision of the library’s recipe that each recipe here was taken from.'),
  blocks: z.array(blockSchema).min(1).max(26).describe('The blocks, each with its recipe and fabrics.'),
  fabrics: z.array(fabricSchema).min(1).max(60).describe('The fabrics, in the order the charts list them.'),
  setting: settingSchema.describe('How the blocks are laid out.'),
  borders: z.array(borderSchema).max(20).default([]).describe('The borders, from the inside out.'),
  binding: z
    .strictObject({
      fabric: identifierSchema,
      strip: inches.max(6).default(2.5).describe('Cut width of the binding strips, inches.'),
      cut: z
        .enum(['bias', 'continuous'])
        .optional()
        .describe('Cut on the bias, in strips or as one continuous strip; left out, straight across the cloth.'),
    })
    .describe('The edge of the quilt.'),
  backing: z
    .strictObject({
      fabric: identifierSchema,
      beyond: z
        .number()
        .min(0)
        .max(20)
        .default(4)
        .describe('Backing and batting reach this far beyond each side, inches.'),
      run: z
        .enum(['down', 'across'])
        .optional()
        .describe('Which way its panels run on the quilt; left out, in every size the way that takes less cloth.'),
      wide: inches
        .min(60)
        .max(160)
        .optional()
        .describe('Set when it is made of wide backing cloth: its usable width, inches.'),
    })
    .describe('The back of the quilt.'),
  sizes: z.array(sizeSchema).min(1).max(12).describe('The sizes, in the order the charts list them.'),
  bundle: bundleSchema.optional().describe('The bundle of strips the pattern is made from; left out, none.'),
  plans: z
    .array(keptPlanSchema)
    .max(720)
    .optional()
    .describe('Cutting plans that a proof found; each counts as long as it cuts exactly what its size needs.'),
  photographs: carriedSchema
    .optional()
    .describe('The pictures of the fabrics’ photographs, when the file travels: JPEG in base 64, by name.'),
});

export type PatternFile = z.infer<typeof patternSchema>;
/** A pattern with every recipe it needs carried inside: what the studio opens and the store keeps. */
export type Pattern = Omit<PatternFile, 'recipes'> & { readonly recipes: readonly z.infer<typeof recipeSchema>[] };
export type { Border } from './borderSchema.ts';
export type { OnPointSetting, Sashing, Setting, StraightSetting, StripsSetting } from './settingSchema.ts';
export type House = z.infer<typeof houseSchema>;
export type Fabric = z.infer<typeof fabricSchema>;
export type BlockChoice = z.infer<typeof blockSchema>;
export type Size = z.infer<typeof sizeSchema>;
export type Bundle = z.infer<typeof bundleSchema>;
