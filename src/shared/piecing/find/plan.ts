import { type Box, type Turn, turnBox } from '../../drawing/turn.ts';
import type { Side } from '../../recipe/schema.ts';
import { turnSide } from '../sub.ts';
import { mapFour } from '../tree.ts';
import { type Cost, total } from './cost.ts';
import type { Along } from './fieldPatch.ts';

/**
 * What the search decides for one rectangle. Boxes of what it is made of are in grid units from the rectangle's own top left
 * corner, so that the decision serves every rectangle that looks alike.
 */
type Decision =
  /** One unit: of the trade, or pieced by seams at any angle. */
  | { readonly kind: 'unit' }
  /** Parts side by side; across: left to right. Free: a part may itself be a row in the same direction. */
  | {
      readonly kind: 'row';
      readonly along: Along;
      readonly parts: readonly Box[];
      readonly free?: true;
    }
  /** A log sewn to one side of the rest, which is the core, or rounds about one. */
  | { readonly kind: 'rounds'; readonly rest: Box; readonly isCore: boolean; readonly log: BoxOnSide }
  /** Four arms about a core, in sewing order. */
  | { readonly kind: 'ring'; readonly core: Box; readonly logs: Four<BoxOnSide> };

type Four<T> = readonly [T, T, T, T];

export interface BoxOnSide {
  readonly side: Side;
  readonly box: Box;
}

/** What a way to sew a rectangle costs; what was decided is only said when asked, because few plans are ever laid out. */
export interface Plan {
  readonly cost: Cost;
  decide(): Decision;
}

/** The cheapest plans of one rectangle by the way its last seams run; those that there are none of are null. */
export interface Plans {
  /** Its last seams run up and down. */
  readonly across: Plan | null;
  /** Its last seams run from side to side. */
  readonly down: Plan | null;
  /** Its last seam sews on a log. */
  readonly rounds: Plan | null;
  /** A single unit, or a ring. */
  readonly other: Plan | null;
}

/** The decision for the same rectangle turned. */
function turnDecision(decision: Decision, turn: Turn, width: number, height: number): Decision {
  const box = (one: Box) => turnBox(one, turn, width, height);
  if (decision.kind === 'unit') return decision;
  if (decision.kind === 'row') {
    const along = turn.quarters % 2 === 0 ? decision.along : decision.along === 'across' ? 'down' : 'across';
    const start = ({ x, y }: Box) => (along === 'across' ? x : y);
    return { ...decision, along, parts: decision.parts.map(box).sort((a, b) => start(a) - start(b)) };
  }
  const log = (one: BoxOnSide): BoxOnSide => ({ side: turnSide(one.side, turn), box: box(one.box) });
  if (decision.kind === 'rounds') return { ...decision, rest: box(decision.rest), log: log(decision.log) };
  return { kind: 'ring', core: box(decision.core), logs: mapFour(decision.logs, log) };
}

/** The plans for the same rectangle turned: turned by a quarter, what ran across runs down. */
export function turnPlans(plans: Plans, turn: Turn, width: number, height: number): Plans {
  const turned = (plan: Plan | null): Plan | null =>
    plan === null ? null : { cost: plan.cost, decide: () => turnDecision(plan.decide(), turn, width, height) };
  const [across, down] = [turned(plans.across), turned(plans.down)];
  const rest = { rounds: turned(plans.rounds), other: turned(plans.other) };
  return turn.quarters % 2 === 0 ? { across, down, ...rest } : { across: down, down: across, ...rest };
}

/** The first of the cheapest; null when there is none. */
export function cheapest(plans: readonly (Plan | null)[]): Plan | null {
  let best: Plan | null = null;
  for (const plan of plans) {
    if (plan !== null && (best === null || total(plan.cost) < total(best.cost) - 1e-9)) best = plan;
  }
  return best;
}
