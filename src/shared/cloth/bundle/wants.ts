import type { Inches } from '../../measure/inches.ts';
import type { Value } from '../../recipe/schema.ts';

/** Equal pieces cut one after another along a strip. */
export interface StripCut {
  readonly letter: string;
  /** Along the strip. */
  readonly length: Inches;
  /** Across the strip: no wider than it. */
  readonly across: Inches;
  readonly count: number;
}

/** What is cut from one strip, because it is one piece or because its pieces must match. */
export interface Group {
  readonly id: number;
  /** Which block of the quilt, counted row by row; null for pieces that may go into any. */
  readonly place: number | null;
  readonly fabric: string;
  readonly value: Value;
  readonly cuts: readonly StripCut[];
  /** Inches of a strip that it takes. */
  readonly length: Inches;
}

/** Strips joined end to end, or sewn side by side: a border, the binding, strip sets. */
export interface LongWant {
  readonly letter: string;
  readonly words: string;
  readonly fabric: string;
  readonly value: Value;
  /** Whole strips, if only whole strips will do. */
  readonly strips: number | null;
  /** Inches to be reached by joining. */
  readonly reach: Inches;
  /** Inches that each join takes. */
  readonly join: Inches;
}

/** Pieces that the bundle cannot give: too wide, or of another fabric. */
export interface Outside {
  readonly letter: string;
  readonly fabric: string;
  readonly why: 'too wide' | 'too long' | 'another fabric';
}

/** Everything one size wants of a bundle. */
export interface Wants {
  readonly groups: readonly Group[];
  /** In the order in which they are served. */
  readonly long: readonly LongWant[];
  readonly outside: readonly Outside[];
  /** Pairs of groups in two blocks whose patches touch there, as the blocks are turned. */
  readonly touching: readonly (readonly [number, number])[];
  /** Pairs of places whose blocks stand beside one another. */
  readonly neighbours: readonly (readonly [number, number])[];
}
