import { afterTurn, type Box, type Turn, undoTurn } from '../../drawing/turn.ts';
import { shapeCensus } from '../census.ts';
import type { LooseLeaf } from '../sub.ts';
import { mapFour } from '../tree.ts';
import { type Cost, LOG, partCost, sum, total, unitCost } from './cost.ts';
import { cutsOf, endsOf, equalCuts, partBetween, partsBetween } from './cuts.ts';
import { boxOf, type Field } from './field.ts';
import type { Along, Region } from './fieldPatch.ts';
import { type Form, type Forms, formsOf } from './form.ts';
import { piecedLeaf } from './pieced.ts';
import type { Pins } from './pins.ts';
import { type BoxOnSide, cheapest, type Plan, type Plans, turnPlans } from './plan.ts';
import { recognise } from './recognise.ts';
import { type RegionRing, ringsIn } from './ringAbout.ts';
import { cheapestWay, type Stretch, stretchCosts } from './stretches.ts';

/** Larger parts that reach over a cut are only looked for where they are equal: it is small parts that are units. */
const MOST_IN_A_STRETCH = 64;

/** What is known of one rectangle. */
interface Known {
  readonly plans: Plans;
  readonly form: Form;
  readonly best: Plan | null;
  /** As a part of a row it is not itself a row in the same direction. */
  readonly inRow: Readonly<Record<Along, InRow | null>>;
}

/** The cheapest plan of a rectangle that is a part of a row, and what it costs there. */
interface InRow extends Stretch {
  readonly plan: Plan;
}

/** What was found for the first rectangle of a likeness, for all that look like it. */
interface Home {
  readonly plans: Plans;
  readonly turn: Turn;
  readonly box: Box;
}

/**
 * The search for the cheapest way to sew a drawing from rectangles. Every rectangle that cuts from edge to edge can lead to
 * is looked at once; rectangles that look alike, turned or mirrored, share what was found.
 */
export class Search {
  readonly field: Field;
  readonly pins: Pins;
  readonly #forms: Forms;
  /** More than there are lines either way: a rectangle's four lines make one number. */
  readonly #size: number;
  readonly #known = new Map<number, Known>();
  readonly #homes = new Map<number, Home>();
  readonly #units = new Map<number, LooseLeaf>();

  constructor(field: Field, pins: Pins) {
    this.field = field;
    this.pins = pins;
    this.#forms = formsOf(field);
    this.#size = Math.max(field.whole.right, field.whole.bottom) + 1;
  }

  /** The plans for a rectangle that no patch sticks out of. */
  plans(region: Region): Plans {
    return this.#of(region).plans;
  }

  /** The cheapest of a rectangle's plans; as a part of a row it is not itself a row in the same direction. */
  best(region: Region, within?: Along): Plan | null {
    const known = this.#of(region);
    return within === undefined ? known.best : (known.inRow[within]?.plan ?? null);
  }

  /** The cheapest way to make the core of rounds: anything but more rounds. */
  core(region: Region): Plan | null {
    const { across, down, other } = this.plans(region);
    return cheapest([other, down, across]);
  }

  /** The rectangle as one unit, of the trade if it is one. */
  unit(region: Region): LooseLeaf {
    const key = this.#key(region);
    const known = this.#units.get(key);
    if (known !== undefined) return known;
    const patches = this.field.inside(region);
    const trade = this.pins.part(region) ? null : recognise(this.field, region, patches);
    const leaf = trade ?? piecedLeaf(this.field, region, patches, this.pins.seams);
    const method = this.pins.unit(region)?.method;
    const made = method === undefined ? leaf : { ...leaf, shape: { ...leaf.shape, method } };
    this.#units.set(key, made);
    return made;
  }

  #key({ left, top, right, bottom }: Region): number {
    return ((left * this.#size + top) * this.#size + right) * this.#size + bottom;
  }

  #of(region: Region): Known {
    const key = this.#key(region);
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const form = this.#forms.of(region, this.field.inside(region));
    const plans = this.#alike(region, form);
    const { across, down, rounds, other } = plans;
    const part = (plan: Plan | null): InRow | null => {
      return plan === null ? null : { plan, cost: plan.cost, handed: form.handed };
    };
    const [inAcross, inDown] = [cheapest([other, rounds, down]), cheapest([other, rounds, across])];
    const inRow = { across: part(inAcross), down: part(inDown) };
    const found = { plans, form, best: cheapest([inAcross, across]), inRow };
    this.#known.set(key, found);
    return found;
  }

  /** What was found for the first rectangle of this likeness, brought to how this one lies. */
  #alike(region: Region, form: Form): Plans {
    if (this.pins.touch(region)) return this.#solve(region);
    const home = this.#homes.get(form.likeness);
    if (home !== undefined) {
      const { width, height } = home.box;
      return turnPlans(home.plans, afterTurn(home.turn, undoTurn(form.turn)), width, height);
    }
    const plans = this.#solve(region);
    this.#homes.set(form.likeness, { plans, turn: form.turn, box: boxOf(this.field, region) });
    return plans;
  }

  #solve(region: Region): Plans {
    if (this.pins.unit(region) !== null || this.field.count(region) === 1) {
      return { across: null, down: null, rounds: null, other: this.#unitPlan(region) };
    }
    const forced = this.pins.forced(region);
    if (forced !== null) return this.#forcedPlans(region, forced.along, forced.line);
    const [uprights, levels] = [
      cutsOf(this.field, region, 'across', this.pins),
      cutsOf(this.field, region, 'down', this.pins),
    ];
    const across = this.#rowPlan(region, 'across', uprights);
    const down = this.#rowPlan(region, 'down', levels);
    const rounds = this.#roundsPlan(region, uprights, levels);
    const unit = this.#isTradeUnit(region) ? this.#unitPlan(region) : null;
    if (across !== null || down !== null || unit !== null) return { across, down, rounds, other: unit };
    return { across, down, rounds, other: this.#uncutPlan(region) };
  }

  /** No upright or level seam crosses it: a ring, unless slanting seams alone can sew it. */
  #uncutPlan(region: Region): Plan {
    const ring = this.#ringPlan(region);
    const slanted = this.field.inside(region).some((patch) => this.field.patches[patch]?.isRectangle === false);
    if (ring !== null && !slanted) return ring;
    const { partial, setIn } = shapeCensus(this.unit(region).shape);
    return ring === null || partial + setIn === 0 ? this.#unitPlan(region) : ring;
  }

  #isTradeUnit(region: Region): boolean {
    if (this.pins.part(region)) return false;
    const leaf = recognise(this.field, region, this.field.inside(region));
    if (leaf !== null) this.#units.set(this.#key(region), leaf);
    return leaf !== null;
  }

  #unitPlan(region: Region): Plan {
    const { shape, patches } = this.unit(region);
    return { decide: () => UNIT, cost: unitCost(shape, patches.length) };
  }

  /** Both sides of the pinned seam are made first, whichever way their own seams run. */
  #forcedPlans(region: Region, along: Along, line: number): Plans {
    const [start, end] = endsOf(region, along);
    const parts = partsBetween(region, along, [start, line, end]);
    const cost = this.#costOf('row', parts);
    const plan = cost === null ? null : this.#row(region, along, parts, cost, { free: true });
    const none = { across: null, down: null, rounds: null, other: null };
    return along === 'across' ? { ...none, across: plan } : { ...none, down: plan };
  }

  /** The cheapest row: cut at every line, at the cheapest lines, or into parts that are alike. */
  #rowPlan(region: Region, along: Along, cuts: readonly number[]): Plan | null {
    if (cuts.length === 0) return null;
    const [start, end] = endsOf(region, along);
    const choices = [cuts, ...equalCuts(this.field, region, along, cuts)];
    if (cuts.length > 1) choices.push(...this.#cheapestCuts(region, along, [start, ...cuts, end]));
    // What was chosen in one way is often what was chosen in another.
    const different = choices.filter((lines, i) => choices.findIndex((other) => isSame(other, lines)) === i);
    const rows = different.map((lines) => {
      const parts = partsBetween(region, along, [start, ...lines, end]);
      const cost = this.#costOf('row', parts, along);
      return cost === null ? null : this.#row(region, along, parts, cost);
    });
    return cheapest(rows);
  }

  /**
   * Of all ways to choose among the lines, the one whose parts cost least when each is made by itself, and the one whose
   * parts cost least when lessons are shared with every other part of the row that could be made alike.
   */
  #cheapestCuts(region: Region, along: Along, lines: readonly number[]): readonly (readonly number[])[] {
    const stretches: (Stretch | null)[] = [];
    for (let j = 1; j < lines.length; j += 1) {
      for (let i = 0; i < j; i += 1) {
        const isWhole = i === 0 && j === lines.length - 1;
        stretches.push(isWhole ? null : this.#stretch(region, along, lines[i] as number, lines[j] as number, j - i));
      }
    }
    const { alone, shared } = stretchCosts(stretches);
    const ways = [cheapestWay(lines.length, alone), cheapestWay(lines.length, shared)];
    // With pins there may be no way at all.
    return ways.filter((way) => way.length > 0).map((way) => way.map((place) => lines[place] as number));
  }

  /** The part of a row between two lines; null when there is none, or it is too large to reach over a cut. */
  #stretch(region: Region, along: Along, start: number, end: number, steps: number): Stretch | null {
    const part = partBetween(region, along, start, end);
    if (steps > 1 && this.field.count(part) > MOST_IN_A_STRETCH) return null;
    return this.#of(part).inRow[along];
  }

  #row(region: Region, along: Along, parts: readonly Region[], cost: Cost, free: { readonly free?: true } = {}): Plan {
    return {
      cost,
      decide: () => ({ kind: 'row', along, parts: parts.map((part) => this.#boxIn(region, part)), ...free }),
    };
  }

  /**
   * What parts cost sewn together; those that are alike are learnt once. Null when any of them cannot be made.
   * @param within the direction of the row they are parts of, where a part must not be a row in the same direction
   */
  #costOf(kind: 'row' | 'ring', parts: readonly Region[], within?: Along): Cost | null {
    let { effort, lessons } = partCost(kind, parts.length);
    const learnt: number[] = [];
    for (const part of parts) {
      const { form, best, inRow } = this.#of(part);
      const cost = within === undefined ? best?.cost : inRow[within]?.cost;
      if (cost === undefined) return null;
      effort += cost.effort;
      if (learnt.includes(form.handed)) continue;
      lessons += cost.lessons;
      learnt.push(form.handed);
    }
    return { effort, lessons };
  }

  /** The box of a part from the top left corner of what it is part of. */
  #boxIn(region: Region, part: Region): Box {
    const [whole, box] = [boxOf(this.field, region), boxOf(this.field, part)];
    return { ...box, x: box.x - whole.x, y: box.y - whole.y };
  }

  /** A single patch along a whole side is a log; what is left is a core, or rounds about one. */
  #roundsPlan(region: Region, uprights: readonly number[], levels: readonly number[]): Plan | null {
    const { left, top, right, bottom } = region;
    const sides: readonly (readonly [BoxOnSide['side'], Region, Region])[] = [
      ...levels.slice(0, 1).map((line) => ['top', { ...region, bottom: line }, { ...region, top: line }] as const),
      ...uprights.slice(-1).map((line) => ['right', { ...region, left: line }, { ...region, right: line }] as const),
      ...levels.slice(-1).map((line) => ['bottom', { ...region, top: line }, { ...region, bottom: line }] as const),
      ...uprights
        .slice(0, 1)
        .map((line) => ['left', { left, top, right: line, bottom }, { left: line, top, right, bottom }] as const),
    ];
    return cheapest(
      sides.map(([side, log, rest]) => (this.field.count(log) === 1 ? this.#withLog(region, side, log, rest) : null)),
    );
  }

  #withLog(region: Region, side: BoxOnSide['side'], log: Region, rest: Region): Plan | null {
    const further = this.plans(rest).rounds;
    const core = this.core(rest);
    const about = core === null ? null : { cost: sum([core.cost, partCost('rounds', 1)]) };
    const isCore = about !== null && (further === null || total(about.cost) < total(further.cost) - 1e-9);
    const inner = isCore ? about : further;
    if (inner === null) return null;
    const { width, height } = boxOf(this.field, log);
    const own = unitCost({ kind: 'log', width, height, role: '' }, 1);
    const decide = () => {
      const last = { side, box: this.#boxIn(region, log) };
      return { kind: 'rounds', rest: this.#boxIn(region, rest), isCore, log: last } as const;
    };
    return { decide, cost: sum([inner.cost, own, LOG]) };
  }

  /** The cheapest ring that fills a rectangle which no seam crosses from edge to edge. */
  #ringPlan(region: Region): Plan | null {
    return cheapest(ringsIn(this.field, region).map((ring) => this.#ringOf(region, ring)));
  }

  #ringOf(region: Region, { core, arms }: RegionRing): Plan | null {
    const parts = [core, ...arms.map((arm) => arm.region)];
    const cost = this.#costOf('ring', parts);
    if (cost === null) return null;
    const decide = () => {
      const logs = mapFour(arms, ({ side, region: arm }) => ({ side, box: this.#boxIn(region, arm) }));
      return { kind: 'ring', core: this.#boxIn(region, core), logs } as const;
    };
    return { decide, cost };
  }
}

const UNIT = { kind: 'unit' } as const;

function isSame(a: readonly number[], b: readonly number[]): boolean {
  return a.length === b.length && a.every((line, i) => line === b[i]);
}
