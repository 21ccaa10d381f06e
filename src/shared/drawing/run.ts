import { arcBetween, pointAt } from './curve.ts';
import type { Drawing } from './drawing.ts';
import { beside, distance } from './near.ts';
import type { Point } from './turn.ts';
import { edgesOf } from './vertex.ts';

/** A stretch of seam: its two ends, grid units. */
export type Stretch = readonly [Point, Point];

/** An edge of the drawing, as its two vertices. */
export type EdgeOf = readonly [number, number];

/** The straight line of seams that an edge is part of, from where it begins to where it ends; null when the edge is an arc. */
export function straightRun(drawing: Drawing, [a, b]: EdgeOf): Stretch | null {
  if (arcBetween(drawing, a, b) !== null) return null;
  const beyond = neighbours(drawing);
  return [pointAt(drawing, endOf(drawing, beyond, b, a)), pointAt(drawing, endOf(drawing, beyond, a, b))];
}

/** Follows the straight edges on from b, coming from a, as far as they go. */
function endOf(drawing: Drawing, beyond: Neighbours, a: number, b: number): number {
  let [before, now] = [a, b];
  for (;;) {
    const next = beyond.get(now)?.find((one) => one !== before && isStraightOn(drawing, before, now, one));
    if (next === undefined) return now;
    [before, now] = [now, next];
  }
}

type Neighbours = ReadonlyMap<number, readonly number[]>;

function neighbours(drawing: Drawing): Neighbours {
  const found = new Map<number, number[]>();
  const add = (a: number, b: number) => found.set(a, [...(found.get(a) ?? []), b]);
  for (const [a, b] of edgesOf(drawing)) {
    add(a, b);
    add(b, a);
  }
  return found;
}

function isStraightOn(drawing: Drawing, a: number, b: number, c: number): boolean {
  if (arcBetween(drawing, b, c) !== null) return false;
  const { along, off } = beside(pointAt(drawing, c), pointAt(drawing, a), pointAt(drawing, b));
  return along > 1 && off < 1e-6;
}

/** The inner edge nearest to a place and no farther than `reach`; an edge of the block's own outline is no seam. */
export function seamAt(drawing: Drawing, place: Point, reach: number): EdgeOf | null {
  let best: { readonly edge: EdgeOf; readonly off: number } | null = null;
  for (const edge of edgesOf(drawing)) {
    const [a, b] = [pointAt(drawing, edge[0]), pointAt(drawing, edge[1])];
    if (isOutline(drawing, a, b) || arcBetween(drawing, ...edge) !== null) continue;
    const { along, off } = beside(place, a, b);
    const end = Math.min(distance(place, a), distance(place, b));
    const away = along >= 0 && along <= 1 ? off : end;
    if (away <= reach && (best === null || away < best.off)) best = { edge, off: away };
  }
  return best?.edge ?? null;
}

function isOutline({ width, height }: Drawing, a: Point, b: Point): boolean {
  const both = (test: (p: Point) => boolean) => test(a) && test(b);
  return (
    both(({ x }) => x === 0) ||
    both(({ y }) => y === 0) ||
    both(({ x }) => x === width) ||
    both(({ y }) => y === height)
  );
}
