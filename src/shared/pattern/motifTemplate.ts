import { z } from 'zod';
import { afterTurn, type Turn } from '../drawing/turn.ts';
import { identifierSchema, wordsSchema } from '../recipe/schema.ts';
import { readRow, writeRow } from '../recipe/token.ts';

/**
 * A classic setting as a motif. Letters stand for the first and second block it is used with; where it is for a block that is
 * split on the diagonal, it is written for one whose dark half lies to the lower left when it is not turned.
 */
export const motifTemplateSchema = z.strictObject({
  format: z.literal('piecewright-motif').describe('Says that this is a motif.'),
  version: z.literal(1).describe('The number of the format.'),
  id: identifierSchema.describe('A short name for the file.'),
  name: wordsSchema.describe('What the trade calls the setting.'),
  summary: wordsSchema.describe('What it looks like, in one sentence.'),
  blocks: z.number().int().min(1).max(4).describe('How many different blocks it takes.'),
  split: z
    .boolean()
    .describe('Whether it is for a block that is light on one side of its diagonal and dark on the other.'),
  motif: z.array(z.string()).min(1).max(24).describe('Rows of letters and turns, as in a pattern.'),
  reflect: z.enum(['across', 'down', 'both']).optional().describe('As in a pattern.'),
  reflected: z.enum(['mirrored', 'falling', 'rising']).optional().describe('As in a pattern.'),
});

export type MotifTemplate = z.infer<typeof motifTemplateSchema>;

/** Which corner of a block its dark half lies in. */
export type DarkCorner = 'bottom-left' | 'top-left' | 'top-right' | 'bottom-right';

/** Quarters that bring the dark corner of a block to the lower left, where motifs expect it. */
const TO_LOWER_LEFT: Readonly<Record<DarkCorner, Turn['quarters']>> = {
  'bottom-left': 0,
  'bottom-right': 1,
  'top-right': 2,
  'top-left': 3,
};

/** What a template makes of a pattern's own blocks. */
export interface MotifMade {
  readonly motif: string[];
  readonly reflect?: 'across' | 'down' | 'both';
  readonly reflected?: 'mirrored' | 'falling' | 'rising';
}

/**
 * The motif of a template for blocks of a pattern.
 * @param blocks the letters to use for its A, B …; null when there are too few
 * @param dark where the block's dark half lies unturned, for a template of split blocks
 */
export function motifFor(template: MotifTemplate, blocks: readonly string[], dark: DarkCorner): MotifMade | null {
  if (blocks.length < template.blocks) return null;
  const first: Turn = { quarters: template.split ? TO_LOWER_LEFT[dark] : 0, mirrored: false };
  const motif = template.motif.map((line) =>
    writeRow(
      readRow(line).map((entry) => {
        if (typeof entry === 'string') throw new RangeError(`“${entry}” in the motif ${template.id}`);
        const letter = blocks[entry.name.charCodeAt(0) - 65] ?? blocks[0] ?? entry.name;
        return { name: letter, turn: afterTurn(first, entry.turn) };
      }),
    ),
  );
  const { reflect, reflected } = template;
  return {
    motif,
    ...(reflect === undefined ? {} : { reflect }),
    ...(reflected === undefined ? {} : { reflected: acrossFrom(reflected, first) }),
  };
}

/** A block turned a quarter is alike about its other diagonal. */
function acrossFrom(as: NonNullable<MotifMade['reflected']>, first: Turn): NonNullable<MotifMade['reflected']> {
  if (as === 'mirrored' || first.quarters % 2 === 0) return as;
  return as === 'rising' ? 'falling' : 'rising';
}
