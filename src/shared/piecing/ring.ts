import type { Box } from '../drawing/turn.ts';
import type { Side } from '../recipe/schema.ts';
import type { Part, Ring } from './piecing.ts';

/** One arm of a ring with the two it touches: it is sewn to the end of the one before, and its own end to the one after. */
export interface RingArm<T> extends ArmMade<T> {
  readonly before: ArmMade<T>;
  readonly after: ArmMade<T>;
}

/** What was made of one arm. */
interface ArmMade<T> {
  readonly side: Side;
  readonly box: Box;
  readonly made: T;
}

/** The arms of a ring in sewing order, each made into something, with their neighbours round the ring. */
export function aboutRing<Leaf, T>(
  ring: Ring<Leaf>,
  made: (part: Part<Leaf>, index: number) => T,
): readonly RingArm<T>[] {
  const arms = ring.logs.map(({ side, part }, i) => ({ side, box: boxOf(part), made: made(part, i) }));
  return arms.map((arm, i) => ({
    ...arm,
    before: arms[(i + 3) % 4] as ArmMade<T>,
    after: arms[(i + 1) % 4] as ArmMade<T>,
  }));
}

/** Every part of a tree has a box, its leaves too; a tree's leaf type is only known to its owner. */
function boxOf<Leaf>(part: Part<Leaf>): Box {
  return (part as { readonly box: Box }).box;
}
