import { type Choice, fill } from './fill.ts';
import type { Lie, Packed } from './kinds.ts';
import { type Left, type Problem, stripOf, takeOff } from './problem.ts';

/** What a strip is worth for its height, with how many of each lie it holds. */
interface Strip {
  readonly counts: Int32Array;
  readonly ratio: number;
}

/** A plan and what it cost to find. */
export interface Built {
  readonly strips: readonly Packed[];
  readonly work: number;
}

/**
 * Builds a plan strip by strip. Every piece has to lie somewhere, so the piece that is tallest at its lowest is laid first, and the
 * rest of its strip is filled with what is worth most (of what is no taller). When the piece may lie two ways, or
 * letting the strip be taller lets turned pieces in, the strip worth most for its height is taken. It is cut as often as
 * the counts allow.
 * @param worth what one piece of each kind is worth
 * @param left what is still to be cut of each kind
 */
export function build(problem: Problem, worth: readonly number[], left: Left): Built {
  const strips: Packed[] = [];
  let work = 0;
  for (let opener = hardest(problem, left); opener !== null; opener = hardest(problem, left)) {
    let best: Strip | null = null;
    for (const index of problem.liesOfKind[opener] ?? []) {
      const opened = openWith(problem, worth, left, index);
      work += opened.work;
      if (best === null || opened.strip.ratio > best.ratio + 1e-12) best = opened.strip;
    }
    const counts = (best as Strip).counts;
    const trimmed = withinLeft(problem, counts, left);
    const times = takeOff(problem, left, trimmed);
    strips.push(stripOf(problem, trimmed, times));
  }
  return { strips, work };
}

/** The kind, of those left, that is tallest when lying as low as it can; of equals the widest. */
function hardest(problem: Problem, left: Left): number | null {
  let found: { kind: number; lie: Lie } | null = null;
  for (let kind = 0; kind < left.length; kind++) {
    if ((left[kind] ?? 0) === 0) continue;
    const lie = problem.lies[problem.liesOfKind[kind]?.[0] ?? -1] as Lie;
    const harder =
      found === null ||
      lie.height > found.lie.height ||
      (lie.height === found.lie.height && lie.width > found.lie.width);
    if (harder) found = { kind, lie };
  }
  return found?.kind ?? null;
}

/** The strip worth most for its height among those that hold this lie and none taller than they must. */
function openWith(
  problem: Problem,
  worth: readonly number[],
  left: Left,
  index: number,
): { strip: Strip; work: number } {
  const { lies, grid } = problem;
  const opener = lies[index] as Lie;
  const choices = lies.map((lie, at): Choice => {
    const many = (left[lie.kind] ?? 0) - (lie.kind === opener.kind ? 1 : 0);
    return { width: grid.widths[at] as number, value: worth[lie.kind] as number, most: many };
  });
  const filling = fill(choices, grid.capacity - (grid.widths[index] as number));
  let last = -1;
  let ratio = 0;
  for (let at = 0; at < lies.length; at++) {
    const height = (lies[at] as Lie).height;
    if (height < opener.height || lies[at + 1]?.height === height) continue;
    const value = (filling.best(at) + (worth[opener.kind] as number)) / height;
    if (value > ratio + 1e-12) [last, ratio] = [at, value];
  }
  const counts = filling.counts(last);
  counts[index] = (counts[index] ?? 0) + 1;
  return { strip: { counts, ratio }, work: filling.work };
}

/** The fill counts a kind's two lies apart; together they may be more than is left. */
function withinLeft(problem: Problem, counts: Int32Array, left: Left): Int32Array {
  const room = [...left];
  return counts.map((count, index) => {
    const kind = (problem.lies[index] as Lie).kind;
    const kept = Math.min(count, room[kind] ?? 0);
    room[kind] = (room[kind] ?? 0) - kept;
    return kept;
  });
}
