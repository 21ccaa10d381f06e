import type { Drawing } from '../drawing/drawing.ts';
import type { Box, Turn } from '../drawing/turn.ts';
import type { Finding } from '../measure/finding.ts';
import type { Side } from '../recipe/schema.ts';
import type { SeamTree } from './seamTree.ts';
import type { TradeUnit, UnitKey, UnitShape } from './tradeUnit.ts';

export type { FlippedCorner, UnitKey } from './tradeUnit.ts';

/**
 * The tree of how something is sewn. Leaves are what a stage takes as one thing: a unit in a block, a block or a border
 * strip in a quilt. Inner nodes join parts. Boxes are in the units of the whole they stand in: grid units in a block,
 * finished inches in a quilt.
 */
export type Part<Leaf> = Leaf | Row<Leaf> | Rounds<Leaf> | Ring<Leaf>;

/** Parts sewn side by side in one direction; each seam runs the full width of the row. */
export interface Row<Leaf> {
  readonly kind: 'row';
  /** 'across': parts stand left to right, seams run down. 'down': parts stand top to bottom, seams run across. */
  readonly along: 'across' | 'down';
  readonly parts: readonly Part<Leaf>[];
  readonly box: Box;
  /** The trade's or the recipe's name for it, when it has one. */
  readonly name?: string;
}

/** A core with strips sewn to its sides one after another: logs about a centre, or borders about a quilt. */
export interface Rounds<Leaf> {
  readonly kind: 'rounds';
  readonly core: Part<Leaf>;
  readonly logs: readonly Log<Leaf>[];
  readonly box: Box;
  readonly name?: string;
}

/**
 * Four parts about a core, each reaching past the core on one end and butting against the next on the other, so that no
 * seam runs the whole way: a partial seam. They stand in sewing order, one after another about the core. The first is sewn
 * to the core only part of the way; once the last is on, the first one's seam is finished.
 */
export interface Ring<Leaf> {
  readonly kind: 'ring';
  readonly core: Part<Leaf>;
  /** The arms in sewing order: each begins where the end of the arm before it makes the core's side longer. */
  readonly logs: readonly [Log<Leaf>, Log<Leaf>, Log<Leaf>, Log<Leaf>];
  readonly box: Box;
  readonly name?: string;
}

export interface Log<Leaf> {
  readonly side: Side;
  readonly part: Part<Leaf>;
}

/** A unit standing in a block: which distinct unit, how it lies, where. */
export interface UnitLeaf {
  readonly kind: 'unit';
  readonly unit: UnitKey;
  readonly turn: Turn;
  readonly box: Box;
  /** The drawing's patches it is made of. */
  readonly patches: readonly number[];
}

export type BlockPart = Part<UnitLeaf>;

/** A distinct unit of a block. */
export type Unit =
  | TradeUnit
  /** A rectangle that is no unit of the trade: its own drawing and its own tree of seams. */
  | (UnitShape & { readonly kind: 'pieced'; readonly drawing: Drawing; readonly seams: SeamTree });

/** A block, drawn and pieced: what every recipe lowers to. */
export interface Piecing {
  readonly drawing: Drawing;
  readonly root: BlockPart;
  /** The distinct units, in the order they are first met in sewing order. */
  readonly units: readonly Unit[];
  /** What is hard about sewing it: partial, set-in and curved seams, and pins that could not be kept. */
  readonly findings?: readonly Finding[];
}
