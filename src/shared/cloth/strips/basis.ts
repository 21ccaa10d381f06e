/** A strip as the linear programme sees it: what it costs and how many of each kind it holds. */
export interface Column {
  readonly cost: number;
  readonly each: Float64Array;
  /** How many of each lie: what to cut. */
  readonly counts: Int32Array;
}

/**
 * A basis of the programme "cut every kind's count from strips at least cost": one strip for each kind, the inverse of
 * their matrix, and how many of each strip are cut. (The revised simplex method with a dense inverse: kinds are few.)
 */
export interface Basis {
  readonly columns: Column[];
  readonly inverse: Float64Array;
  readonly cut: Float64Array;
}

/** The basis in which every kind has strips of its own. */
export function ownStrips(columns: readonly Column[], demand: readonly number[]): Basis {
  const m = columns.length;
  const inverse = new Float64Array(m * m);
  const cut = new Float64Array(m);
  columns.forEach((column, i) => {
    const each = column.each[i] as number;
    inverse[i * m + i] = 1 / each;
    cut[i] = (demand[i] as number) / each;
  });
  return { columns: [...columns], inverse, cut };
}

/** What one piece of each kind costs at the margin. */
export function prices({ columns, inverse }: Basis): Float64Array {
  const m = columns.length;
  const y = new Float64Array(m);
  for (let row = 0; row < m; row++) {
    const cost = (columns[row] as Column).cost;
    for (let i = 0; i < m; i++) y[i] = (y[i] as number) + cost * (inverse[row * m + i] as number);
  }
  return y;
}

/**
 * Brings a strip into the basis in place of the one that it empties first.
 * @returns false when it empties none: the basis has lost its precision
 */
export function enter(basis: Basis, column: Column): boolean {
  const { columns, inverse, cut } = basis;
  const m = columns.length;
  const change = new Float64Array(m);
  let leaving = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let row = 0; row < m; row++) {
    let d = 0;
    for (let i = 0; i < m; i++) d += (inverse[row * m + i] as number) * (column.each[i] as number);
    change[row] = d;
    if (d > 1e-9 && (cut[row] as number) / d < least) [leaving, least] = [row, (cut[row] as number) / d];
  }
  if (leaving < 0) return false;
  pivot(basis, change, leaving, least);
  columns[leaving] = column;
  return true;
}

function pivot({ columns, inverse, cut }: Basis, change: Float64Array, leaving: number, amount: number): void {
  const m = columns.length;
  const by = change[leaving] as number;
  for (let i = 0; i < m; i++) inverse[leaving * m + i] = (inverse[leaving * m + i] as number) / by;
  for (let row = 0; row < m; row++) {
    const d = change[row] as number;
    if (row === leaving || d === 0) continue;
    cut[row] = Math.max(0, (cut[row] as number) - d * amount);
    for (let i = 0; i < m; i++) {
      inverse[row * m + i] = (inverse[row * m + i] as number) - d * (inverse[leaving * m + i] as number);
    }
  }
  cut[leaving] = amount;
}
