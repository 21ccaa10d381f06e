import type { Column } from '../basis.ts';
import type { Packed } from '../kinds.ts';
import { type Problem, stripOf } from '../problem.ts';
import { columnAt, type Level, levelsOf } from './levels.ts';
import { type Relaxed, relax } from './relax.ts';
import { tightProblem } from './scale.ts';

/** How a dive goes. */
export interface Course {
  /** A strip whose share is at least this is cut; where none is, the one with the largest share. */
  readonly nearly: number;
  /** The steps at which not the likeliest strip is cut first but the next one. */
  readonly aside: readonly number[];
}

const NEARLY = [0.7, 1, 0.5, 0.85];
const ASIDE = [[], [0], [1], [2], [3], [0, 1], [4], [0, 2], [5], [1, 2], [6], [0, 3], [7], [8], [1, 3], [2, 3]];

/** Courses worth trying, one after another (limited discrepancy search: Harvey and Ginsberg, 1995). */
export const COURSES: readonly Course[] = ASIDE.flatMap((aside) => NEARLY.map((nearly) => ({ nearly, aside })));

/**
 * A plan by diving: strips that the linear programme cuts whole times are cut, then those it cuts most nearly one time more; what is
 * left is a smaller problem, and its linear programme is solved anew, until nothing is left.
 * @param problem on a grid on which all that fits the grid fits the cloth
 * @param relaxed the linear programme of `problem`, solved
 * @param course one of `COURSES`
 */
export function dive(
  problem: Problem,
  relaxed: Relaxed,
  course: Course,
  more: () => boolean,
): readonly Packed[] | null {
  const strips: Packed[] = [];
  let now: { problem: Problem; relaxed: Relaxed; names: readonly number[] } = {
    problem,
    relaxed,
    names: problem.kinds.map((_, kind) => kind),
  };
  for (let step = 0; now.problem.kinds.length > 0; step++) {
    const { left, cut } = fixed(now.problem, now.relaxed, course.nearly, course.aside.includes(step));
    for (const { column, times } of cut) strips.push(stripIn(problem, now.problem, now.names, column, times));
    const kept = left.flatMap((n, kind) => (n > 0 ? [kind] : []));
    if (kept.length === 0) break;
    if (!more()) return null;
    const next = tightProblem(
      kept.map((kind) => ({ ...(now.problem.kinds[kind] as Problem['kinds'][number]), count: left[kind] as number })),
      problem.width,
    );
    const levels = levelsOf(next);
    const known = translated(now.problem, now.relaxed.columns, next, levels, kept);
    now = {
      problem: next,
      relaxed: relax(next, levels, known, more),
      names: kept.map((kind) => now.names[kind] as number),
    };
  }
  return strips;
}

interface Cut {
  readonly column: Column;
  readonly times: number;
}

/** Which strips are cut now, and what of each kind is left. At least one strip is cut. */
function fixed(
  problem: Problem,
  { columns, times }: Relaxed,
  nearly: number,
  aside: boolean,
): { left: number[]; cut: readonly Cut[] } {
  const left = problem.kinds.map((kind) => kind.count);
  const cut: Cut[] = [];
  const shares = columns
    .map((column, index) => ({ column, share: times[index] as number }))
    .filter(({ share }) => share > 1e-6);
  for (const { column, share } of shares) take(cut, left, column, Math.floor(share + 1e-4), true);
  const parts = shares.map(({ column, share }) => ({ column, part: share + 1e-4 - Math.floor(share + 1e-4) }));
  parts.sort((a, b) => b.part - a.part);
  if (aside && parts.length > 1) parts.push(...parts.splice(0, 1));
  for (const { column, part } of parts) {
    if (part < nearly && cut.length > 0) break;
    take(cut, left, column, 1, cut.length > 0);
  }
  return { left, cut };
}

/** Cuts a strip so often, as far as its pieces are still wanted; `whole` asks that all of them are. */
function take(cut: Cut[], left: number[], column: Column, most: number, whole: boolean): void {
  for (let times = 0; times < most; times++) {
    const each = column.each.map((n, kind) => Math.min(n, left[kind] as number));
    if (whole && each.some((n, kind) => n < (column.each[kind] as number))) return;
    if (each.every((n) => n === 0)) return;
    const counts = column.counts;
    each.forEach((n, kind) => {
      left[kind] = (left[kind] as number) - n;
    });
    const last = cut.at(-1);
    if (last !== undefined && last.column.counts === counts && same(last.column.each, each))
      cut[cut.length - 1] = { column: last.column, times: last.times + 1 };
    else cut.push({ column: { ...column, each }, times: 1 });
  }
}

function same(a: ArrayLike<number>, b: ArrayLike<number>): boolean {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

/** A strip of a smaller problem as one of the first. */
function stripIn(first: Problem, now: Problem, names: readonly number[], column: Column, times: number): Packed {
  const counts = new Int32Array(first.lies.length);
  now.lies.forEach((lie, index) => {
    if ((column.counts[index] ?? 0) === 0) return;
    const kind = names[lie.kind] as number;
    const at = first.lies.findIndex((one) => one.kind === kind && one.turned === lie.turned);
    counts[at] = column.each[lie.kind] as number;
  });
  return stripOf(first, counts, times);
}

/** Strips of the larger problem with what the smaller still wants of them. */
function translated(
  before: Problem,
  columns: readonly Column[],
  next: Problem,
  levels: readonly Level[],
  kept: readonly number[],
): readonly Column[] {
  const seen = new Set<string>();
  return columns.flatMap((column) => {
    const each = kept.map((kind, place) =>
      Math.min(column.each[kind] as number, (next.kinds[place] as { count: number }).count),
    );
    if (each.every((n) => n === 0)) return [];
    const height = kept.reduce((tallest, kind, place) => {
      if (each[place] === 0) return tallest;
      const lie = before.lies.findIndex((one, index) => one.kind === kind && (column.counts[index] ?? 0) > 0);
      return Math.max(tallest, before.lies[lie]?.height ?? 0);
    }, 0);
    const level = levels.find((one) => one.height === height);
    const name = `${height} ${each.join(' ')}`;
    if (level === undefined || seen.has(name)) return [];
    seen.add(name);
    return [columnAt(next, level, each)];
  });
}
