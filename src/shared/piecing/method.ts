import type { Inches } from '../measure/inches.ts';
import type { Traced, TracedSize } from '../measure/traced.ts';
import type { Unit } from './piecing.ts';
import type { Scene } from './scene.ts';

export type MethodId = string;

/** The sizes a method works at. */
export interface Scale {
  /** Finished inches of one grid unit. */
  readonly grid: Inches;
  /** Seam allowance, inches. */
  readonly seam: Inches;
  /** The step of the ruler the pattern is cut with, inches. */
  readonly step: Inches;
}

/**
 * One way of making a unit. Every method lives in a file of its own and answers the same questions; a new method is a
 * new file and its name in `methods/index.ts`.
 */
export interface Method {
  readonly id: MethodId;
  /** As the trade says it: "Flying geese, four at a time". */
  readonly name: string;
  /** Where the formula comes from. */
  readonly source: string;
  /** Whether it makes this unit. */
  makes(unit: Unit): boolean;
  /** How this unit is made at this scale. Call only when `makes` says so. */
  plan(unit: Unit, scale: Scale): MethodPlan;
}

/** How one batch of a unit is made. */
export interface MethodPlan {
  /** What is cut for one batch. */
  readonly cuts: readonly Cut[];
  /** Units one batch gives. */
  readonly yield: number;
  /** What the unit measures before it is sewn into anything, as printed: on the ruler. */
  readonly unfinished: TracedSize;
  /** True when the unit comes out larger and is trimmed to `unfinished`. */
  readonly trimmed: boolean;
  /** Making it, stage by stage. Empty for a plain cut. */
  readonly stages: readonly Stage[];
}

/** One piece to cut: printed sizes, on the ruler. */
export interface Cut {
  readonly role: string;
  readonly width: Traced;
  readonly height: Traced;
  /** How many of this piece for one batch. */
  readonly count: number;
  /** Patches that end up in the drawing from one such piece, over the whole batch. */
  readonly patches: number;
  /** What the piece is in the unit: "large square", "corner", "log". */
  readonly use: string;
  /**
   * Set when the piece is not cut by itself but sub-cut from a strip set: strips of `width` sewn side by side, crosscut at
   * `height`. The cloth stage then cuts whole strips.
   */
  readonly stripSet?: string;
}

/** One step of making the unit: a sentence and what it looks like. */
export interface Stage {
  readonly words: string;
  readonly scene: Scene;
}
