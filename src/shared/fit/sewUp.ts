import type { Box } from '../drawing/turn.ts';
import { type Inches, longer, same } from '../measure/inches.ts';
import type { Part, Ring, Rounds, Row } from '../piecing/piecing.ts';
import { aboutRing, type RingArm } from '../piecing/ring.ts';
import { type AnyLeaf, isLeaf } from '../piecing/tree.ts';
import type { Side } from '../recipe/schema.ts';
import type { Sewn, Stop } from './sewn.ts';

/** A seam whose two sides do not agree. */
export interface Misfit {
  /** 'length': the two edges differ in length. 'point': two seams that should meet do not. */
  readonly kind: 'length' | 'point';
  /** The part that is off, in the units of the tree. */
  readonly box: Box;
  /** Inches the part named by `box` is shorter (below zero: longer) than what it is sewn to, or the miss of the point. */
  readonly by: Inches;
  readonly side: Side;
}

/** Everything sewn together, with every disagreement on the way. */
export interface SewnUp {
  readonly sewn: Sewn;
  readonly misfits: readonly Misfit[];
  /** Points at which seams of both sides meet. */
  readonly points: number;
  /** Seams sewn at this level of the tree and below, leaves left out. */
  readonly seams: number;
}

interface Tally {
  misfits: Misfit[];
  points: number;
  seams: number;
}

/**
 * Sews a tree together on paper from the sizes that are printed for the maker, seam by seam, and compares the two sides
 * of every seam: their lengths, and the points at which seams of the design meet. It proves a block and a whole quilt alike.
 * @param measure what a leaf measures when it is made as printed
 */
export function sewUp<Leaf extends AnyLeaf>(part: Part<Leaf>, measure: (leaf: Leaf) => Sewn): SewnUp {
  const tally: Tally = { misfits: [], points: 0, seams: 0 };
  const sewn = sew(part, measure, tally);
  return { sewn, ...tally };
}

function sew<Leaf extends AnyLeaf>(part: Part<Leaf>, measure: (leaf: Leaf) => Sewn, tally: Tally): Sewn {
  if (isLeaf<Leaf>(part)) return measure(part);
  if (part.kind === 'row') return sewRow(part, measure, tally);
  return part.kind === 'ring' ? sewRing(part, measure, tally) : sewRounds(part, measure, tally);
}

function sewRow<Leaf extends AnyLeaf>(row: Row<Leaf>, measure: (leaf: Leaf) => Sewn, tally: Tally): Sewn {
  const side: Side = row.along === 'across' ? 'right' : 'bottom';
  const [first, ...rest] = row.parts;
  if (first === undefined) throw new RangeError('A row has at least one part');
  let whole = sew(first, measure, tally);
  for (const part of rest) whole = join(whole, sew(part, measure, tally), side, part.box, tally);
  return whole;
}

function sewRounds<Leaf extends AnyLeaf>(rounds: Rounds<Leaf>, measure: (leaf: Leaf) => Sewn, tally: Tally): Sewn {
  let whole = sew(rounds.core, measure, tally);
  for (const log of rounds.logs) whole = join(whole, sew(log.part, measure, tally), log.side, log.part.box, tally);
  return whole;
}

/** Each arm is sewn to the core and to the end of the arm before it; the outer sides are an arm and the next one's end. */
function sewRing<Leaf extends AnyLeaf>(ring: Ring<Leaf>, measure: (leaf: Leaf) => Sewn, tally: Tally): Sewn {
  const core = sew(ring.core, measure, tally);
  const arms = aboutRing(ring, (part) => sew(part, measure, tally));
  for (const { side, made, box, before } of arms) {
    join(inOrder(core, before.made, before.side), made, side, box, tally);
  }
  const outer = (side: Side) => {
    const { made, after } = arms.find((arm) => arm.side === side) as RingArm<Sewn>;
    return inOrder(made, after.made, after.side);
  };
  const [top, right, bottom, left] = [outer('top'), outer('right'), outer('bottom'), outer('left')];
  return {
    width: top.width,
    height: left.height,
    design: { width: top.design.width, height: left.design.height },
    edges: { top: top.edges.top, right: right.edges.right, bottom: bottom.edges.bottom, left: left.edges.left },
  };
}

/** `other` beside `first` on a side of it. */
function inOrder(first: Sewn, other: Sewn, side: Side): Sewn {
  const across = side === 'left' || side === 'right';
  return side === 'left' || side === 'top' ? beside(other, first, across) : beside(first, other, across);
}

const OPPOSITE: Readonly<Record<Side, Side>> = { top: 'bottom', bottom: 'top', left: 'right', right: 'left' };

/** Sews `added` to one side of `whole`. */
function join(whole: Sewn, added: Sewn, side: Side, box: Box, tally: Tally): Sewn {
  tally.seams += 1;
  const across = side === 'left' || side === 'right';
  const length = across ? 'height' : 'width';
  const by = whole[length] - added[length];
  if (!same(by, 0)) tally.misfits.push({ kind: 'length', box, by, side });
  meet(whole.edges[side], added.edges[OPPOSITE[side]], (miss) => {
    tally.points += 1;
    // A seam that is off in length is told once, not again at each of its points.
    if (!same(miss, 0) && same(by, 0)) tally.misfits.push({ kind: 'point', box, by: miss, side });
  });
  const before = side === 'left' || side === 'top';
  return before ? beside(added, whole, across) : beside(whole, added, across);
}

/** Calls `found` with the sewn distance of every pair of stops that the design wants to meet. Both lists run upwards. */
function meet(a: readonly Stop[], b: readonly Stop[], found: (miss: Inches) => void): void {
  let j = 0;
  for (const stop of a) {
    while (j < b.length && longer(stop.design, (b[j] as Stop).design)) j += 1;
    const other = b[j];
    if (other !== undefined && same(stop.design, other.design)) found(stop.sewn - other.sewn);
  }
}

/** Two things side by side as one: `second` lies to the right of (or below) `first`. */
function beside(first: Sewn, second: Sewn, across: boolean): Sewn {
  const grow = across ? 'width' : 'height';
  const keep = across ? 'height' : 'width';
  const seam: Stop = { design: first.design[grow], sewn: first[grow] };
  const further = (stops: readonly Stop[]) =>
    stops.map((stop) => ({ design: stop.design + seam.design, sewn: stop.sewn + seam.sewn }));
  const joined = (side: Side) => [...first.edges[side], seam, ...further(second.edges[side])];
  const edges = across
    ? { top: joined('top'), bottom: joined('bottom'), left: first.edges.left, right: second.edges.right }
    : { left: joined('left'), right: joined('right'), top: first.edges.top, bottom: second.edges.bottom };
  const sizes = { [grow]: first[grow] + second[grow], [keep]: first[keep] } as { width: Inches; height: Inches };
  const design = { [grow]: first.design[grow] + second.design[grow], [keep]: first.design[keep] } as Sewn['design'];
  return { ...sizes, design, edges };
}
