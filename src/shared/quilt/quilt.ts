import type { Box, Turn } from '../drawing/turn.ts';
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
export type PatchUse = 'sashing' | 'cornerstone' | 'border-corner';

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
}

/** Everything that is sewn into the top as one thing. */
export type QuiltLeaf = BlockLeaf | StripLeaf | PatchLeaf;

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
}

/** Width and height, finished inches. */
export interface Measure {
  readonly width: Inches;
  readonly height: Inches;
}
