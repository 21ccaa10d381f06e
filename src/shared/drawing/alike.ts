import { arcBetween, pointAt } from './curve.ts';
import type { Drawing, Patch } from './drawing.ts';
import { distance } from './near.ts';
import type { Point } from './turn.ts';

/** The patches that have the shape and the role of one of them, however they are turned or mirrored; itself among them. */
export function patchesLike(drawing: Drawing, patch: number): readonly number[] {
  const wanted = drawing.patches[patch];
  if (wanted === undefined) return [];
  const likeness = shapeOf(drawing, wanted);
  return drawing.patches.flatMap((one, i) =>
    one.role === wanted.role && shapeOf(drawing, one) === likeness ? [i] : [],
  );
}

/**
 * Words for a shape that stay the same however it is turned or mirrored: the lengths of its edges, and how far the way
 * round turns at each of its corners.
 */
function shapeOf(drawing: Drawing, patch: Patch): string {
  const corners = cornersOf(drawing, patch);
  const sides = corners.map((corner, i) => {
    const before = corners[(i + corners.length - 1) % corners.length] as Corner;
    const after = corners[(i + 1) % corners.length] as Corner;
    const angle = angleBetween(before.at, corner.at, after.at);
    return { angle: fine(angle), length: fine(distance(corner.at, after.at)), bend: fine(corner.bend) };
  });
  const forward = sides.map(({ angle, length, bend }) => `${angle} ${length} ${bend}`);
  // The other way round each corner is followed by the edge that led to it.
  const back = sides
    .map(({ angle }, i) => {
      const { length, bend } = sides[(i + sides.length - 1) % sides.length] as (typeof sides)[number];
      return `${angle} ${length} ${bend}`;
    })
    .reverse();
  return [...turnedLists(forward), ...turnedLists(back)].sort()[0] ?? '';
}

interface Corner {
  readonly at: Point;
  /** How far the edge that follows bulges out of the patch, as its radius with a sign; 0 when it is straight. */
  readonly bend: number;
}

/** The corners of a patch without the vertices that only neighbours have on its straight edges. */
function cornersOf(drawing: Drawing, { outline }: Patch): readonly Corner[] {
  return outline.flatMap((vertex, i) => {
    const before = outline[(i + outline.length - 1) % outline.length] as number;
    const after = outline[(i + 1) % outline.length] as number;
    const [from, at, to] = [pointAt(drawing, before), pointAt(drawing, vertex), pointAt(drawing, after)];
    const [into, on] = [arcBetween(drawing, before, vertex), arcBetween(drawing, vertex, after)];
    if (into === null && on === null && Math.abs(angleBetween(from, at, to)) < 1e-6) return [];
    if (on === null) return [{ at, bend: 0 }];
    const side = (to.x - at.x) * (on.centre.y - at.y) - (to.y - at.y) * (on.centre.x - at.x);
    return [{ at, bend: distance(at, on.centre) * (side >= 0 ? 1 : -1) }];
  });
}

/** How far a way turns at its middle place, −π to π. */
function angleBetween(a: Point, b: Point, c: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const [ex, ey] = [c.x - b.x, c.y - b.y];
  return Math.atan2(dx * ey - dy * ex, dx * ex + dy * ey);
}

function fine(value: number): string {
  return String(Math.round(value * 1000) + 0);
}

function turnedLists(list: readonly string[]): readonly string[] {
  return list.map((_, i) => [...list.slice(i), ...list.slice(0, i)].join(', '));
}
