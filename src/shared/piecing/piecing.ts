import type { Drawing } from '../drawing/drawing.ts';
import type { Box, Turn } from '../drawing/turn.ts';
import type { Finding } from '../measure/finding.ts';
import type { Corner, Side } from '../recipe/schema.ts';
import type { SeamTree } from './seamTree.ts';

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

/** Names a distinct unit by what it is: kind, size in grid units, roles. Equal keys are the same unit. */
export type UnitKey = string;

interface UnitShape {
  readonly key: UnitKey;
  /** Grid units, before turning. */
  readonly width: number;
  readonly height: number;
  /** The method the recipe asks for, if it does. */
  readonly method?: string;
}

/** A distinct unit of a block, lying as the trade draws it. */
export type Unit =
  | (UnitShape & { readonly kind: 'plain'; readonly role: string })
  | (UnitShape & { readonly kind: 'log'; readonly role: string })
  | (UnitShape & { readonly kind: 'hst'; readonly roles: readonly [string, string] })
  | (UnitShape & { readonly kind: 'geese'; readonly roles: readonly [string, string] })
  | (UnitShape & { readonly kind: 'four-patch'; readonly roles: readonly [string, string] })
  | (UnitShape & { readonly kind: 'corners'; readonly role: string; readonly corners: readonly FlippedCorner[] })
  /** A square cut by both diagonals: the triangles top, right, bottom, left. */
  | (UnitShape & { readonly kind: 'qst'; readonly roles: readonly [string, string, string, string] })
  /** Half a square and two quarters: the half bottom right, the quarters top and left. */
  | (UnitShape & { readonly kind: 'three-patch'; readonly roles: readonly [string, string, string] })
  /** A square on its point in a square: `role` in the middle, `roles` clockwise from the top left corner. */
  | (UnitShape & {
      readonly kind: 'square-in-square';
      readonly role: string;
      readonly roles: readonly [string, string, string, string];
    })
  /** A rectangle cut from corner to corner, rising or falling to the right: the upper triangle, then the lower. */
  | (UnitShape & {
      readonly kind: 'half-rectangle';
      readonly diagonal: 'rising' | 'falling';
      readonly roles: readonly [string, string];
    })
  /** Three by three squares: the corners, the middles of the sides, the middle. */
  | (UnitShape & { readonly kind: 'nine-patch'; readonly roles: readonly [string, string, string] })
  /** Equal squares that alternate, more than two by two: the first role top left. */
  | (UnitShape & {
      readonly kind: 'checkerboard';
      readonly columns: number;
      readonly rows: number;
      readonly roles: readonly [string, string];
    })
  /** Equal strips, each as long as the unit is wide, from the top down. */
  | (UnitShape & { readonly kind: 'rails'; readonly roles: readonly string[] })
  /** A quarter of a circle about the top left corner of a square, then the rest. The radius in grid units. */
  | (UnitShape & {
      readonly kind: 'quarter-circle';
      readonly radius: number;
      readonly roles: readonly [string, string];
    })
  /** A rectangle that is no unit of the trade: its own drawing and its own tree of seams. */
  | (UnitShape & { readonly kind: 'pieced'; readonly drawing: Drawing; readonly seams: SeamTree });

export interface FlippedCorner {
  readonly at: Corner;
  readonly role: string;
  /** Finished leg of the corner triangle, grid units. */
  readonly size: number;
}

/** A block, drawn and pieced: what every recipe lowers to. */
export interface Piecing {
  readonly drawing: Drawing;
  readonly root: BlockPart;
  /** The distinct units, in the order they are first met in sewing order. */
  readonly units: readonly Unit[];
  /** What is hard about sewing it: partial, set-in and curved seams, and pins that could not be kept. */
  readonly findings?: readonly Finding[];
}
