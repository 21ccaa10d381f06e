import { MEANT } from '../../drawing/near.ts';

/**
 * The distinct coordinates of a drawing in one direction. Places nearer than `MEANT` are on one line; a line at a whole
 * grid unit is exactly there. From here on lines are told apart by their index, never by numbers.
 */
export interface Lines {
  /** Grid units, rising. */
  readonly at: readonly number[];
  /** The line a coordinate is on, or the last line before it. */
  indexOf(value: number): number;
}

/** The lines on which the given coordinates lie. */
export function linesOf(values: readonly number[]): Lines {
  const sorted = [...values].sort((a, b) => a - b);
  const at: number[] = [];
  let last = Number.NEGATIVE_INFINITY;
  for (const value of sorted) {
    if (value - last >= MEANT) at.push(onGrid(value));
    last = value;
  }
  return { at, indexOf: (value) => indexIn(at, value + MEANT) };
}

function onGrid(value: number): number {
  const whole = Math.round(value);
  return Math.abs(whole - value) < MEANT ? whole : value;
}

/** The last entry of a rising list that is not above the value; −1 when all are. */
function indexIn(at: readonly number[], value: number): number {
  let [low, high] = [-1, at.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((at[middle] as number) <= value) low = middle;
    else high = middle - 1;
  }
  return low;
}
