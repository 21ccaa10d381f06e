import { z } from 'zod';
import type { ProveRequest, PublishRequest } from '../../shared/contract.ts';
import { schemaFindings } from '../../shared/pattern/issues.ts';
import { mattressSchema } from '../../shared/pattern/mattresses.ts';
import { cropSchema, photographIdSchema } from '../../shared/pattern/photograph.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import { patternSchema } from '../../shared/pattern/schema.ts';
import { identifierSchema, recipeSchema } from '../../shared/recipe/schema.ts';
import { Refused } from '../refusal.ts';

/** The largest file that is read as a pattern or recipe, characters: a large pattern with sixty photographs. */
const LONGEST_FILE = 32_000_000;

/** The longest photograph, in base 64: 40 megabytes of a camera's file. */
const LONGEST_PHOTOGRAPH = 56_000_000;

/** A pattern as it is kept: every recipe it needs is written in it. */
const keptPatternSchema: z.ZodType<Pattern> = patternSchema.extend({ recipes: z.array(recipeSchema).max(60) });

const publishSchema: z.ZodType<PublishRequest> = z.strictObject({
  pattern: keptPatternSchema,
  paper: z.enum(['letter', 'a4']),
  draft: z.boolean(),
  plainInk: z.boolean(),
  kits: z.strictObject({ size: identifierSchema, many: z.number().int().min(1).max(1000) }).optional(),
});

const side = z.number().positive().max(10_000);
const proveSchema: z.ZodType<ProveRequest> = z.strictObject({
  kinds: z
    .array(
      z.strictObject({
        width: side,
        height: side,
        count: z.number().int().min(1).max(1_000_000),
        turns: z.boolean(),
      }),
    )
    .min(1)
    .max(5000),
  width: side,
  seconds: z.number().positive().max(600),
  units: z.enum(['inches', 'centimetres']).optional(),
});

/** What each call of the contract takes, checked at run time. */
export const inputs = {
  id: identifierSchema,
  job: z.string().min(1).max(80),
  savePattern: z.strictObject({ pattern: keptPatternSchema, revision: z.number().int().min(1).nullable() }),
  saveRecipe: recipeSchema,
  recipes: z.strictObject({
    words: z.string().max(200),
    tag: z.string().max(40).optional(),
    facets: z.array(z.string().max(80)).max(20).optional(),
    from: z.number().int().min(0).max(1_000_000).optional(),
    atMost: z.number().int().min(0).max(100_000).optional(),
  }),
  ids: z.array(identifierSchema).max(10_000),
  importFile: z.strictObject({
    name: z.string().min(1).max(300),
    text: z.string().max(LONGEST_FILE),
    beside: z.record(z.string().min(1).max(300), z.string().max(LONGEST_FILE)).optional(),
  }),
  saveMattress: mattressSchema,
  pattern: keptPatternSchema,
  bringPhotograph: z.strictObject({ name: z.string().min(1).max(300), data: z.string().max(LONGEST_PHOTOGRAPH) }),
  photograph: photographIdSchema,
  photographColour: z.strictObject({ id: photographIdSchema, crop: cropSchema }),
  prove: proveSchema,
  publish: publishSchema,
} as const;

/** The checked input, or a `Refused` whose findings name each place that is not as it should be. */
export function take<T>(schema: z.ZodType<T>, input: unknown, what: string): T {
  const read = schema.safeParse(input, { reportInput: true });
  if (read.success) return read.data;
  const findings = schemaFindings(read.error.issues);
  throw new Refused(
    'bad-input',
    `${what} cannot be taken: ${findings[0]?.what ?? 'it is not as it should be.'}`,
    findings,
  );
}
