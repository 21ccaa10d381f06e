import type { Box, Point } from '../drawing/turn.ts';
import type { Ring, UnitLeaf } from '../piecing/piecing.ts';
import { aboutRing } from '../piecing/ring.ts';
import type { SewnBlock } from './blockParts.ts';
import type { Figure } from './figure.ts';
import { framed, line } from './marks.ts';
import { roundMarks } from './roundFigure.ts';

/** The three stages of sewing a ring about its core. */
export interface RingFigures {
  /** The first arm sewn on part of the way. */
  readonly start: Figure;
  /** The other three, one after another. */
  readonly round: Figure;
  /** The first seam finished. */
  readonly finish: Figure;
}

/**
 * Sewing a ring: the first arm with its stitches only as far as about the middle of the core, then the others, then the rest
 * of the first seam.
 */
export function ringFigures(block: SewnBlock, ring: Ring<UnitLeaf>, path: string): RingFigures {
  const { halfway, even, far } = firstSeam(ring);
  const inches = ({ x, y }: Point): Point => ({ x: x * block.grid, y: y * block.grid });
  const stitches = (from: Point, to: Point) => line(inches(from), inches(to), 'sew');
  return {
    start: framed(
      [...roundMarks(block, ring, path, { first: 0, last: 0, pressed: [] }), stitches(even, halfway)],
      'A part laid along a middle and sewn to it from the end where their edges are even to about halfway.',
    ),
    round: framed(
      roundMarks(block, ring, path, { first: 1, last: 3 }),
      'Three more parts sewn about the middle in the order of their numbers, with the way each seam is pressed.',
    ),
    finish: framed(
      [...roundMarks(block, ring, path, { first: 4, last: 3, pressed: [0] }), stitches(halfway, far)],
      'All four parts about the middle; the first seam is sewn on to its end and pressed.',
    ),
  };
}

/** As a share of the core's shorter side. */
const BESIDE = 0.05;

/**
 * The seam of the first arm: from the end where its edge and the core's are even, over the middle of the core, to its far
 * end beside the end of the last arm. In grid units.
 */
function firstSeam(ring: Ring<UnitLeaf>): { readonly even: Point; readonly halfway: Point; readonly far: Point } {
  const [first] = aboutRing(ring, (part) => part);
  if (first === undefined) throw new RangeError('A ring has four arms');
  const core = (ring.core as { readonly box: Box }).box;
  const { side, before } = first;
  const across = side === 'top' || side === 'bottom';
  // The stitches are drawn a little beside the seam, where its own line does not hide them.
  const off = (side === 'top' || side === 'left' ? -1 : 1) * BESIDE * Math.min(core.width, core.height);
  const y = (side === 'top' ? core.y : core.y + core.height) + off;
  const x = (side === 'left' ? core.x : core.x + core.width) + off;
  const at = (share: number): Point =>
    across ? { x: core.x + core.width * share, y } : { x, y: core.y + core.height * share };
  const fromStart = before.side === 'right' || before.side === 'bottom';
  const beyond = across ? before.box.width / core.width : before.box.height / core.height;
  return fromStart
    ? { even: at(0), halfway: at(0.5), far: at(1 + beyond) }
    : { even: at(1), halfway: at(0.5), far: at(-beyond) };
}
