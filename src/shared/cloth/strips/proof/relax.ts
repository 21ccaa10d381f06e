import type { Inches } from '../../../measure/inches.ts';
import type { Column } from '../basis.ts';
import type { Problem } from '../problem.ts';
import { columnAt, type Level } from './levels.ts';
import { Master } from './master.ts';
import { dearest } from './price.ts';

/** The linear programme of a cutting problem, solved: strips may be cut a fraction of a time. */
export interface Relaxed {
  /** No plan is shorter. */
  readonly bound: Inches;
  /** What one piece of each kind is worth: no strip holds more worth than it is tall. */
  readonly worth: Float64Array;
  /** Every strip that was generated on the way. */
  readonly columns: readonly Column[];
  /** How often each is cut. */
  readonly times: Float64Array;
  /** Whether it was solved to its end. */
  readonly solved: boolean;
}

/** A linear programme this near its optimum is solved. */
const NEAR = 1e-7;
/** Demands are shaken by about this much. */
const HAIR = 1e-5;
/** How much the best prices so far count against the last ones: it keeps them from swinging to and fro (Wentges, 1997). */
const STEADY = 0.8;

/**
 * Solves the linear programme by column generation (Gilmore and Gomory, 1961). The demands are shaken by a hair, a little
 * differently for each kind, so that no step of the simplex method stands still; bounds are worked out with the true demands.
 *
 * Why the bound holds at whatever point it stops: see `generate`. Here the dearest strip is found exactly even where pieces
 * turn, and the prices handed back are divided by its ratio, so that no strip at all is worth more than its height.
 * @param known strips to start from
 * @param more asked before each strip; false stops it
 */
export function relax(
  problem: Problem,
  levels: readonly Level[],
  known: readonly Column[],
  more: () => boolean,
): Relaxed {
  const demand = problem.kinds.map((kind) => kind.count);
  const own = demand.map((_, kind) => ownColumn(problem, levels, kind));
  const shaken = demand.map((n, kind) => n + HAIR * (1 + ((kind * 0.618034) % 1)));
  const master = new Master(shaken, own);
  const columns = [...known];
  for (const column of known) master.add(column);
  let best = { bound: 0, worth: new Float64Array(demand.length) };
  let steady = STEADY;
  let solved = false;
  while (!solved && more()) {
    master.solve();
    const exact = master.prices.map((price) => Math.max(0, price));
    const y = exact.map((price, kind) => steady * (best.worth[kind] as number) + (1 - steady) * price);
    const { column, ratio } = dearest(problem, levels, y);
    const over = Math.max(ratio, 1e-12) * (1 + 1e-11);
    const reached = demand.reduce((sum, n, kind) => sum + n * (y[kind] as number), 0) / over;
    if (reached > best.bound) best = { bound: reached, worth: y.map((price) => price / over) };
    const gain = column.each.reduce((sum, n, kind) => sum + n * (exact[kind] as number), 0) - column.cost;
    if (gain > NEAR * column.cost) {
      columns.push(column);
      master.add(column);
      steady = STEADY;
    } else if (steady === 0) solved = true;
    else steady = steady > 0.4 ? steady / 2 : 0;
  }
  return { ...best, columns: [...own, ...columns], times: timesOf(master, own.length, columns.length), solved };
}

/** How often each of the own and the other columns is taken: surplus columns lie between them. */
function timesOf(master: Master, own: number, others: number): Float64Array {
  const times = new Float64Array(own + others);
  master.basic.forEach((column, row) => {
    if (column < own) times[column] = master.taken[row] as number;
    else if (column >= master.first) times[column - master.first + own] = master.taken[row] as number;
  });
  return times;
}

/** Strips of one kind alone, laid the way that takes least cloth. */
function ownColumn(problem: Problem, levels: readonly Level[], kind: number): Column {
  const { kinds, grid } = problem;
  let best: { level: Level; fits: number } | null = null;
  for (const level of levels) {
    if ((level.lies[kind] as number) < 0) continue;
    const fits = Math.min(
      (kinds[kind] as { count: number }).count,
      Math.floor(grid.capacity / Math.max(1, grid.widths[level.lies[kind] as number] as number)),
    );
    if (fits > 0 && (best === null || level.height / fits < best.level.height / best.fits)) best = { level, fits };
  }
  const found = best as { level: Level; fits: number } | null;
  if (found === null) throw new RangeError(`No strip holds a piece ${kinds[kind]?.width} wide`);
  const each = new Float64Array(kinds.length);
  each[kind] = found.fits;
  return columnAt(problem, found.level, each);
}
