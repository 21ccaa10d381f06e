import type { Turn } from '../drawing/turn.ts';
import type { Inches } from '../measure/inches.ts';
import { turnSide } from '../piecing/sub.ts';
import type { Side } from '../recipe/schema.ts';

/**
 * A point along an edge where a seam meets it: where the design wants it and where it comes out when the pieces are cut
 * as printed. Both in finished inches from the edge's left or upper end.
 */
export interface Stop {
  readonly design: Inches;
  readonly sewn: Inches;
}

/** Something sewn together: what it measures and where seams meet its edges. */
export interface Sewn {
  /** Finished inches as sewn: without the seam allowance around it. */
  readonly width: Inches;
  readonly height: Inches;
  /** Finished inches as designed. */
  readonly design: { readonly width: Inches; readonly height: Inches };
  readonly edges: Readonly<Record<Side, readonly Stop[]>>;
}

/** Edges into which no seam runs. */
export const NO_STOPS: Sewn['edges'] = { top: [], right: [], bottom: [], left: [] };

/** A piece with no seam on its edges. */
export function plainSewn(
  width: Inches,
  height: Inches,
  design: Sewn['design'],
  edges: Sewn['edges'] = NO_STOPS,
): Sewn {
  return { width, height, design, edges };
}

/** The same thing turned. */
export function turnSewn(sewn: Sewn, turn: Turn): Sewn {
  const swaps = turn.quarters % 2 === 1;
  const edges = { ...NO_STOPS } as Record<Side, readonly Stop[]>;
  for (const side of ['top', 'right', 'bottom', 'left'] as const) {
    const to = turnSide(side, turn);
    const flips = runsBackwards(side, turn);
    const length = side === 'top' || side === 'bottom' ? 'width' : 'height';
    edges[to] = flips ? backwards(sewn.edges[side], sewn.design[length], sewn[length]) : sewn.edges[side];
  }
  const { width, height, design } = sewn;
  if (!swaps) return { width, height, design, edges };
  return { width: height, height: width, design: { width: design.height, height: design.width }, edges };
}

/** Whether an edge, counted from the left or from the top, is counted from its other end once the thing is turned. */
function runsBackwards(side: Side, turn: Turn): boolean {
  const lengthwise = side === 'top' || side === 'bottom';
  const mirrored = turn.mirrored && lengthwise;
  // Clockwise by a quarter, the left end of the top edge becomes the upper end of the right edge (kept), and the upper
  // end of a side edge becomes the right end of the top or bottom (reversed).
  const turned = turn.quarters === 2 || (turn.quarters === 1 && !lengthwise) || (turn.quarters === 3 && lengthwise);
  return mirrored !== turned;
}

function backwards(stops: readonly Stop[], design: Inches, sewn: Inches): readonly Stop[] {
  return stops.map((stop) => ({ design: design - stop.design, sewn: sewn - stop.sewn })).reverse();
}
