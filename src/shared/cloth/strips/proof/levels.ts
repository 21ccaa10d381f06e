import type { Inches } from '../../../measure/inches.ts';
import type { Column } from '../basis.ts';
import type { Lie } from '../kinds.ts';
import type { Problem } from '../problem.ts';

/** One height a strip may have, and how each kind lies narrowest in a strip that tall. */
export interface Level {
  readonly height: Inches;
  /** For each kind the index of its lie in `problem.lies`, or −1 when it stands taller than the strip. */
  readonly lies: Int32Array;
  /** The widths of those lies on the grid, no larger than true. */
  readonly widths: Int32Array;
}

/**
 * Every height a strip may have, lowest first. A strip is as tall as some piece, and in a strip of one height each kind is best
 * laid the narrowest way that is no taller: whatever else fits beside the other way fits beside this one.
 */
export function levelsOf(problem: Problem): readonly Level[] {
  const heights = [...new Set(problem.lies.map((lie) => lie.height))];
  return heights.map((height) => {
    const lies = Int32Array.from(problem.liesOfKind, (ways) => narrowestWithin(problem, ways, height));
    const widths = lies.map((lie) => (lie < 0 ? 0 : (problem.grid.loose[lie] as number)));
    return { height, lies, widths };
  });
}

function narrowestWithin({ lies }: Problem, ways: readonly number[], height: Inches): number {
  let best = -1;
  for (const way of ways) {
    const lie = lies[way] as Lie;
    if (lie.height <= height && (best < 0 || lie.width < (lies[best] as Lie).width)) best = way;
  }
  return best;
}

/** The strip of one level that holds so many of each kind. */
export function columnAt(problem: Problem, level: Level, each: ArrayLike<number>): Column {
  const counts = new Int32Array(problem.lies.length);
  let cost = 0;
  for (let kind = 0; kind < level.lies.length; kind++) {
    const count = each[kind] as number;
    if (count === 0) continue;
    const lie = level.lies[kind] as number;
    counts[lie] = count;
    cost = Math.max(cost, (problem.lies[lie] as Lie).height);
  }
  return { cost, each: Float64Array.from(each), counts };
}
