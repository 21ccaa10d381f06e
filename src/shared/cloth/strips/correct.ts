import { build } from './build.ts';
import type { Packed } from './kinds.ts';
import type { Problem } from './problem.ts';

/**
 * Builds plan after plan. After each, a piece's worth is moved towards what it really took: its share of the cloth of the
 * strip it lay in, waste included. Pieces that are awkward to place grow dearer and are placed earlier. (Sequential
 * value correction: Belov, Scheithauer and Mukhacheva, "One-dimensional heuristics adapted for two-dimensional
 * rectangular strip packing", 2008; here with fixed steps instead of chance.)
 * @param offer takes each plan; answers true to stop
 */
export function corrected(
  problem: Problem,
  worth: readonly number[],
  areas: readonly number[],
  effort: number,
  offer: (strips: readonly Packed[]) => boolean,
): void {
  let prices = worth;
  for (let work = 0, round = 0; work < effort; round++) {
    const left = problem.kinds.map((kind) => kind.count);
    const built = build(problem, prices, left);
    work += built.work + 2000;
    if (offer(built.strips)) return;
    prices = taken(
      problem,
      built.strips,
      prices,
      areas,
      STEPS[round % STEPS.length] as number,
      POWERS[round % POWERS.length] as number,
    );
  }
}

/** How far a worth moves, and how much larger pieces are favoured, round by round. */
const STEPS: readonly number[] = [0.5, 0.3, 0.7, 0.2, 0.4];
const POWERS: readonly number[] = [1.02, 1.0, 1.06, 1.03, 1.1, 1.01, 1.15];

function taken(
  problem: Problem,
  strips: readonly Packed[],
  prices: readonly number[],
  areas: readonly number[],
  step: number,
  power: number,
): readonly number[] {
  const cloth = new Array<number>(prices.length).fill(0);
  for (const strip of strips) {
    const used = strip.laid.reduce((sum, { lie, count }) => sum + (areas[lie.kind] as number) * count, 0);
    const waste = (strip.height * problem.width) / used;
    for (const { lie, count } of strip.laid) {
      const share = (areas[lie.kind] as number) ** power * waste * count * strip.times;
      cloth[lie.kind] = (cloth[lie.kind] as number) + share;
    }
  }
  const total = prices.reduce((sum, price, kind) => sum + price * (problem.kinds[kind]?.count ?? 0), 0);
  const spent = cloth.reduce((sum, share) => sum + share, 0);
  return prices.map((price, kind) => {
    const real = ((cloth[kind] as number) / (problem.kinds[kind]?.count ?? 1)) * (total / spent);
    return (1 - step) * price + step * real;
  });
}
