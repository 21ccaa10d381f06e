import { type Cost, SEAM, total } from './cost.ts';

/** A part of a row that reaches over some of its cuts: what it costs, and what it looks like. */
export interface Stretch {
  readonly cost: Cost;
  readonly handed: number;
}

/** Every part there could be in a row, by the places of its two ends among the row's lines; the whole row is none. */
export class Stretches {
  readonly #parts: (Stretch | null)[][] = [];
  readonly #alike = new Map<number, number>();

  constructor(lines: number, part: (i: number, j: number) => Stretch | null) {
    for (let i = 0; i < lines; i += 1) {
      const row: (Stretch | null)[] = [];
      for (let j = i + 1; j < lines; j += 1) {
        const stretch = i === 0 && j === lines - 1 ? null : part(i, j);
        row[j] = stretch;
        if (stretch !== null) this.#alike.set(stretch.handed, (this.#alike.get(stretch.handed) ?? 0) + 1);
      }
      this.#parts.push(row);
    }
  }

  #at(i: number, j: number): Stretch | null {
    return this.#parts[i]?.[j] ?? null;
  }

  /** What a part costs by itself; endless when it cannot be made. */
  alone(i: number, j: number): number {
    const part = this.#at(i, j);
    return part === null ? Number.POSITIVE_INFINITY : total(part.cost);
  }

  /** What it costs when its lessons are shared among all that look like it. */
  shared(i: number, j: number): number {
    const part = this.#at(i, j);
    if (part === null) return Number.POSITIVE_INFINITY;
    return part.cost.effort + part.cost.lessons / (this.#alike.get(part.handed) ?? 1);
  }
}

/**
 * The cheapest way from the first line to the last.
 * @param cost of the part from one line to a later one
 * @returns the places of the lines on the way, without the first and the last
 */
export function cheapestWay(lines: number, cost: (i: number, j: number) => number): readonly number[] {
  const least: number[] = [0];
  const before: number[] = [-1];
  for (let j = 1; j < lines; j += 1) {
    least[j] = Number.POSITIVE_INFINITY;
    for (let i = 0; i < j; i += 1) {
      const here = (least[i] as number) + SEAM + cost(i, j);
      if (here < (least[j] as number) - 1e-9) [least[j], before[j]] = [here, i];
    }
  }
  const way: number[] = [];
  for (let j = before[lines - 1] as number; j > 0; j = before[j] as number) way.unshift(j);
  return way;
}
