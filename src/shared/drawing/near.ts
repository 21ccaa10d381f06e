import type { Point } from './turn.ts';

/** Two places nearer than this are one vertex, in grid units. */
const ONE_VERTEX = 1e-6;

/**
 * A place typed with a few decimals, such as 2.3431 for the corner of a star, is taken for the vertex or edge it is meant for
 * when it is this near. Nothing else in the house snaps.
 */
export const MEANT = 5e-4;

/** Two vertices nearer than this that are not one are a slip of the hand, in grid units. */
export const SLIP = 0.02;

export function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** Whether two places are one vertex. */
export function isOneVertex(a: Point, b: Point): boolean {
  return distance(a, b) < ONE_VERTEX;
}

/** How far along the way from a to b a place lies (0 to 1 between them), and how far beside it, grid units. */
export function beside(place: Point, a: Point, b: Point): { readonly along: number; readonly off: number } {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  if (square === 0) return { along: 0, off: distance(place, a) };
  const along = ((place.x - a.x) * dx + (place.y - a.y) * dy) / square;
  const off = Math.abs(dx * (place.y - a.y) - dy * (place.x - a.x)) / Math.sqrt(square);
  return { along, off };
}

/** Whether a place lies inside an outline (even–odd rule); on the outline itself either answer may come. */
export function isInside(place: Point, outline: readonly Point[]): boolean {
  let inside = false;
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    if (a.y > place.y === b.y > place.y) return;
    if (place.x < ((b.x - a.x) * (place.y - a.y)) / (b.y - a.y) + a.x) inside = !inside;
  });
  return inside;
}

/** Which side of the way from a to b a place lies: above 0 to the right on screen (y runs down), below 0 to the left. */
export function sideOf(place: Point, a: Point, b: Point): number {
  return (b.x - a.x) * (place.y - a.y) - (b.y - a.y) * (place.x - a.x);
}
