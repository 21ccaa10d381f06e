import { keyed } from '../distinct.ts';
import { joinsOf, loosePatchesOf, type SeamKind, type SeamTree, unitsOf } from '../seamTree.ts';
import type { Shape } from '../shape.ts';

/**
 * What a plan costs: the one place that says which of two ways to sew a block is the better. There are two kinds of cost.
 * Effort is paid for every unit and every seam of the block. Lessons are paid once for every different thing: a distinct
 * unit, a distinct part. So the cheapest plan has few distinct units, units the trade knows, long straight rows (few parts
 * inside parts), and equal parts that can be made one after another. Partial, set-in and curved seams cost so much that none
 * is taken where a plan without it exists.
 *
 * The numbers are the house's own judgement, in seams: a straight seam costs 1.
 */
export interface Cost {
  readonly effort: number;
  readonly lessons: number;
}

export const SEAM = 1;

/** A part to learn: the more things it is made of, the more there is to lay out in the right place. */
const THING_LESSON = 0.25;
const LESSONS = { row: 0, rounds: 0.5, ring: 3 } as const;

/** A partial seam, beyond the seam itself: it is sewn in two goes. */
const PARTIAL = 20;
const CURVED = 30;
const SET_IN = 100;

/** What it costs to sew so many things together into one part, beyond the things themselves. */
export function partCost(kind: keyof typeof LESSONS, things: number): Cost {
  const effort = SEAM * (things - 1) + (kind === 'ring' ? PARTIAL : 0);
  return { effort, lessons: LESSONS[kind] + THING_LESSON * things };
}

/** What one more log costs, beyond the log itself. */
export const LOG: Cost = { effort: SEAM, lessons: THING_LESSON };

/** Making one unit and learning it. Its patches are handled one by one unless the trade makes it from larger pieces. */
export function unitCost(shape: Shape, patches: number): Cost {
  switch (shape.kind) {
    case 'plain':
    case 'log':
      return { effort: 0.5, lessons: 0.5 };
    case 'rails':
    case 'four-patch':
    case 'nine-patch':
    case 'checkerboard':
      // From strip sets: about half the seams of sewing square by square.
      return { effort: 0.5 + 0.5 * (patches - 1), lessons: 1.5 };
    case 'quarter-circle':
      return { effort: 1 + CURVED, lessons: 4 };
    case 'pieced':
      return treeCost(shape.seams);
    default:
      return { effort: 0.5 * patches, lessons: 1.5 };
  }
}

/**
 * A unit that is no unit of the trade: the patches and the units of the trade it is sewn from are laid out one by one. Each of
 * those units is made like any other, and learnt once.
 */
export function treeCost(tree: SeamTree): Cost {
  const loose = loosePatchesOf(tree).length;
  const inside = unitsOf(tree);
  const seams = joinsOf(tree).reduce((all, { sewn }) => all + SEAM + EXTRA[sewn], 0);
  const own: Cost = { effort: 0.5 * loose + seams, lessons: 4 + 0.5 * (loose + inside.length) };
  const learnt = new Set<string>();
  const made = inside.map(({ shape, patches }): Cost => {
    const cost = unitCost(shape, patches.length);
    const { key } = keyed(shape);
    const known = learnt.has(key);
    learnt.add(key);
    return known ? { ...cost, lessons: 0 } : cost;
  });
  return sum([own, ...made]);
}

/** What a seam costs beyond a straight one from edge to edge. */
const EXTRA: Readonly<Record<SeamKind, number>> = { full: 0, partial: PARTIAL, 'set-in': SET_IN, curved: CURVED };

/** Effort and lessons together. */
export function total({ effort, lessons }: Cost): number {
  return effort + lessons;
}

/** One thing after another. */
export function sum(costs: readonly Cost[]): Cost {
  let [effort, lessons] = [0, 0];
  for (const cost of costs) {
    effort += cost.effort;
    lessons += cost.lessons;
  }
  return { effort, lessons };
}
