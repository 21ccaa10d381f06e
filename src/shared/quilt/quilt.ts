import type { Box, Point, Turn } from '../drawing/turn.ts';
import type { Inches } from '../measure/inches.ts';
import type { Traced, TracedSize } from '../measure/traced.ts';
import type { Part } from '../piecing/piecing.ts';
import type { Side } from '../recipe/schema.ts';

/** One block standing in the quilt. */
export interface BlockLeaf {
  readonly kind: 'block';
  /** The block's letter. */
  readonly block: string;
  /** Mirrored only when it has to be sewn as a mirror image: a turn that does as well stands instead. */
  readonly turn: Turn;
  readonly column: number;
  readonly row: number;
  /** Finished inches from the top left corner of the quilt. */
  readonly box: Box;
  /** Degrees clockwise about the middle of its box: −45 for a block on point. */
  readonly tilt?: number;
  /** Only for a block that is cut off: how much of it is kept, as lying, from 0 to 1. Its box is what is kept. */
  readonly part?: BlockPart;
  /** The border it is a unit of, if it is; it then stands in no column or row of the setting, and both are −1. */
  readonly border?: string;
}

/** What is kept of a block that is cut off at the edge of the quilt. */
export interface BlockPart {
  readonly along: 'across' | 'down';
  readonly from: number;
  readonly to: number;
}

/** One border strip, as cut. */
export interface StripLeaf {
  readonly kind: 'strip';
  /** The border's id in the pattern. */
  readonly border: string;
  readonly fabric: string;
  readonly side: Side;
  /** Finished inches. */
  readonly box: Box;
  /** Cut width and length; length is the strip's long side. */
  readonly cutWidth: Traced;
  readonly cutLength: Traced;
  /**
   * Only for a border whose corners are mitred: the length of the diagonal seam at each end. The strip is cut longer than its
   * place and its box is that of a butted strip, sides first, so that the boxes of a border still cover it.
   */
  readonly mitre?: Traced;
}

/** What a plain piece of the setting is. */
export type PatchUse = 'sashing' | 'cornerstone' | 'border-corner' | 'filler';

/** A plain square or rectangle of the setting: a strip of sashing, the square where two sashings cross. */
export interface PatchLeaf {
  readonly kind: 'patch';
  readonly use: PatchUse;
  /** Equal for all that are cut alike in this size: what a letter is given to. */
  readonly name: string;
  /** What it is on the cutting chart: "Sashing between columns". */
  readonly words: string;
  readonly fabric: string;
  /** Finished inches. */
  readonly box: Box;
  /** As it is cut and lies: width across, height down. */
  readonly cut: TracedSize;
  /** Its outline where that is not its box: on point, and where the edge of the quilt cuts it off. */
  readonly outline?: readonly Point[];
  /** The border it belongs to, if it does. */
  readonly border?: string;
  /** Only for a strip of sashing. */
  readonly sash?: Sash;
}

/** Which sashing a strip belongs to and its place in it. */
export interface Sash {
  /** Between two columns it runs down, between two rows across. */
  readonly run: 'down' | 'across';
  /** Whether it ends with a block or runs through the whole setting. */
  readonly reach: 'block' | 'whole';
  /** Its place among the strips that lie side by side, from the left or the top. */
  readonly strip: number;
  /** Finished width. */
  readonly width: Inches;
  /** Equal for the strips of all sashings that are made alike. */
  readonly kind: string;
}

/** What a triangle at the edge of a setting on point fills. */
export type TriangleUse = 'side' | 'corner' | 'edge-cornerstone';

/** A triangle at the edge of a setting on point, cut from a square so that its straight grain lies along the edge. */
export interface TriangleLeaf {
  readonly kind: 'triangle';
  readonly use: TriangleUse;
  readonly fabric: string;
  readonly box: Box;
  /** As it is once the edge is trimmed. */
  readonly outline: readonly Point[];
  /** The side of the square it is cut from. */
  readonly square: Traced;
  /** Triangles from one such square: cut once or twice diagonally. */
  readonly into: 2 | 4;
  /** The shorter sides it has to have, finished inches. */
  readonly leg: Inches;
}

/** What diagonal rows are made of; boxes and outlines lie in the frame of the rows. */
export type DiagonalLeaf = BlockLeaf | PatchLeaf | TriangleLeaf;

/** One diagonal row in its frame, from left to right. */
export interface DiagonalRow {
  readonly parts: readonly Part<DiagonalLeaf>[];
  readonly box: Box;
  readonly kind: 'blocks' | 'sashing';
}

/** Blocks on point: diagonal rows sewn together, and corners last. */
export interface OnPointLeaf {
  readonly kind: 'on-point';
  /** In the quilt, finished inches. */
  readonly box: Box;
  /** Where 0, 0 of the frame lies in the quilt; see `onPoint/frame.ts`. */
  readonly origin: Point;
  readonly rows: readonly DiagonalRow[];
  /** In the frame: top left, top right, bottom right and bottom left of the quilt. */
  readonly corners: readonly TriangleLeaf[];
}

/** What the tree of a top is made of. */
export type QuiltLeaf = BlockLeaf | StripLeaf | PatchLeaf | OnPointLeaf;

/** Everything that is sewn into a top as one thing, where it lies in the quilt. */
export type TopPiece = BlockLeaf | StripLeaf | PatchLeaf | TriangleLeaf;

export type QuiltPart = Part<QuiltLeaf>;

/** One size of the pattern, laid out: the blocks as they are set, then border by border. */
export interface Quilt {
  /** The size's id. */
  readonly size: string;
  /** Finished block of the setting, inches. */
  readonly block: Measure;
  /** Every finished block by its letter, inches. */
  readonly measures: Readonly<Record<string, Measure>>;
  readonly blocks: readonly BlockLeaf[];
  readonly strips: readonly StripLeaf[];
  readonly patches: readonly PatchLeaf[];
  readonly triangles: readonly TriangleLeaf[];
  /** The borders there are in this size, from the inside out. */
  readonly borders: readonly LaidBorder[];
  /** How many blocks of each letter. */
  readonly counts: Readonly<Record<string, number>>;
  /** How many of these are sewn as mirror images, by letter; a block that a turn makes its own mirror image is none. */
  readonly reversed: Readonly<Record<string, number>>;
  /** How it is sewn together: the same tree as a block's, with blocks and strips for leaves. */
  readonly root: QuiltPart;
  /** What the setting makes, before borders; finished. */
  readonly centre: TracedSize;
  /** The whole quilt, finished. */
  readonly finished: TracedSize;
  /** The top before binding: finished and a seam on each side. */
  readonly unfinished: TracedSize;
  /** The fabrics that are made up of many; absent where there is none. */
  readonly scrappy?: readonly Scrappy[];
}

/** A scrappy fabric: how many fabrics it is, and which of the ways they are spread. */
export interface Scrappy {
  readonly fabric: string;
  readonly many: number;
  readonly spread: number;
}

/** A border of one size: what it is sewn to and, when it is pieced, of how many units it is. */
export interface LaidBorder {
  readonly border: string;
  /** What it is sewn to, finished inches. */
  readonly inside: Measure;
  readonly units?: LaidUnits;
}

/** The units of a pieced border. */
export interface LaidUnits {
  /** How high they finish, and how long each is along the side. */
  readonly width: Inches;
  readonly length: Inches;
  /** Units along the top and along a side, corners not counted. */
  readonly across: number;
  readonly down: number;
  /** Grid units in the height of one. */
  readonly high: number;
}

/** Width and height, finished inches. */
export interface Measure {
  readonly width: Inches;
  readonly height: Inches;
}
