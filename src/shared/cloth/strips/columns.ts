import type { Inches } from '../../measure/inches.ts';
import { type Basis, type Column, enter, ownStrips, prices } from './basis.ts';
import { type Filling, fill } from './fill.ts';
import type { Lie } from './kinds.ts';
import type { Problem } from './problem.ts';

/** What generating columns gives: a bound, what pieces are worth, and strips cut so many times (not whole numbers). */
export interface Generated {
  readonly bound: Inches;
  readonly worth: readonly number[];
  readonly strips: readonly { readonly counts: Int32Array; readonly times: number }[];
  readonly work: number;
}

/**
 * A lower bound on every plan, by column generation (Gilmore and Gomory, "A linear programming approach to the cutting
 * stock problem", 1961), stopped when `effort` basic operations are spent.
 *
 * Why it holds at whatever point it stops: give each kind any price not below 0. Let r be the most any one strip can be worth, at
 * these prices, for one inch of its height; the knapsack `fill` finds it exactly, over every height there is. Then each strip of a
 * plan costs at least its worth ÷ r, and all the pieces together cost at least their worth ÷ r (Farley, "A note on bounding a class
 * of linear programming problems", 1990). The prices of the simplex method only make this strong; they do not make it true.
 * Where a piece may lie two ways the fill may take it twice over, which can only raise r.
 */
export function generate(problem: Problem, effort: number): Generated {
  const demand = problem.kinds.map((kind) => kind.count);
  const basis = ownStrips(
    problem.kinds.map((_, kind) => ownColumn(problem, kind)),
    demand,
  );
  let bound = 0;
  let worth: Float64Array = prices(basis);
  let work = 0;
  while (work < effort) {
    const y = prices(basis).map((price) => Math.max(0, price));
    const { filling, last, ratio } = priciest(problem, y);
    work += filling.work + 2 * demand.length ** 2 + 2000;
    const reached = demand.reduce((sum, n, kind) => sum + n * (y[kind] as number), 0) / Math.max(ratio, 1e-12);
    if (reached > bound) [bound, worth] = [reached, y];
    if (ratio <= 1 + 1e-7 || !enter(basis, columnOf(problem, filling.counts(last)))) break;
  }
  return { bound, worth: [...worth], strips: cutStrips(basis), work };
}

/** The strip worth most for its height, of those in which no kind is cut more often than it is wanted. */
function priciest(problem: Problem, y: Float64Array): { filling: Filling; last: number; ratio: number } {
  const { lies, grid, kinds } = problem;
  const choices = lies.map(({ kind }, index) => ({
    width: grid.loose[index] as number,
    value: y[kind] as number,
    most: kinds[kind]?.count ?? 0,
  }));
  const filling = fill(choices, grid.capacity);
  let last = 0;
  let ratio = 0;
  lies.forEach((lie, index) => {
    const value = filling.best(index) / lie.height;
    if (value > ratio) [last, ratio] = [index, value];
  });
  return { filling, last, ratio };
}

/** Strips of one kind alone, laid the way that takes least cloth. */
function ownColumn(problem: Problem, kind: number): Column {
  const { lies, grid, kinds } = problem;
  const ways = (problem.liesOfKind[kind] ?? []).map((index) => {
    const fits = Math.min(kinds[kind]?.count ?? 0, Math.floor(grid.capacity / (grid.widths[index] as number)));
    return { index, fits, cost: (lies[index] as Lie).height / fits };
  });
  const best = ways.reduce((a, b) => (b.cost < a.cost ? b : a));
  const counts = new Int32Array(lies.length);
  counts[best.index] = best.fits;
  return columnOf(problem, counts);
}

function columnOf(problem: Problem, counts: Int32Array): Column {
  const each = new Float64Array(problem.kinds.length);
  let cost = 0;
  problem.lies.forEach((lie, index) => {
    const count = counts[index] ?? 0;
    if (count > 0) cost = Math.max(cost, lie.height);
    each[lie.kind] = (each[lie.kind] as number) + count;
  });
  return { cost, each, counts };
}

function cutStrips(basis: Basis): Generated['strips'] {
  return basis.columns.map((column, row) => ({ counts: column.counts, times: basis.cut[row] as number }));
}
