import type { Column } from '../basis.ts';
import { fill } from '../fill.ts';
import type { Lie } from '../kinds.ts';
import type { Problem } from '../problem.ts';
import { columnAt, type Level } from './levels.ts';

/** A strip, and what it is worth at the prices asked for one inch of its height. */
export interface Priced {
  readonly column: Column;
  readonly ratio: number;
}

/**
 * The strip worth most for its height, no kind in it more often than it is wanted: exactly, of all there are.
 *
 * All heights are first filled in one pass in which a kind that lies two ways may be taken twice over. That is never too little, so only
 * heights that look better than the best found need a filling of their own.
 */
export function dearest(problem: Problem, levels: readonly Level[], prices: Float64Array): Priced {
  const { lies, kinds, grid } = problem;
  const choices = lies.map(({ kind }, index) => ({
    width: grid.loose[index] as number,
    value: prices[kind] as number,
    most: (kinds[kind] as { count: number }).count,
  }));
  const all = fill(choices, grid.capacity);
  const looks = levels.map((level) => all.best(lastLieUpTo(lies, level)) / level.height);
  if (lies.length === kinds.length) return oneWay(problem, levels, prices, looks, all.counts);
  const order = levels.map((_, index) => index).sort((a, b) => (looks[b] as number) - (looks[a] as number));
  let best: Priced | null = null;
  for (const index of order) {
    if (best !== null && (looks[index] as number) <= best.ratio + 1e-12) break;
    const own = filled(problem, levels[index] as Level, prices);
    if (best === null || own.ratio > best.ratio) best = own;
  }
  return best as Priced;
}

function lastLieUpTo(lies: readonly Lie[], level: Level): number {
  let last = lies.length - 1;
  while ((lies[last] as Lie).height > level.height) last--;
  return last;
}

/** Where every kind lies one way only, the one pass was exact. */
function oneWay(
  problem: Problem,
  levels: readonly Level[],
  prices: Float64Array,
  looks: readonly number[],
  counts: (last: number) => Int32Array,
): Priced {
  let index = 0;
  looks.forEach((ratio, at) => {
    if (ratio > (looks[index] as number)) index = at;
  });
  const level = levels[index] as Level;
  const found = counts(lastLieUpTo(problem.lies, level));
  const each = Float64Array.from(level.lies, (lie) => (lie < 0 ? 0 : (found[lie] as number)));
  return priced(columnAt(problem, level, each), prices);
}

function filled(problem: Problem, level: Level, prices: Float64Array): Priced {
  const { kinds, grid } = problem;
  const choices = kinds.map((kind, index) => ({
    width: level.widths[index] as number,
    value: (level.lies[index] as number) < 0 ? 0 : (prices[index] as number),
    most: kind.count,
  }));
  const each = fill(choices, grid.capacity).counts(kinds.length - 1);
  return priced(columnAt(problem, level, each), prices);
}

function priced(column: Column, prices: Float64Array): Priced {
  const value = column.each.reduce((sum, n, kind) => sum + n * (prices[kind] as number), 0);
  return { column, ratio: column.cost === 0 ? 0 : value / column.cost };
}
