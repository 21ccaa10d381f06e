import type { Inches } from '../../../measure/inches.ts';
import type { Column } from '../basis.ts';
import { commonStep } from '../grid.ts';
import type { Kind, Packed } from '../kinds.ts';
import { answer, ask, heightsOf, planLive, type StripPlan } from '../planStrips.ts';
import { type Problem, stripOf } from '../problem.ts';
import { gathered } from '../rounding.ts';
import { Search } from '../search.ts';
import { nextSum } from '../sums.ts';
import type { Cover, CoverSolver } from './cover.ts';
import { COURSES, dive } from './dive.ts';
import { everyStrip } from './everyStrip.ts';
import { type Level, levelsOf } from './levels.ts';
import { type Relaxed, relax } from './relax.ts';
import { looseProblem, tightProblem } from './scale.ts';

/** What a proof works with. */
export interface ProofTools {
  readonly solve: CoverSolver;
  /** Seconds that may still be spent; asked often. Nought or less stops the search with what it has. */
  readonly secondsLeft: () => number;
  /** Told whenever the plan or the bound is better. */
  readonly tell?: (now: Nearer) => void;
}

/** How far a proof is. */
export interface Nearer {
  readonly length: Inches;
  /** No plan is shorter. */
  readonly bound: Inches;
  /** The plan there is now. */
  plan(): StripPlan;
}

/** Strips listed for one cover: few first, because a good plan found early makes the full list shorter. */
const LISTS: readonly number[] = [1_500, 8_000, 40_000];
/** A cover that cannot be the last may take this part of the time left. */
const SHARE = 0.35;
/** What floating point may do to a length in a solver: less than the house's tolerance. */
const SLIGHT = 5e-6;
/** How finely the reach of a list is found. */
const HALVINGS = 12;
/** Dives may take this part of the time. */
const DIVING = 0.2;
/** More different pieces than this are only planned live. */
const MOST_KINDS = 600;

/**
 * A plan of strips that is proven to be the shortest, or as near to that as the time allows: the live plan, then the linear programme by
 * column generation, a plan by diving into it, and at last every strip that a shorter plan could use, from which a solver
 * of whole-number programmes takes the best or shows that there is none.
 * @param width usable width of the cloth, inches
 * @throws RangeError when a piece is wider than the cloth however it lies
 */
export function proveStrips(kinds: readonly Kind[], width: Inches, tools: ProofTools): StripPlan {
  const asked = ask(kinds, width);
  const search = new Search();
  const { problem } = asked;
  if (problem.kinds.length > 0) {
    planLive(problem, search);
    const plan = () => answer(asked, search);
    if (!search.proven && problem.kinds.length <= MOST_KINDS) new Proof(problem, search, tools, plan).run();
  }
  return answer(asked, search);
}

class Proof {
  private readonly problem: Problem;
  private readonly levels: readonly Level[];
  private readonly heights: readonly Inches[];
  private readonly step: number;
  private readonly search: Search;
  private readonly tools: ProofTools;
  private readonly more: () => boolean;
  private readonly plan: Nearer['plan'];

  constructor(problem: Problem, search: Search, tools: ProofTools, plan: Nearer['plan']) {
    this.plan = plan;
    this.problem = looseProblem(problem.kinds, problem.width);
    this.levels = levelsOf(this.problem);
    this.heights = heightsOf(problem);
    this.step = commonStep(this.heights) ?? 0;
    this.search = search;
    this.tools = tools;
    this.more = () => tools.secondsLeft() > 0;
  }

  run(): void {
    this.tellNow();
    const relaxed = relax(this.problem, this.levels, [], this.more);
    this.raise(relaxed.bound * (1 - 1e-9));
    if (this.search.proven) return;
    this.plunge(relaxed);
    for (const longest of LISTS) {
      if (this.search.proven || !this.more() || !relaxed.solved) return;
      if (this.cover(relaxed, longest)) return;
    }
  }

  /** A plan by diving: on a grid on which all that fits the grid fits the cloth. */
  private plunge(relaxed: Relaxed): void {
    const exact = this.problem.grid.exact;
    const tight = exact ? this.problem : tightProblem(this.problem.kinds, this.problem.width);
    const own = exact ? relaxed : relax(tight, levelsOf(tight), [], this.more);
    const until = this.tools.secondsLeft() * (1 - DIVING);
    for (const course of COURSES) {
      this.offer(dive(tight, own, course, this.more));
      if (this.search.proven || this.tools.secondsLeft() < until) return;
    }
  }

  /**
   * Lists the strips that a shorter plan can use, nearest to the linear programme first, and takes the best plan from them.
   * @param longest how many strips may be listed
   * @returns whether these were all
   */
  private cover(relaxed: Relaxed, longest: number): boolean {
    const most = this.search.length - (this.step > 0 ? this.step : 2 * SLIGHT);
    const { columns, reach } = this.list(relaxed, most - relaxed.bound, longest);
    const all = reach >= most - relaxed.bound;
    const demand = this.problem.kinds.map((kind) => kind.count);
    const cover: Cover = { columns, demand, most: most + SLIGHT, step: this.step };
    const seconds = this.tools.secondsLeft() * (all ? 1 : SHARE);
    const none = { times: null, bound: Number.POSITIVE_INFINITY };
    const found = columns.length === 0 ? none : this.tools.solve(cover, seconds);
    if (found.times !== null) this.offer(planOf(this.problem, cover, found.times));
    // A plan that uses any other strip is longer than the programme's bound and the reach together.
    const beyond = all ? Number.POSITIVE_INFINITY : relaxed.bound + reach;
    const bound = Math.min(found.bound, beyond);
    this.raise(bound > cover.most ? this.search.length : bound - SLIGHT);
    return all;
  }

  /** The strips that are above their worth by no more than `gap`, or if these are too many, by as much as may be. */
  private list(relaxed: Relaxed, gap: number, longest: number): Listed {
    const upTo = (reach: number) => everyStrip(this.problem, this.levels, relaxed.worth, reach, longest);
    const every = upTo(gap);
    if (every !== null) return { columns: every, reach: gap };
    let best: Listed = { columns: cheapest(relaxed, longest), reach: 0 };
    let [low, high] = [0, gap];
    for (let round = 0; round < HALVINGS && this.more(); round++) {
      const middle = (low + high) / 2;
      const columns = upTo(middle);
      if (columns === null) high = middle;
      else [low, best] = [middle, { columns, reach: middle }];
    }
    return best;
  }

  private offer(strips: readonly Packed[] | null): void {
    if (strips === null) return;
    const before = this.search.length;
    this.search.offer(gathered(strips));
    if (this.search.length < before) this.tellNow();
  }

  private raise(bound: Inches): void {
    const before = this.search.bound;
    if (bound <= before) return;
    this.search.raise(Math.min(nextSum(bound, this.heights), this.search.length));
    if (this.search.bound > before) this.tellNow();
  }

  private tellNow(): void {
    this.tools.tell?.({ length: this.search.length, bound: this.search.bound, plan: this.plan });
  }
}

interface Listed {
  readonly columns: Cover['columns'];
  /** Inches above their worth up to which all strips are listed. */
  readonly reach: number;
}

/** Of the strips that were generated, those least above their worth: something to plan with when there are too many like them. */
function cheapest({ columns, worth }: Relaxed, most: number): readonly Column[] {
  const above = columns.map((column) => ({
    column,
    above: column.cost - column.each.reduce((sum, n, kind) => sum + n * (worth[kind] as number), 0),
  }));
  above.sort((a, b) => a.above - b.above);
  return above.slice(0, most).map(({ column }) => column);
}

/** The plan of a cover, without the pieces that nobody wants. */
function planOf(problem: Problem, { columns, demand }: Cover, times: readonly number[]): readonly Packed[] {
  const left = [...demand];
  const strips: Packed[] = [];
  columns.forEach((column, index) => {
    for (let cut = 0; cut < (times[index] as number); cut++) {
      const counts = Int32Array.from(column.counts, (n, lie) => {
        const kind = (problem.lies[lie] as { kind: number }).kind;
        const kept = Math.min(n, left[kind] as number);
        left[kind] = (left[kind] as number) - kept;
        return kept;
      });
      if (counts.some((n) => n > 0)) strips.push(stripOf(problem, counts, 1));
    }
  });
  return strips;
}
