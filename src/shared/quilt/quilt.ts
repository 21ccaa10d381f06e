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

/** One border strip, as cut: plain, butted. */
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
}

export type QuiltPart = Part<BlockLeaf | StripLeaf>;

/** One size of the pattern, laid out: rows of blocks, then border by border. */
export interface Quilt {
  /** The size's id. */
  readonly size: string;
  /** Finished block, inches. */
  readonly block: { readonly width: Inches; readonly height: Inches };
  readonly blocks: readonly BlockLeaf[];
  readonly strips: readonly StripLeaf[];
  /** How many blocks of each letter. */
  readonly counts: Readonly<Record<string, number>>;
  /** How many of these are sewn as mirror images, by letter; a block that a turn makes its own mirror image is none. */
  readonly reversed: Readonly<Record<string, number>>;
  /** How it is sewn together: the same tree as a block's, with blocks and strips for leaves. */
  readonly root: QuiltPart;
  /** Blocks only, finished. */
  readonly centre: TracedSize;
  /** The whole quilt, finished. */
  readonly finished: TracedSize;
  /** The top before binding: finished and a seam on each side. */
  readonly unfinished: TracedSize;
}
