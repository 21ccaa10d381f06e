/** Equal lengths to be cut from stock of one length, in whole numbers. */
export interface Lengths {
  readonly length: number;
  readonly count: number;
}

/** A bound by rounding tries at most this many thresholds. */
const MOST_THRESHOLDS = 24;

/**
 * No fewer stocks of length `stock` than this hold all the lengths.
 *
 * Why: call u dual feasible when any lengths that fit one stock together have Σ u ≤ 1. Then one stock carries at most 1 of u, so at
 * least Σ u over all lengths of them are needed, and the number is whole. Three families of such functions are tried:
 * the length itself; u⁽ᵏ⁾ (Fekete and Schepers, "New classes of fast lower bounds for bin packing problems", 2001);
 * and the rounding by a threshold of Carlier, Clautiaux and Moukrim ("New reduction procedures and lower bounds for the
 * two-dimensional bin packing problem", 2007), together with Martello and Toth's L2, which drops what is shorter than a
 * threshold and counts what would leave less than it as a whole stock.
 */
export function binBound(lengths: readonly Lengths[], stock: number): number {
  if (lengths.length === 0) return 0;
  const total = (u: (length: number) => number) => lengths.reduce((sum, one) => sum + one.count * u(one.length), 0);
  let best = Math.ceil(total((length) => length) / stock - 1e-9);
  const least = lengths.reduce((least, one) => Math.min(least, one.length), stock);
  for (let k = 1; k <= Math.min(MOST_THRESHOLDS, Math.floor(stock / least)); k++) {
    best = Math.max(best, Math.ceil(total((length) => stepped(length, stock, k)) / (k * stock) - 1e-9));
  }
  for (const edge of thresholds(lengths, stock)) {
    best = Math.max(best, Math.ceil(total((length) => withoutShort(length, stock, edge)) / stock - 1e-9));
    const whole = 2 * Math.floor(stock / edge);
    best = Math.max(best, Math.ceil(total((length) => byThreshold(length, stock, edge)) / whole - 1e-9));
  }
  return best;
}

function thresholds(lengths: readonly Lengths[], stock: number): readonly number[] {
  const edges = lengths.flatMap(({ length }) => [length, stock - length, stock - length + 1]);
  const useful = [...new Set(edges)].filter((edge) => edge > 0 && 2 * edge <= stock).sort((a, b) => b - a);
  return useful.slice(0, MOST_THRESHOLDS);
}

/** u⁽ᵏ⁾ times k × stock: ⌊(k + 1)x⌋ ÷ k, and x itself where (k + 1)x is whole. */
function stepped(length: number, stock: number, k: number): number {
  const parts = (k + 1) * length;
  return parts % stock === 0 ? length * k : Math.floor(parts / stock) * stock;
}

/** L2 times the stock. */
function withoutShort(length: number, stock: number, edge: number): number {
  if (length > stock - edge) return stock;
  return length >= edge ? length : 0;
}

/** The rounding by a threshold, times 2⌊stock ÷ edge⌋. */
function byThreshold(length: number, stock: number, edge: number): number {
  const whole = Math.floor(stock / edge);
  if (2 * length > stock) return 2 * (whole - Math.floor((stock - length) / edge));
  return 2 * length === stock ? whole : 2 * Math.floor(length / edge);
}
