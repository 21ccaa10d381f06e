import type { Point } from '../../drawing/turn.ts';

/** A shape to cut round, as it is printed at its true size. Inches, right side up, y downwards. */
export interface Template {
  /** Names the shape: the cuts of its pieces have the same name. */
  readonly shape: string;
  /** The finished patch: where its seams run. Arcs as many short edges. */
  readonly finished: readonly Point[];
  /** The cutting line: the finished patch and its seam allowance, points blunted. */
  readonly cut: readonly Point[];
  /** Short lines from the cutting line inwards, to be matched with those of the neighbour. */
  readonly notches: readonly Notch[];
  /** How many of it one unit takes of each role, and how many of those with the template turned over. */
  readonly pieces: readonly TemplatePieces[];
}

export interface Notch {
  readonly from: Point;
  readonly to: Point;
}

export interface TemplatePieces {
  readonly role: string;
  readonly count: number;
  readonly reversed: number;
}
