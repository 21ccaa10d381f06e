import type { Inches } from '../measure/inches.ts';
import type { Traced, TracedSize } from '../measure/traced.ts';
import type { Value } from '../recipe/schema.ts';
import type { FoundationPaper } from './foundation/paper.ts';
import type { Unit } from './piecing.ts';
import type { Scene } from './scene.ts';
import type { Template } from './templates/template.ts';
import type { UnitInside } from './unitsInside.ts';

export type MethodId = string;

/** The sizes a method works at. */
export interface Scale {
  /** Finished inches of one grid unit. */
  readonly grid: Inches;
  /** Seam allowance, inches. */
  readonly seam: Inches;
  /** The step of the ruler the pattern is cut with, inches. */
  readonly step: Inches;
  /**
   * Whether a role's fabric is light, medium or dark. Only the sewing stages ask, to say which piece is marked and which
   * way its seam is pressed ("towards the darker fabric"); without it they say so without naming the darker one. No size,
   * count or yield depends on it.
   */
  readonly roleValue?: (role: string) => Value | undefined;
  /**
   * Inches added to the pieces of units that are trimmed to size, so that there is more to trim. Left out or 0: no more than
   * the ruler asks. Methods that trim nothing pass it over.
   */
  readonly oversize?: Inches;
}

/** What a method is called, as data: what is worked out names its methods and carries none. */
export interface NamedMethod {
  readonly id: MethodId;
  /** As the trade says it: "Flying geese, four at a time". */
  readonly name: string;
  /** Where the formula comes from. */
  readonly source: string;
}

/**
 * One way of making a unit. Every method lives in a file of its own and answers the same questions; a new method is a
 * new file and its name in `methods/index.ts`.
 */
export interface Method extends NamedMethod {
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
  /** Things trimmed in one batch; left out, every unit once when it is trimmed at all. */
  readonly trims?: number;
  /** Units of the trade that are made first and sewn in whole: how many one unit takes. */
  readonly takes?: readonly UnitInside[];
  /**
   * Which way the pieces are cut from corner to corner, where that makes every unit of a batch of one hand: its mirror images take
   * batches of their own. Left out, a batch makes either, or one unit alone.
   */
  readonly hand?: 'rising' | 'falling';
  /** Shapes to cut round, printed at true size. The cuts name them by their `shape`. */
  readonly templates?: readonly Template[];
  /** Papers to sew on, printed at true size. */
  readonly foundations?: readonly FoundationPaper[];
}

/**
 * One piece to cut: printed sizes, on the ruler. Cut and sewn patches balance, over one batch:
 * Σ `count` × `patches` over the cuts = `yield` × the patches of one unit (`unitPolygons(unit).length`), less those of the
 * units each `takes`.
 */
export interface Cut {
  readonly role: string;
  readonly width: Traced;
  readonly height: Traced;
  /** How many of this piece for one batch. */
  readonly count: number;
  /**
   * How many patches of finished units one such piece becomes when the batch is made: 2 for each square of
   * half-square triangles two at a time, 8 eight at a time; 4 for the large square of flying geese, 2 for each small one;
   * 1 for a piece that is only sewn (and, at most, has a corner cut off).
   */
  readonly patches: number;
  /** What the piece is in the unit: "large square", "corner square", "log". The stages call it by the same words. */
  readonly use: string;
  /**
   * Set when the piece is not cut by itself but is one layer of a sub-cut from a strip set. All cuts of a plan with the
   * same `stripSet` are one set: one strip of each, `width` wide and as long as the cloth allows, sewn side by side in
   * this order along their long sides, then crosscut every `height`. They share `height` and `count`, and `count` is then
   * the number of sub-cuts one batch takes (each sub-cut carries one piece of every strip). So n batches take n × `count`
   * sub-cuts, a set gives ⌊usable width ÷ `height`⌋ of them, and whole strips of each `width` are cut, one for each set.
   * The name says what the set is, in roles and inches; equal names within one block are the same set and may be shared.
   */
  readonly stripSet?: string;
  /**
   * Set when the piece is cut round a template: the template's shape. The size is then that of the rectangle it is cut from.
   * Pieces of one size and different shapes are different pieces.
   */
  readonly shape?: string;
}

/**
 * One step of making the unit: one to three sentences and what it looks like. Numbers are bound, never typed: the words
 * are strings with no digit in them and traced numbers between, to be printed in order (a length as `3½″`). For one
 * unit the same stages with the same strings come back at every scale; only the numbers differ.
 */
export interface Stage {
  readonly words: readonly (string | Traced)[];
  readonly scene: Scene;
}
