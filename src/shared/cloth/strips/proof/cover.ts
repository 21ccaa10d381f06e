import type { Column } from '../basis.ts';

/** "Cut every kind at least so often from these strips, as little length as can be": a whole-number programme. */
export interface Cover {
  readonly columns: readonly Column[];
  readonly demand: readonly number[];
  /** Only plans no longer than this are of use. */
  readonly most: number;
  /** Plan lengths are whole multiples of this; 0 when nothing is known of them. */
  readonly step: number;
}

/** What a solver found out about a cover. */
export interface CoverAnswer {
  /** How often each column is cut in the best plan found; null when none was found. */
  readonly times: readonly number[] | null;
  /** No plan from these columns is shorter; infinite when there is no plan at all that is of use. */
  readonly bound: number;
}

/**
 * Solves a cover, or stops when the time is over with what it has: a solver of whole-number programmes, handed in from
 * outside, because the core carries none.
 */
export type CoverSolver = (cover: Cover, seconds: number) => CoverAnswer;
