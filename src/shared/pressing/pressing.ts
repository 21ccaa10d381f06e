import type { Point } from '../drawing/turn.ts';

/** Which way one seam is pressed, as seen from the front with the block unturned. */
export type Press = 'left' | 'right' | 'up' | 'down' | 'open';

/** How the seams of one row or round are pressed; `seams[i]` lies between part i and part i + 1 (or joins log i). */
export interface PressedPart {
  /** Path of the part in the tree, as child indices joined by dots; '' is the root. */
  readonly path: string;
  readonly seams: readonly Press[];
}

/** The pressing plan of a block or of the whole top. */
export interface PressingPlan {
  readonly parts: readonly PressedPart[];
  /** Points to match: where seams lie to opposite sides, where both lie to one side, and where one of them lies to both. */
  readonly nests: number;
  readonly stacks: number;
  readonly open: number;
  /** Where the seams that do not nest meet, in the units of the tree: grid units in a block, finished inches in a quilt. */
  readonly stacked: readonly Point[];
}
