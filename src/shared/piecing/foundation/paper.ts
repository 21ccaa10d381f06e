import type { Point } from '../../drawing/turn.ts';

/** One section of a unit as it is printed at its true size to be sewn on. Inches, right side up, y downwards. */
export interface FoundationPaper {
  /** A, B, …; nothing when the unit is one section. */
  readonly letter: string;
  /** The finished section and, outside it, where its seam allowance ends. */
  readonly finished: readonly Point[];
  readonly cut: readonly Point[];
  /** The patches in the order they are sewn on. */
  readonly areas: readonly FoundationArea[];
}

export interface FoundationArea {
  readonly role: string;
  readonly corners: readonly Point[];
  /** The line it is sewn on along; the first patch has none. */
  readonly seam: readonly [Point, Point] | null;
}
