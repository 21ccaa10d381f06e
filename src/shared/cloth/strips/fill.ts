/** A thing that may go into a strip, on the grid's scale. */
export interface Choice {
  readonly width: number;
  readonly value: number;
  readonly most: number;
}

/** The most valuable fillings of one width, for every beginning of the list of choices. */
export interface Filling {
  /** The greatest value using only choices 0 … `last`. */
  best(last: number): number;
  /** How many of each choice make that value. */
  counts(last: number): Int32Array;
  /** Basic operations spent. */
  readonly work: number;
}

/** So many of one choice, taken together or not at all. */
interface Lot {
  readonly choice: number;
  readonly pieces: number;
  readonly width: number;
}

/**
 * Fills a width with the most valuable choice of pieces, each at most so many times (bounded knapsack over whole
 * numbers: Bellman's recursion, each count split into powers of two). One pass answers for every beginning of the list, so
 * with choices in order of height it answers for every height of strip.
 */
export function fill(choices: readonly Choice[], capacity: number): Filling {
  const lots = choices.flatMap((choice, index) => lotsOf(choice, index, capacity));
  const room = capacity + 1;
  const value = new Float64Array(room);
  const took = new Uint8Array(lots.length * room);
  const after = new Float64Array(choices.length);
  const lotsUpTo = new Int32Array(choices.length);
  let next = 0;
  choices.forEach((choice, index) => {
    for (let lot = lots[next]; lot !== undefined && lot.choice === index; lot = lots[++next]) {
      takeOrLeave(value, took, next * room, lot.width, choice.value * lot.pieces);
    }
    after[index] = value[capacity] as number;
    lotsUpTo[index] = next;
  });
  return {
    best: (last) => after[last] as number,
    counts: (last) => trace(lots, took, lotsUpTo[last] as number, capacity, choices.length),
    work: lots.length * room,
  };
}

function lotsOf(choice: Choice, index: number, capacity: number): Lot[] {
  const lots: Lot[] = [];
  if (choice.value <= 0) return lots;
  let left = Math.min(choice.most, Math.floor(capacity / choice.width));
  for (let size = 1; left > 0; size *= 2) {
    const pieces = Math.min(size, left);
    lots.push({ choice: index, pieces, width: pieces * choice.width });
    left -= pieces;
  }
  return lots;
}

/** From the far end, so that one lot is never taken twice. */
function takeOrLeave(value: Float64Array, took: Uint8Array, offset: number, width: number, worth: number): void {
  for (let at = value.length - 1; at >= width; at--) {
    const taken = (value[at - width] as number) + worth;
    if (taken > (value[at] as number) + 1e-12) {
      value[at] = taken;
      took[offset + at] = 1;
    }
  }
}

function trace(lots: readonly Lot[], took: Uint8Array, upTo: number, capacity: number, choices: number): Int32Array {
  const counts = new Int32Array(choices);
  let at = capacity;
  for (let i = upTo - 1; i >= 0; i--) {
    const lot = lots[i] as Lot;
    if (took[i * (capacity + 1) + at] !== 1) continue;
    counts[lot.choice] = (counts[lot.choice] as number) + lot.pieces;
    at -= lot.width;
  }
  return counts;
}
