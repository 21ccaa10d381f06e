import { z } from 'zod';
import { identifierSchema } from '../recipe/schema.ts';

const inches = z.number().positive().max(400);
const many = z.number().int().min(1).max(100_000);

/**
 * A cutting plan that took a long proof to find, so that the same pattern is cut the same way everywhere without proving it
 * again. It counts only as long as it cuts exactly what its size needs: whoever changes the pattern has the usual plan back.
 */
export const keptPlanSchema = z.strictObject({
  size: identifierSchema,
  fabric: identifierSchema,
  width: inches.describe('Usable width of the cloth it was made for, inches.'),
  bound: z.number().min(0).max(100_000).describe('The proof: no plan is shorter than so many inches.'),
  strips: z
    .array(
      z.strictObject({
        height: inches.describe('How high the strip is cut, inches.'),
        times: many.describe('How many are cut alike.'),
        pieces: z
          .array(
            z.strictObject({
              letter: z.string().min(1).max(4),
              width: inches.describe('Along the strip, inches.'),
              height: inches.describe('Across it.'),
              count: many.describe('How many lie side by side.'),
            }),
          )
          .min(1)
          .max(200),
      }),
    )
    .min(1)
    .max(2000)
    .describe('The strips, from left to right.'),
});

export type KeptPlan = z.infer<typeof keptPlanSchema>;
