import { longer } from '../../../measure/inches.ts';
import type { Column } from '../basis.ts';
import type { Kind, Lie } from '../kinds.ts';
import type { Problem } from '../problem.ts';
import { columnAt, type Level } from './levels.ts';

/**
 * Every strip that a plan at most `gap` longer than the linear programme's bound may use.
 *
 * Why these are enough: let y be the worth of the kinds, so that no strip is worth more than it is tall. A plan's length is the worth
 * of what it cuts and, for each strip, what its height is above its worth. What it cuts is worth no less than the bound, so in a plan
 * within the gap no strip is taller than its worth by more than the gap. And a plan may as well be made of full strips (that
 * nothing more fits beside) if more pieces than are wanted may be cut, so only full ones are listed, each at its lowest height.
 * @param gap inches
 * @param most how many strips may be listed
 * @returns null when there are more
 */
export function everyStrip(
  problem: Problem,
  levels: readonly Level[],
  worth: Float64Array,
  gap: number,
  most: number,
): readonly Column[] | null {
  const found: Column[] = [];
  for (let at = 0; at < levels.length; at++) {
    const level = levels[at] as Level;
    const search = new LevelSearch(problem, level, levels[at - 1] ?? null, worth, gap, most - found.length);
    if (!search.run()) return null;
    for (const each of search.found) found.push(columnAt(problem, level, each));
  }
  return found;
}

/** Lists the strips of one level, kind by kind, never going on where what is left cannot reach the worth. */
class LevelSearch {
  readonly found: Int32Array[] = [];
  private readonly problem: Problem;
  private readonly level: Level;
  private readonly below: Level | null;
  private readonly order: readonly number[];
  private readonly worth: Float64Array;
  private readonly least: number;
  private readonly most: number;
  private readonly reach: readonly Float64Array[];
  private readonly each: Int32Array;

  constructor(problem: Problem, level: Level, below: Level | null, worth: Float64Array, gap: number, most: number) {
    [this.problem, this.level, this.below, this.worth, this.most] = [problem, level, below, worth, most];
    const kinds = problem.kinds.map((_, kind) => kind).filter((kind) => (level.lies[kind] as number) >= 0);
    const dense = (kind: number) => (worth[kind] as number) / Math.max(1, level.widths[kind] as number);
    this.order = kinds.sort((a, b) => dense(b) - dense(a) || (level.widths[b] as number) - (level.widths[a] as number));
    this.least = level.height - gap - 1e-7 * Math.max(1, level.height);
    this.reach = reachOf(this.order, level, worth, problem);
    this.each = new Int32Array(problem.kinds.length);
  }

  run(): boolean {
    return this.from(0, this.problem.grid.capacity, 0);
  }

  private from(at: number, room: number, value: number): boolean {
    if (value + (this.reach[at]?.[room] ?? 0) < this.least) return true;
    const kind = this.order[at];
    if (kind === undefined) return this.take(room);
    const width = this.level.widths[kind] as number;
    const wanted = (this.problem.kinds[kind] as Kind).count;
    const fits = width === 0 ? wanted : Math.min(wanted, Math.floor(room / width));
    for (let many = fits; many >= 0; many--) {
      this.each[kind] = many;
      if (!this.from(at + 1, room - many * width, value + many * (this.worth[kind] as number))) return false;
    }
    this.each[kind] = 0;
    return true;
  }

  private take(room: number): boolean {
    if (!this.full(room) || this.fitsBelow()) return true;
    if (this.found.length >= this.most) return false;
    this.found.push(this.each.slice());
    return true;
  }

  /** Whether it fits the cloth and nothing that is wanted fits beside it. */
  private full(room: number): boolean {
    const { grid, kinds, lies, width } = this.problem;
    const spare = grid.exact ? room : width - this.trueWidth();
    if (!grid.exact && longer(0, spare)) return false;
    return !this.order.some((kind) => {
      if ((this.each[kind] as number) >= (kinds[kind] as Kind).count) return false;
      const lie = this.level.lies[kind] as number;
      return grid.exact ? (this.level.widths[kind] as number) <= spare : !longer((lies[lie] as Lie).width, spare);
    });
  }

  private trueWidth(): number {
    const { lies } = this.problem;
    return this.order.reduce(
      (sum, kind) => sum + (this.each[kind] as number) * (lies[this.level.lies[kind] as number] as Lie).width,
      0,
    );
  }

  /** Whether the same pieces make a strip of the next lower height: then it is listed there. */
  private fitsBelow(): boolean {
    const { below } = this;
    if (below === null) return false;
    let width = 0;
    for (const kind of this.order) {
      const many = this.each[kind] as number;
      if (many === 0) continue;
      if ((below.lies[kind] as number) < 0) return false;
      width += many * (below.widths[kind] as number);
    }
    // Where the grid is not exact it may be listed twice, which does no harm.
    return this.problem.grid.exact && width <= this.problem.grid.capacity;
  }
}

/** For each place in the order, the most that kinds from there on are worth in every width. */
function reachOf(
  order: readonly number[],
  level: Level,
  worth: Float64Array,
  { kinds, grid }: Problem,
): readonly Float64Array[] {
  const reach: Float64Array[] = new Array(order.length + 1);
  reach[order.length] = new Float64Array(grid.capacity + 1);
  for (let at = order.length - 1; at >= 0; at--) {
    const kind = order[at] as number;
    const next = Float64Array.from(reach[at + 1] as Float64Array);
    let left = (kinds[kind] as Kind).count;
    const width = level.widths[kind] as number;
    if (width > 0) left = Math.min(left, Math.floor(grid.capacity / width));
    for (let size = 1; left > 0; size *= 2) {
      const pieces = Math.min(size, left);
      left -= pieces;
      for (let room = grid.capacity; room >= pieces * width; room--) {
        const taken = (next[room - pieces * width] as number) + pieces * (worth[kind] as number);
        if (taken > (next[room] as number)) next[room] = taken;
      }
    }
    reach[at] = next;
  }
  return reach;
}
