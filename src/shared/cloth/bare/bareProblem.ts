import { z } from 'zod';
import type { Kind } from '../strips/kinds.ts';

/** More pieces of one kind than this are a slip of the pen. */
const MOST_OF_A_KIND = 1_000_000;

const measure = z.number().positive().max(1_000_000);
const demand = z.number().int().min(0).max(MOST_OF_A_KIND);
const name = z.string().max(200);

/** Rectangles to be cut from strips across cloth of one width. */
const levelSchema = z.looseObject({
  name: name.optional().describe('What the problem is called.'),
  width: measure.describe('Usable width of the cloth, in any unit.'),
  items: z
    .array(z.looseObject({ w: measure, h: measure, demand: demand.default(1) }))
    .min(1)
    .max(5000)
    .describe('What is cut: w across the cloth, h along it, and how many.'),
  turns: z.boolean().optional().describe('Whether pieces may be turned a quarter; left out, both ways are answered.'),
});

/** Lengths to be cut from stock of one length: strips of a bundle, for example. */
const stockSchema = z.looseObject({
  name: name.optional().describe('What the problem is called.'),
  length: measure.describe('Length of one stock, in any unit.'),
  items: z
    .array(z.looseObject({ l: measure, demand: demand.default(1) }))
    .min(1)
    .max(5000)
    .describe('What is cut: its length, and how many.'),
});

const oneSchema = z.union([levelSchema, stockSchema]);

/** A file of bare cutting problems: one, or a list of them. What else an entry says is let be. */
export const bareFileSchema = z.union([z.array(oneSchema).min(1).max(1000), oneSchema]);

export type BareFile = z.infer<typeof bareFileSchema>;
type One = z.infer<typeof oneSchema>;

/** How the pieces of a bare problem may lie: as written, with quarter turns, or end to end in stock. */
export type Way = 'fixed' | 'turned' | 'stock';

/** One question: strips across the width, or stock of that length. */
export interface BareQuestion {
  readonly name: string;
  readonly way: Way;
  readonly width: number;
  readonly kinds: readonly Kind[];
}

/** The questions of a file, in order; rectangles that may or may not be turned are asked both ways. */
export function bareQuestions(file: BareFile): readonly BareQuestion[] {
  const all = Array.isArray(file) ? file : [file];
  return all.flatMap((one, index) => questionsOf(one, `Problem ${index + 1}`));
}

function questionsOf(one: One, usualName: string): readonly BareQuestion[] {
  const called = one.name ?? usualName;
  if (!isLevel(one)) {
    const kinds = one.items.map(({ l, demand: count }) => ({ width: l, height: 1, count, turns: false }));
    return [{ name: called, way: 'stock', width: one.length, kinds }];
  }
  const ways: readonly Way[] = one.turns === undefined ? ['fixed', 'turned'] : [one.turns ? 'turned' : 'fixed'];
  return ways.map((way) => ({
    name: called,
    way,
    width: one.width,
    kinds: one.items.map(({ w, h, demand: count }) => ({ width: w, height: h, count, turns: way === 'turned' })),
  }));
}

function isLevel(one: One): one is z.infer<typeof levelSchema> {
  return 'width' in one;
}

/** A piece that does not lie on the cloth, as a sentence; null when all do. */
export function tooWideFor({ name: called, way, width, kinds }: BareQuestion): string | null {
  const lost = kinds.find((kind) => kind.width > width && !(way === 'turned' && kind.height <= width));
  if (lost === undefined) return null;
  const piece = way === 'stock' ? `${lost.width}` : `${lost.width} × ${lost.height}`;
  const cloth = way === 'stock' ? `stock ${width} long` : `cloth ${width} wide`;
  const turned = way === 'fixed' && lost.height <= width ? ' unless it is turned' : '';
  return `${called}: a piece of ${piece} does not fit ${cloth}${turned}.`;
}
