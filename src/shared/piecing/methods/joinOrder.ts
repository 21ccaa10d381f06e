import type { Part, Work } from '../allowance/work.ts';
import { patchesOf, type SeamJoin } from '../seamTree.ts';
import { isRoundInside } from './curvedJoin.ts';

/** What is there first at a join, and what is added to it. */
export interface JoinOrder {
  readonly first: Part;
  readonly added: Part;
}

/** The larger part is there first; of two equal ones the first of the tree. */
export function orderOf({ parts: [one, other] }: SeamJoin): JoinOrder {
  const [a, b] = [new Set(patchesOf(one)), new Set(patchesOf(other))];
  return a.size >= b.size ? { first: a, added: b } : { first: b, added: a };
}

/** The part a join is pressed to: what was added, but on a curve never the part that is round outside. */
export function pressedTo(work: Work, join: SeamJoin): Part {
  const { first, added } = orderOf(join);
  return join.sewn === 'curved' && isRoundInside(work, first, added) ? first : added;
}
