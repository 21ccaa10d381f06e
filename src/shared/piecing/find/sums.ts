import type { FieldPatch, Region } from './fieldPatch.ts';

/** For every line, how much of it up to a place has an edge on it: sums, so that any stretch is asked in one step. */
export class Runs {
  readonly #marked: Uint8Array;
  readonly #length: number;
  #sums: Int32Array | null = null;

  constructor(lines: number, length: number) {
    this.#length = length;
    this.#marked = new Uint8Array(lines * length);
  }

  mark(line: number, from: number, to: number): void {
    this.#marked.fill(1, line * this.#length + from, line * this.#length + to);
  }

  whole(line: number, from: number, to: number): boolean {
    const sums = this.#sums ?? this.#sum();
    const start = line * this.#length;
    return (sums[start + to] as number) - (sums[start + from] as number) === to - from;
  }

  #sum(): Int32Array {
    const sums = new Int32Array(this.#marked.length + 1);
    for (let i = 0; i < this.#marked.length; i += 1) sums[i + 1] = (sums[i] as number) + (this.#marked[i] as number);
    this.#sums = sums;
    return sums;
  }
}

/** Patches counted by the cell that holds their inside, as sums from the top left corner. */
export class Counts {
  readonly #sums: Int32Array;
  readonly #wide: number;

  constructor(columns: number, rows: number, patches: readonly FieldPatch[]) {
    this.#wide = columns + 1;
    this.#sums = new Int32Array(this.#wide * (rows + 1));
    for (const { column, row } of patches) {
      const cell = (row + 1) * this.#wide + column + 1;
      this.#sums[cell] = (this.#sums[cell] as number) + 1;
    }
    for (let row = 1; row <= rows; row += 1) {
      for (let column = 1; column <= columns; column += 1) {
        const before = this.#at(column - 1, row) + this.#at(column, row - 1) - this.#at(column - 1, row - 1);
        this.#sums[row * this.#wide + column] = this.#at(column, row) + before;
      }
    }
  }

  #at(column: number, row: number): number {
    return this.#sums[row * this.#wide + column] as number;
  }

  of({ left, top, right, bottom }: Region): number {
    return this.#at(right, bottom) - this.#at(left, bottom) - this.#at(right, top) + this.#at(left, top);
  }
}
