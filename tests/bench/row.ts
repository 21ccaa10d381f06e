import { Bench } from 'tinybench';

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

/** A table of its own, for what one number a line does not tell. */
export interface Table {
  readonly title: string;
  readonly head: readonly string[];
  /** Each row as soon as it is known. */
  rows(): AsyncIterable<readonly string[]>;
}

/** How often a thing is run before and while it is timed. */
export interface Rounds {
  readonly warm?: number;
  readonly timed?: number;
}

/** The median of the wall-clock times of a piece of work, in milliseconds, after some unmeasured rounds. */
export async function median(work: () => unknown, { warm = 3, timed = 15 }: Rounds = {}): Promise<number> {
  const exactly = { time: 0, warmupTime: 0, iterations: timed, warmupIterations: warm };
  const bench = new Bench({ ...exactly, throws: true, retainSamples: true }).add('work', work);
  const [task] = await bench.run();
  if (task?.result.state !== 'completed') throw new Error('The work was not timed to its end');
  return task.result.latency.p50;
}
