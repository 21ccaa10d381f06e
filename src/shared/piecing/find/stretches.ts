import { type Cost, SEAM, total } from './cost.ts';

/** A part of a row that reaches over some of its cuts: what it costs, and what it looks like. */
export interface Stretch {
  readonly cost: Cost;
  readonly handed: number;
}

/**
 * What every part there could be in a row costs: by itself, and when its lessons are shared among all that look like it; endless
 * where there is none.
 * @param parts from line i to line j, in the order of `placeOf`
 */
export function stretchCosts(parts: readonly (Stretch | null)[]): {
  readonly alone: readonly number[];
  readonly shared: readonly number[];
} {
  const alike = new Map<number, number>();
  for (const part of parts) if (part !== null) alike.set(part.handed, (alike.get(part.handed) ?? 0) + 1);
  const alone: number[] = [];
  const shared: number[] = [];
  for (const part of parts) {
    alone.push(part === null ? Number.POSITIVE_INFINITY : total(part.cost));
    shared.push(
      part === null
        ? Number.POSITIVE_INFINITY
        : part.cost.effort + part.cost.lessons / (alike.get(part.handed) as number),
    );
  }
  return { alone, shared };
}

/** Where the part from line i to a later line j stands: those that end at one line follow one another. */
function placeOf(i: number, j: number): number {
  return (j * (j - 1)) / 2 + i;
}

/**
 * The cheapest way from the first line to the last.
 * @param costs of the part from each line to each later one, in the order of `placeOf`
 * @returns the places of the lines on the way, without the first and the last
 */
export function cheapestWay(lines: number, costs: readonly number[]): readonly number[] {
  const least: number[] = [0];
  const before: number[] = [-1];
  for (let j = 1; j < lines; j += 1) {
    let cost = Number.POSITIVE_INFINITY;
    let from = -1;
    for (let i = 0; i < j; i += 1) {
      const here = (least[i] as number) + SEAM + (costs[placeOf(i, j)] as number);
      if (here >= cost - 1e-9) continue;
      cost = here;
      from = i;
    }
    least.push(cost);
    before.push(from);
  }
  const way: number[] = [];
  for (let j = before[lines - 1] as number; j > 0; j = before[j] as number) way.unshift(j);
  return way;
}
