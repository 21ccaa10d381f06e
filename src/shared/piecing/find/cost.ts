import type { SeamCensus } from '../census.ts';
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

/** Telling a row, a set of rounds, a ring: once for each that is different. */
export const ROW_LESSON = 1;
export const ROUNDS_LESSON = 2.5;
export const RING_LESSON = 4;

/** A partial seam, beyond the seam itself: it is sewn in two goes. */
const PARTIAL = 20;
const CURVED = 30;
const SET_IN = 100;

/** What a ring's own seams cost: three full ones and the partial one. */
export const RING_EFFORT = 4 * SEAM + PARTIAL;

/** Making one unit and learning it. Its patches are handled one by one unless the trade makes it from larger pieces. */
export function unitCost(shape: Shape, patches: number, census: SeamCensus): Cost {
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
      return { effort: 0.5 * patches + seamEffort(census), lessons: 4 + 0.5 * patches };
    default:
      return { effort: 0.5 * patches, lessons: 1.5 };
  }
}

/** The seams inside a unit. */
function seamEffort({ full, partial, setIn, curved }: SeamCensus): number {
  return SEAM * (full + partial + setIn + curved) + PARTIAL * partial + SET_IN * setIn + CURVED * curved;
}

/** Effort and lessons together. */
export function total({ effort, lessons }: Cost): number {
  return effort + lessons;
}

/** One thing after another. */
export function sum(costs: readonly Cost[]): Cost {
  return costs.reduce((a, b) => ({ effort: a.effort + b.effort, lessons: a.lessons + b.lessons }), NOTHING);
}

const NOTHING: Cost = { effort: 0, lessons: 0 };
