import type { Column } from '../basis.ts';

/** A column as the simplex method keeps it: what it costs, and its few numbers that are not nought. */
interface Sparse {
  readonly cost: number;
  readonly rows: Int32Array;
  readonly values: Float64Array;
}

/** A column is worth taking in when it lowers the cost by more than this for its weight. */
const ENOUGH = 1e-8;
/** The prices are worked out anew after so many steps, against the drift of floating point. */
const ANEW = 200;
/** Weights this large say nothing more: they start again at one. */
const HEAVY = 1e7;
/** A pivot smaller than this is no pivot. */
const SMALL = 1e-6;
/** Basic columns may go this far below nought in choosing the pivot. */
const SLIGHT = 1e-9;

/**
 * The linear programme "cover every demand with strips at least cost", kept at its optimum over the columns known so far.
 * The revised simplex method with a dense inverse (kinds are few), sparse columns and reference weights (devex: Harris,
 * "Pivot selection methods of the Devex LP code", 1973).
 */
export class Master {
  /** What one piece of each kind costs at the margin. */
  readonly prices: Float64Array;
  /** How often each basic column is taken, by the place in `basic`. */
  readonly taken: Float64Array;
  /** The columns in the basis. */
  readonly basic: Int32Array;
  private readonly rows: number;
  private readonly demand: readonly number[];
  private readonly inverse: Float64Array;
  private readonly columns: Sparse[] = [];
  private readonly gains: number[] = [];
  private readonly weights: number[] = [];
  private steps = 0;
  private heaviest = 1;

  /**
   * @param demand for each kind; a little different from its neighbours where standing still is to be avoided
   * @param own a column for each kind that holds nothing else
   */
  constructor(demand: readonly number[], own: readonly Column[]) {
    this.rows = demand.length;
    this.demand = demand;
    const m = this.rows;
    this.inverse = new Float64Array(m * m);
    this.taken = new Float64Array(m);
    this.prices = new Float64Array(m);
    this.basic = Int32Array.from({ length: m }, (_, row) => row);
    own.forEach((column, row) => {
      const each = column.each[row] as number;
      this.inverse[row * m + row] = 1 / each;
      this.taken[row] = (demand[row] as number) / each;
      this.prices[row] = column.cost / each;
    });
    for (const column of own) this.add(column);
    for (let row = 0; row < m; row++) this.put({ cost: 0, rows: Int32Array.of(row), values: Float64Array.of(-1) });
  }

  /** How many columns came before those that are added: one for each kind, and its surplus. */
  get first(): number {
    return 2 * this.rows;
  }

  add(column: Column): number {
    const rows: number[] = [];
    column.each.forEach((n, row) => {
      if (n !== 0) rows.push(row);
    });
    return this.put({
      cost: column.cost,
      rows: Int32Array.from(rows),
      values: Float64Array.from(rows, (row) => column.each[row] as number),
    });
  }

  private put(column: Sparse): number {
    this.gains.push(this.gainOf(column));
    this.weights.push(1);
    return this.columns.push(column) - 1;
  }

  private gainOf({ cost, rows, values }: Sparse): number {
    let gain = -cost;
    for (let i = 0; i < rows.length; i++) gain += (values[i] as number) * (this.prices[rows[i] as number] as number);
    return gain;
  }

  /** Goes to the optimum over the columns known so far. */
  solve(): void {
    for (let entering = this.promising(); entering >= 0; entering = this.promising()) {
      const change = this.change(this.columns[entering] as Sparse);
      const leaving = this.emptied(change);
      if (leaving >= 0) this.exchange(entering, leaving, change);
      else if (this.steps > 0) this.anew();
      else return;
      if (this.steps >= ANEW) this.anew();
      if (this.heaviest > HEAVY) this.weighAnew();
    }
  }

  /** Takes in one column and throws one out. */
  private exchange(entering: number, leaving: number, change: Float64Array): void {
    this.reprice(entering, leaving, change[leaving] as number);
    this.pivot(change, leaving);
    this.basic[leaving] = entering;
    this.steps++;
  }

  private promising(): number {
    let best = -1;
    let most = 0;
    for (let index = 0; index < this.gains.length; index++) {
      const gain = this.gains[index] as number;
      if (gain <= ENOUGH) continue;
      const promise = (gain * gain) / (this.weights[index] as number);
      if (promise > most) [best, most] = [index, promise];
    }
    return best;
  }

  /** By how much each basic column is taken less for each time this one is taken. */
  private change({ rows, values }: Sparse): Float64Array {
    const m = this.rows;
    const change = new Float64Array(m);
    for (let row = 0; row < m; row++) {
      let sum = 0;
      for (let i = 0; i < rows.length; i++)
        sum += (this.inverse[row * m + (rows[i] as number)] as number) * (values[i] as number);
      change[row] = sum;
    }
    return change;
  }

  /** The basic column that is used up first; of those used up at nearly the same time the one that keeps precision best. */
  private emptied(change: Float64Array): number {
    let within = Number.POSITIVE_INFINITY;
    for (let row = 0; row < this.rows; row++) {
      const d = change[row] as number;
      if (d > SMALL) within = Math.min(within, ((this.taken[row] as number) + SLIGHT) / d);
    }
    let leaving = -1;
    for (let row = 0; row < this.rows; row++) {
      const d = change[row] as number;
      if (d <= SMALL || (this.taken[row] as number) / d > within) continue;
      if (leaving < 0 || d > (change[leaving] as number)) leaving = row;
    }
    return leaving;
  }

  /** Prices, gains and weights after a step. */
  private reprice(entering: number, leaving: number, pivot: number): void {
    const m = this.rows;
    const row = this.inverse.subarray(leaving * m, leaving * m + m);
    const by = (this.gains[entering] as number) / pivot;
    for (let i = 0; i < m; i++) this.prices[i] = (this.prices[i] as number) - by * (row[i] as number);
    const heavy = (this.weights[entering] as number) / (pivot * pivot);
    this.heaviest = Math.max(this.heaviest, heavy);
    for (let index = 0; index < this.columns.length; index++) {
      const { rows, values } = this.columns[index] as Sparse;
      let alpha = 0;
      for (let i = 0; i < rows.length; i++) alpha += (values[i] as number) * (row[rows[i] as number] as number);
      if (alpha === 0) continue;
      this.gains[index] = (this.gains[index] as number) - by * alpha;
      this.weights[index] = Math.max(this.weights[index] as number, alpha * alpha * heavy);
    }
    this.gains[entering] = 0;
    this.weights[this.basic[leaving] as number] = Math.max(1, heavy);
  }

  private pivot(change: Float64Array, leaving: number): void {
    const { inverse, taken, rows: m } = this;
    const by = change[leaving] as number;
    const amount = (taken[leaving] as number) / by;
    for (let i = 0; i < m; i++) inverse[leaving * m + i] = (inverse[leaving * m + i] as number) / by;
    for (let row = 0; row < m; row++) {
      const d = change[row] as number;
      if (row === leaving || Math.abs(d) < 1e-13) continue;
      taken[row] = Math.max(0, (taken[row] as number) - d * amount);
      for (let i = 0; i < m; i++)
        inverse[row * m + i] = (inverse[row * m + i] as number) - d * (inverse[leaving * m + i] as number);
    }
    taken[leaving] = amount;
  }

  /** The inverse, the prices and what follows from them, worked out from the columns themselves. */
  private anew(): void {
    this.steps = 0;
    this.invert();
    const { inverse, rows: m } = this;
    this.prices.fill(0);
    for (let row = 0; row < m; row++) {
      const { cost } = this.columns[this.basic[row] as number] as Sparse;
      let taken = 0;
      for (let i = 0; i < m; i++) {
        const entry = inverse[row * m + i] as number;
        taken += entry * (this.demand[i] as number);
        this.prices[i] = (this.prices[i] as number) + cost * entry;
      }
      this.taken[row] = Math.max(0, taken);
    }
    this.columns.forEach((column, index) => {
      this.gains[index] = this.gainOf(column);
    });
  }

  private weighAnew(): void {
    this.weights.fill(1);
    this.heaviest = 1;
  }

  /** Gauss and Jordan, with the rows of the basis put where their pivots are. */
  private invert(): void {
    const m = this.rows;
    const left = new Float64Array(m * m);
    this.basic.forEach((index, place) => {
      const { rows, values } = this.columns[index] as Sparse;
      rows.forEach((row, i) => {
        left[row * m + place] = values[i] as number;
      });
    });
    const inverse = solveIdentity(left, m);
    if (inverse !== null) this.inverse.set(inverse);
  }
}

/** The inverse of a square matrix, by elimination with the largest pivot; null when it has none to working precision. */
function solveIdentity(left: Float64Array, m: number): Float64Array | null {
  const right = new Float64Array(m * m);
  for (let i = 0; i < m; i++) right[i * m + i] = 1;
  for (let at = 0; at < m; at++) {
    let pivot = at;
    for (let row = at + 1; row < m; row++)
      if (Math.abs(left[row * m + at] as number) > Math.abs(left[pivot * m + at] as number)) pivot = row;
    const by = left[pivot * m + at] as number;
    if (Math.abs(by) < 1e-11) return null;
    for (const side of [left, right]) {
      for (let i = 0; i < m; i++) {
        const kept = side[at * m + i] as number;
        side[at * m + i] = (side[pivot * m + i] as number) / by;
        if (pivot !== at) side[pivot * m + i] = kept;
      }
    }
    for (let row = 0; row < m; row++) {
      const times = left[row * m + at] as number;
      if (row === at || times === 0) continue;
      for (let i = at; i < m; i++)
        left[row * m + i] = (left[row * m + i] as number) - times * (left[at * m + i] as number);
      for (let i = 0; i < m; i++)
        right[row * m + i] = (right[row * m + i] as number) - times * (right[at * m + i] as number);
    }
  }
  return right;
}
