import { build } from './build.ts';
import type { Generated } from './columns.ts';
import type { Packed } from './kinds.ts';
import { type Left, type Problem, stripOf, takeOff } from './problem.ts';

/**
 * A plan from strips that would be cut a fractional number of times: each is cut the whole number below, and what is left
 * is built piece by piece. Only where the grid is exact: elsewhere such a strip might not fit the cloth.
 * @param extra strips whose fraction is at least this are cut once more, largest fraction first, while the counts allow
 */
export function roundDown(
  problem: Problem,
  generated: Generated,
  worth: readonly number[],
  extra: number,
): { strips: readonly Packed[]; work: number } {
  const left: Left = problem.kinds.map((kind) => kind.count);
  const strips: Packed[] = [];
  const cut = (counts: Int32Array, most: number) => {
    const times = takeOff(problem, left, counts, most);
    if (times > 0) strips.push(stripOf(problem, counts, times));
  };
  for (const { counts, times } of generated.strips) cut(counts, wholeOf(times));
  const rests = generated.strips.map(({ counts, times }) => ({ counts, fraction: times - wholeOf(times) }));
  rests.sort((a, b) => b.fraction - a.fraction);
  for (const { counts, fraction } of rests) if (fraction >= extra) cut(counts, 1);
  const rest = build(problem, worth, left);
  return { strips: gathered([...strips, ...rest.strips]), work: rest.work };
}

/** The whole number below, but for what floating point has lost. */
function wholeOf(times: number): number {
  return Math.floor(times + 1e-7);
}

/** The same strip cut in two places of the plan is one strip cut more often. */
export function gathered(strips: readonly Packed[]): readonly Packed[] {
  const found = new Map<string, Packed>();
  for (const strip of strips) {
    const name = strip.laid.map(({ lie, count }) => `${lie.kind}${lie.turned ? 't' : ''}×${count}`).join(' ');
    const before = found.get(name);
    found.set(name, before === undefined ? strip : { ...before, times: before.times + strip.times });
  }
  return [...found.values()];
}
