import type { Point } from '../drawing/turn.ts';

/**
 * What the maker has in front of her at one stage of making a unit, as plain data in inches: cloth, the lines on it, and
 * which way the seam is pressed. Diagrams draw it; nothing here knows ink or screens.
 */
export interface Scene {
  /** Everything lies within 0, 0 … width, height; y grows downwards. */
  readonly width: number;
  readonly height: number;
  /** From the lowest layer to the topmost: what comes later hides what it lies on. */
  readonly cloth: readonly Cloth[];
  readonly lines: readonly SceneLine[];
  readonly arrows: readonly SceneArrow[];
  /** The order in which pieces are sewn on, where the stage sews several; each number stands on its piece. */
  readonly numbers?: readonly SceneNumber[];
  /** Said to those who cannot see the figure. */
  readonly alt: string;
}

export interface Cloth {
  readonly corners: readonly Point[];
  readonly role: string;
  /** The wrong side shows when two pieces lie right sides together. */
  readonly side: 'right' | 'wrong';
}

export interface SceneLine {
  readonly kind: 'marked' | 'sewn' | 'cut';
  readonly from: Point;
  readonly to: Point;
}

export interface SceneArrow {
  readonly kind: 'press';
  readonly from: Point;
  readonly to: Point;
}

export interface SceneNumber {
  readonly at: Point;
  readonly text: string;
}
