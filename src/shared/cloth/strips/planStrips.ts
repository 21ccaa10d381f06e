import type { Inches } from '../../measure/inches.ts';
import { setAlone } from './alone.ts';
import { bestFit } from './bestFit.ts';
import { build } from './build.ts';
import { generate } from './columns.ts';
import { corrected } from './correct.ts';
import { type Kind, type Lie, lengthOf, type Packed } from './kinds.ts';
import { type Problem, problemOf } from './problem.ts';
import { gathered, roundDown } from './rounding.ts';
import { Search } from './search.ts';
import { staircase } from './staircase.ts';
import { nextSum } from './sums.ts';

/** A plan of strips, and the proof of how short a plan can be. */
export interface StripPlan {
  /** Tallest first. The kinds of their pieces are indices into what was asked for. */
  readonly strips: readonly Packed[];
  readonly length: Inches;
  /** No plan of strips across this cloth is shorter. */
  readonly bound: Inches;
  readonly proven: boolean;
}

/**
 * Basic operations a live plan may spend: under a millisecond for the few pieces of most fabrics and far less when a proof
 * comes early; a few milliseconds for scores of different pieces.
 */
const LIVE_EFFORT = { least: 200_000, most: 1_500_000, builds: 4 };

/** A problem this many times too large for the effort is only planned as by hand. */
const TOO_LARGE = 8;

/** About what it costs to build one plan. */
function costOfBuilding(problem: Problem): number {
  return problem.lies.length ** 2 * problem.grid.capacity;
}

function liveEffort(problem: Problem): number {
  const wanted = LIVE_EFFORT.builds * costOfBuilding(problem);
  return Math.min(LIVE_EFFORT.most, Math.max(LIVE_EFFORT.least, wanted));
}

/**
 * Cuts pieces from strips across the cloth, in as little length as it can: each strip is as tall as its tallest piece, pieces
 * stand side by side, lower ones are trimmed to height. Simple plans are tried first and the search ends as soon as a
 * plan is as short as the bound. The same question always gets the same plan.
 * @param width usable width of the cloth, inches
 * @param effort basic operations that may be spent; left out, what a live plan may
 * @throws RangeError when a piece is wider than the cloth however it lies
 */
export function planStrips(kinds: readonly Kind[], width: Inches, effort?: number): StripPlan {
  const asked = ask(kinds, width);
  const search = new Search();
  if (asked.problem.kinds.length > 0) planLive(asked.problem, search, effort);
  return answer(asked, search);
}

/** What is really to be planned: the pieces that do not take a strip each. */
export interface Asked {
  readonly alone: readonly Packed[];
  readonly problem: Problem;
  /** For each kind of the problem its place in what was asked for. */
  readonly rest: readonly number[];
}

/** @throws RangeError when a piece is wider than the cloth however it lies */
export function ask(kinds: readonly Kind[], width: Inches): Asked {
  const { alone, rest } = setAlone(kinds, width);
  const problem = problemOf(
    rest.map((kind) => kinds[kind] as Kind),
    width,
  );
  return { alone, problem, rest };
}

/** The best plan and bound of a search as an answer to what was asked for. */
export function answer({ alone, rest }: Asked, search: Search): StripPlan {
  const set = lengthOf(alone);
  const own = search.strips.map((strip) => ({
    ...strip,
    laid: strip.laid.map(({ lie, count }) => ({ lie: { ...lie, kind: rest[lie.kind] as number }, count })),
  }));
  const strips = [...alone, ...own].sort((a, b) => b.height - a.height || b.times - a.times);
  return { strips, length: set + search.length, bound: set + search.bound, proven: search.proven };
}

/** The live plan and bound of a problem that has pieces, into a search. */
export function planLive(problem: Problem, search: Search, effort = liveEffort(problem)): void {
  const heights = heightsOf(problem);
  const lowest = problem.liesOfKind.map((ways) => problem.lies[ways[0] as number] as Lie);
  search.offer(bestFit(problem, lowest));
  search.raise(nextSum(firstBound(problem), heights));
  if (search.proven || costOfBuilding(problem) > TOO_LARGE * effort) return;
  const areas = problem.kinds.map((kind) => kind.width * kind.height);
  search.offer(
    build(
      problem,
      areas,
      problem.kinds.map((kind) => kind.count),
    ).strips,
  );
  if (!search.proven) deeper(search, problem, heights, areas, effort);
}

/** Every height a strip may have, lowest first. */
export function heightsOf(problem: Problem): readonly Inches[] {
  return [...new Set(problem.lies.map((lie) => lie.height))];
}

function firstBound(problem: Problem): Inches {
  const area = problem.kinds.reduce((sum, kind) => sum + kind.width * kind.height * kind.count, 0);
  const lies = problem.lies.map((lie, index) => ({ lie, width: problem.grid.loose[index] as number }));
  return Math.max(area / problem.width, staircase(problem.kinds, lies, problem.grid.capacity));
}

/** Column generation for the bound, for what pieces are worth and for strips to round; then plans built by worth. */
function deeper(
  search: Search,
  problem: Problem,
  heights: readonly Inches[],
  areas: readonly number[],
  effort: number,
): void {
  const generated = generate(problem, effort / 2);
  // A hair's breadth off, for what floating point may have added.
  search.raise(nextSum(generated.bound * (1 - 1e-9), heights));
  if (search.proven) return;
  const worth = aboveNought(generated.worth, areas);
  if (problem.grid.exact) {
    for (const extra of [2, 0.5, 0]) search.offer(roundDown(problem, generated, worth, extra).strips);
  }
  corrected(problem, worth, areas, effort / 2, (strips) => {
    search.offer(gathered(strips));
    return search.proven;
  });
}

/** A piece that costs nothing at the margin is still worth laying where there is room. */
function aboveNought(worth: readonly number[], areas: readonly number[]): readonly number[] {
  const little = (1e-6 * Math.max(...worth)) / Math.max(...areas);
  return worth.map((price, kind) => Math.max(price, little * (areas[kind] ?? 0)));
}
