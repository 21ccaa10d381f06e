import type { Inches } from '../../../measure/inches.ts';
import type { Kind } from '../kinds.ts';
import { type Problem, problemOf } from '../problem.ts';

/** Marks across the cloth that a proof still counts one by one. */
const FINEST = 16_384;

/** A problem on a grid on which all that fits the cloth fits the grid: for bounds. The same as the tight one where it is exact. */
export function looseProblem(kinds: readonly Kind[], width: Inches): Problem {
  return problemOf(kinds, width, FINEST);
}

/** A problem on a grid on which all that fits the grid fits the cloth: for plans. */
export function tightProblem(kinds: readonly Kind[], width: Inches): Problem {
  const problem = looseProblem(kinds, width);
  return { ...problem, grid: { ...problem.grid, loose: problem.grid.widths } };
}
