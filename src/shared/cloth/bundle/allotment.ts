import type { Inches } from '../../measure/inches.ts';
import type { Value } from '../../recipe/schema.ts';
import type { Assigned } from './assign.ts';
import type { LaidGroup } from './squareLaid.ts';
import type { Group } from './wants.ts';

export const VALUES: readonly Value[] = ['light', 'medium', 'dark'];

/** The strips there are to cut from. */
export interface Supply {
  /** Inches of each strip that may be used. */
  readonly length: Inches;
  readonly values: Readonly<Record<Value, number>>;
  /** Set when they are squares, as wide as they are long. */
  readonly square?: true;
  /** How many strips of each value are a second one of a fabric that is there already. */
  readonly twice?: Readonly<Partial<Record<Value, number>>>;
}

/** One strip and what is cut from it. */
export interface AllottedStrip {
  /** Counted from 1 through the whole bundle: light, medium, dark. */
  readonly number: number;
  readonly value: Value;
  /** Strips with the same number are of one fabric. */
  readonly fabric: number;
  /** Groups of pieces for blocks, longest first. */
  readonly groups: readonly Group[];
  /** Inches that go into borders or the binding: the whole strip, or its end. */
  readonly long: readonly { readonly letter: string; readonly length: Inches }[];
  /** Inches left over; of a square none are counted. */
  readonly left: Inches;
  readonly square?: true;
  /** Only of a square: where its groups lie, as far as a plan of it is known. */
  readonly laid?: readonly LaidGroup[];
}

/** How one value of the bundle is used. */
export interface ValueUse {
  readonly value: Value;
  readonly have: number;
  /** Strips that block pieces are cut from, and the least they could be cut from. */
  readonly forBlocks: number;
  readonly least: number;
  /** Whole strips for borders, binding and strip sets. */
  readonly forLong: number;
  readonly spare: number;
}

/** What a bundle cannot give. */
export interface Shortage {
  /** What cannot be cut: "Inner border, sides", or "blocks". */
  readonly words: string;
  readonly value: Value;
  /** Strips that would have to be there besides. */
  readonly strips: number;
  /** Set when no number of strips would do: what has to come from one strip is this long. */
  readonly tooLong?: Inches;
  readonly square?: true;
}

/** A bundle, strip by strip. */
export interface Allotment {
  readonly enough: boolean;
  readonly strips: readonly AllottedStrip[];
  readonly values: readonly ValueUse[];
  /** In the order in which things are served: the first to fail is the last here to be given up. */
  readonly short: readonly Shortage[];
  /** How often a fabric comes twice into a block or touches itself across blocks, all the same. */
  readonly clashes: number;
  /** How often it comes into two neighbouring blocks without touching. */
  readonly near: number;
}

/** What pieces of blocks are called among the things that cannot be cut. */
export const BLOCKS = 'blocks';

/** One value of a bundle, by itself. */
export interface Part {
  readonly use: ValueUse;
  readonly strips: readonly AllottedStrip[];
  readonly short: readonly Shortage[];
  readonly assigned: Pick<Assigned, 'clashes' | 'near'>;
}

/** How many different fabrics the strips of one value are. */
export function fabricsOf(supply: Supply, value: Value): number {
  const have = supply.values[value];
  return have - Math.min(have >> 1, supply.twice?.[value] ?? 0);
}
