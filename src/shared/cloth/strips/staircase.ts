import type { Inches } from '../../measure/inches.ts';
import { binBound } from './binBound.ts';
import type { Kind, Lie } from './kinds.ts';

/** A lie with its width in whole grid steps. */
export interface GridLie {
  readonly lie: Lie;
  readonly width: number;
}

/** Steps of the staircase at most. */
const MOST_STEPS = 48;

/**
 * No plan of strips is shorter than this.
 *
 * Why: let N(t) be the number of strips at least t tall. The plan's length is the area under N, from 0 up. A piece at least t
 * tall lies in a strip at least t tall, so N(t) is no less than the strips that all pieces at least t tall need when only their
 * widths are looked at: `binBound`. N is then summed as a staircase whose steps are the pieces' heights.
 *
 * A piece that may be turned counts at height t only if it is that tall either way, and then by the narrower width. That
 * alone would be weak, so the tallest strip is asked first: call it H. Then the plan is at least H long, and no piece stands
 * taller than H, which leaves most of them only one way to lie. The bound is the least over every H there could be.
 *
 * @param lies every way each kind may lie, lowest first, with widths no larger than true
 * @param capacity the usable width in the same steps, no smaller than true
 */
export function staircase(kinds: readonly Kind[], lies: readonly GridLie[], capacity: number): Inches {
  const every = [...new Set(lies.map((one) => one.lie.height))];
  const steps = someOf(every);
  const byKind = kinds.map((): GridLie[] => []);
  for (const one of lies) byKind[one.lie.kind]?.push(one);
  const lowest = byKind.reduce((most, ways) => Math.max(most, ways[0]?.lie.height ?? 0), 0);
  const under = (tallest: Inches) => underTallest(kinds, byKind, steps, tallest, capacity);
  if (lies.length === kinds.length || steps.length < every.length)
    return Math.max(lowest, under(Number.POSITIVE_INFINITY));
  let least = Number.POSITIVE_INFINITY;
  for (const tallest of every) {
    if (tallest < lowest) continue;
    if (tallest >= least) break;
    least = Math.min(least, Math.max(tallest, under(tallest)));
  }
  return least;
}

/** With very many heights some steps are left out: N only grows downwards, so a higher step may stand for a lower one. */
function someOf(heights: readonly Inches[]): readonly Inches[] {
  const every = Math.ceil(heights.length / MOST_STEPS);
  return heights.filter((_, index) => (heights.length - 1 - index) % every === 0);
}

function underTallest(
  kinds: readonly Kind[],
  byKind: readonly (readonly GridLie[])[],
  heights: readonly Inches[],
  tallest: Inches,
  capacity: number,
): Inches {
  const allowed = byKind.map((ways) => ways.filter((way) => way.lie.height <= tallest));
  let total = 0;
  let needed = 0;
  for (let i = heights.length - 1; i >= 0; i--) {
    const at = heights[i] as number;
    const lengths = kinds.flatMap((kind, index) => {
      const ways = allowed[index] ?? [];
      if (ways.some((way) => way.lie.height < at)) return [];
      return [{ length: Math.min(...ways.map((way) => way.width)), count: kind.count }];
    });
    needed = Math.max(needed, binBound(lengths, capacity));
    total += needed * (at - (heights[i - 1] ?? 0));
  }
  return total;
}
