/** One line of the table of budgets: what is measured, against what, and how. */
export interface Row {
  /** What is done, in the words of the README's table. */
  readonly what: string;
  /** The budget in milliseconds, or what `unit` says. */
  readonly budget: number;
  readonly unit?: 'ms' | '×' | '%';
  /** The measured value, in the row's unit. */
  readonly measure: () => number | Promise<number>;
}

/** How often a thing is run before and while it is timed. */
export interface Rounds {
  readonly warm?: number;
  readonly timed?: number;
}

/** The median of the wall-clock times of a piece of work, in milliseconds, after some unmeasured rounds. */
export async function median(work: () => unknown, { warm = 3, timed = 15 }: Rounds = {}): Promise<number> {
  for (let round = 0; round < warm; round++) await work();
  const times: number[] = [];
  for (let round = 0; round < timed; round++) {
    const started = performance.now();
    await work();
    times.push(performance.now() - started);
  }
  return times.sort((a, b) => a - b)[Math.floor(timed / 2)] ?? Number.NaN;
}
