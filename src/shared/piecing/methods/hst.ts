import { longer, same } from '../../measure/inches.ts';
import type { Traced } from '../../measure/traced.ts';
import type { Cut, MethodPlan, Scale, Stage } from '../method.ts';
import type { Unit } from '../piecing.ts';
import { darker } from './darker.ts';
import { cutUp, halfSquareAdd, roomyLength, unfinishedSize } from './sums.ts';

/** What the ways of making half-square triangles from a pair of squares share. */

export type Hst = Extract<Unit, { kind: 'hst' }>;

/** Half-square triangles are square: their seam runs from corner to corner. */
export function isSquareHst(unit: Unit): boolean {
  return unit.kind === 'hst' && same(unit.width, unit.height);
}

/** A pair of squares: which lies on top and is marked, and which way the seams are pressed. */
export interface Pair {
  /** The unit's roles: top left triangle, bottom right triangle. */
  readonly roles: readonly [string, string];
  readonly upper: string;
  readonly lower: string;
  /** The triangle the seam is pressed to. */
  readonly pressTo: 'first' | 'second';
  /** Whether one fabric is known to be darker: then it lies below and the seam is pressed to it. */
  readonly byValue: boolean;
}

/** The lighter square is marked, because a pencil line shows on it, and the seam is pressed to the darker (common practice). */
export function pairOf(unit: Pick<Hst, 'roles'>, scale: Scale): Pair {
  const deep = darker(unit.roles, scale);
  const pressTo = deep ?? 'second';
  const [first, second] = unit.roles;
  const [upper, lower] = pressTo === 'first' ? [second, first] : [first, second];
  return { roles: unit.roles, upper, lower, pressTo, byValue: deep !== null };
}

/** Finished and s(2 + √2), up to the ruler: the square that makes two. */
export function squareForTwo(unit: Hst, scale: Scale): Traced {
  return cutUp(scale, roomyLength(unit.width, scale), halfSquareAdd(scale));
}

/** The plan of a batch from one square of each role. */
export function pairPlan(unit: Hst, scale: Scale, batch: PairBatch): MethodPlan {
  const unfinished = unfinishedSize(unit.width, unit.height, scale);
  const cut = (role: string): Cut => ({
    role,
    width: batch.square,
    height: batch.square,
    count: 1,
    patches: batch.yield,
    use: 'square',
  });
  const opened = batch.leg - scale.seam * Math.SQRT2;
  return {
    cuts: unit.roles.map(cut),
    yield: batch.yield,
    unfinished,
    trimmed: longer(opened, unfinished.width.value),
    stages: batch.stages(pairOf(unit, scale), unfinished.width),
  };
}

export interface PairBatch {
  readonly square: Traced;
  /** The short sides of the triangles that are sewn together, inches. */
  readonly leg: number;
  readonly yield: number;
  /** The stages, given the pair and what the unit is trimmed to. */
  readonly stages: (pair: Pair, unfinished: Traced) => readonly Stage[];
}
