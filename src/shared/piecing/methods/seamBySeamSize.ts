import type { Inches } from '../../measure/inches.ts';
import { plus, rounded, type Traced } from '../../measure/traced.ts';
import type { Scale } from '../method.ts';
import type { Triangles } from './cutTriangles.ts';
import type { RightTriangle } from './rightTriangles.ts';
import { cutUp, finishedLength, halfSquareAdd, quarterSquareAdd, roomyLength } from './sums.ts';

/**
 * The square a triangle is cut from, so that the straight grain lies along the edge of the unit: cut once where the short
 * sides lie there or nothing does, cut twice where the long side does. What lies at the edge is trimmed, so it is cut up to
 * the ruler with room; what is sewn in on every side is cut to the nearest mark.
 * @param room what else there must be to trim, when there must be
 */
export function squareOf(triangle: RightTriangle, scale: Scale, room: readonly Traced[]): Triangles {
  const { role, leg, legsOnRim, longOnRim } = triangle;
  if (longOnRim) {
    const square = cutUp(scale, roomyLength(longOf(leg), scale), quarterSquareAdd(scale), ...room);
    return { role, square, inUnit: 1, from: 4, use: 'square cut twice' };
  }
  const square =
    legsOnRim > 0
      ? cutUp(scale, roomyLength(leg, scale), halfSquareAdd(scale), ...room)
      : rounded(plus(finishedLength(leg, scale), halfSquareAdd(scale)), scale.step, 'near');
  return { role, square, inUnit: 1, from: 2, use: 'square cut once' };
}

/** The finished long side of a triangle with this short side. */
function longOf(leg: number): number {
  return leg * Math.SQRT2;
}

/**
 * How far a triangle's cloth reaches beyond the edge of the unit when its other sides are sewn a seam from their raw edges.
 * A seam's allowance s adds s to a short side for the other short side and s√2 for the long one (computed).
 */
export function beyondRim(triangle: RightTriangle, scale: Scale, room: readonly Traced[]): Inches {
  const { leg, legsOnRim, longOnRim } = triangle;
  const { seam, grid } = scale;
  const cut = squareOf(triangle, scale, room).square.value;
  if (longOnRim) return (cut - longOf(leg) * grid) / 2 - seam * Math.SQRT2;
  if (legsOnRim === 0) return seam;
  return (cut - leg * grid - seam * Math.SQRT2 - (2 - legsOnRim) * seam) / legsOnRim;
}
