import type { Point } from '../drawing/turn.ts';
import { longer, same } from '../measure/inches.ts';
import type { SeamEnd } from './ends.ts';

/**
 * Points to match, each counted once: its seams nest when they lie to opposite sides and stack when they lie to the same side. Where
 * either lies open, or a point has allowance to both sides, they do neither.
 */
export interface Meetings {
  nests: number;
  stacks: number;
  open: number;
  /** Where seams stack. */
  readonly stacked: Point[];
}

/** Nothing met yet. */
export function noMeetings(): Meetings {
  return { nests: 0, stacks: 0, open: 0, stacked: [] };
}

/** How many points there are to match. */
export function pointsIn({ nests, stacks, open }: Pick<Meetings, 'nests' | 'stacks' | 'open'>): number {
  return nests + stacks + open;
}

/**
 * Counts the seams that meet where two edges are sewn together. Both lists run upwards.
 * @param spot the place of a point that lies so far along the edge
 */
export function meet(a: readonly SeamEnd[], b: readonly SeamEnd[], spot: (at: number) => Point, into: Meetings): void {
  let j = 0;
  for (const end of a) {
    while (j < b.length && longer(end.at, (b[j] as SeamEnd).at)) j += 1;
    const other = b[j];
    if (other === undefined || !same(end.at, other.at)) continue;
    if (end.press === 'open' || other.press === 'open') into.open += 1;
    else if (end.press !== other.press) into.nests += 1;
    else {
      into.stacks += 1;
      into.stacked.push(spot(end.at));
    }
  }
}

/** Adds what was counted elsewhere. */
export function addMeetings(into: Meetings, { nests, stacks, open, stacked }: Readonly<Meetings>): void {
  into.nests += nests;
  into.stacks += stacks;
  into.open += open;
  into.stacked.push(...stacked);
}
