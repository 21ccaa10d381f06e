import type { Point } from '../../shared/drawing/turn.ts';
import type { UnitKey } from '../../shared/piecing/piecing.ts';

/** One cell of a grid: of a block's recipe, or of the quilt's blocks. Counted from 0. */
export interface Cell {
  readonly column: number;
  readonly row: number;
}

/** What the designer has picked; the side panel is about it. */
export type Selection =
  | { readonly kind: 'pattern' }
  | { readonly kind: 'size'; readonly size: string }
  | { readonly kind: 'block'; readonly block: string }
  | { readonly kind: 'unit'; readonly block: string; readonly unit: UnitKey }
  | { readonly kind: 'cells'; readonly block: string; readonly cells: readonly Cell[] }
  | { readonly kind: 'patches'; readonly block: string; readonly patches: readonly number[] }
  | SeamPicked
  | { readonly kind: 'places'; readonly places: readonly Cell[] }
  | { readonly kind: 'border'; readonly border: string }
  /** How the blocks are laid out, and the motif they are laid out by. */
  | { readonly kind: 'setting' }
  | { readonly kind: 'motif' }
  | { readonly kind: 'fabric'; readonly fabric: string }
  | { readonly kind: 'piece'; readonly letter: string };

/** A straight line of seams of a drawing, by its ends in grid units. */
export interface SeamPicked {
  readonly kind: 'seam';
  readonly block: string;
  readonly seam: readonly [Point, Point];
  /** The whole line, and the stretch of it that was picked, between the seams that meet it: `seam` is one of them. */
  readonly whole: readonly [Point, Point];
  readonly near: readonly [Point, Point];
}

/** Nothing in particular: the pattern as a whole. */
export const WHOLE_PATTERN: Selection = { kind: 'pattern' };
