import type { Cliff } from '../cloth/cliffs.ts';
import type { Pattern } from '../pattern/schema.ts';
import { cliffsIn } from './clothWays.ts';
import { type Recast, recastsFor } from './recasts.ts';
import type { WorkedOut, WorkedSize } from './workedOut.ts';
import { workOut } from './workOut.ts';

/** The pattern that was asked about last, because one question about it mostly follows another. */
let last: WorkedOut | null = null;

function workedFor(pattern: Pattern): WorkedOut {
  if (last?.pattern !== pattern) last = workOut(pattern);
  return last;
}

function ofSize<Answer>(
  pattern: Pattern,
  size: string,
  ask: (worked: WorkedOut, size: WorkedSize) => Answer[],
): Answer[] {
  const worked = workedFor(pattern);
  const one = worked.sizes.find((sized) => sized.size.id === size);
  return one === undefined ? [] : ask(worked, one);
}

/** What narrower and wider cloth takes in one size, by its id: for a thread that has only the pattern. */
export function cliffsOf(pattern: Pattern, size: string): readonly Cliff[] {
  return ofSize(pattern, size, (worked, one) => [...cliffsIn(worked, one)]);
}

/** Other bundles that would do for one size, by its id: for a thread that has only the pattern. */
export function recastsOf(pattern: Pattern, size: string): readonly Recast[] {
  return ofSize(pattern, size, (worked, one) => [...recastsFor(worked, one)]);
}
