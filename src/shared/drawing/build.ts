import type { Drawing, Patch, Polygon } from './drawing.ts';
import { doubleArea } from './drawing.ts';
import type { Point } from './turn.ts';

/** Coordinates are whole grid units here, so a vertex is known by its exact coordinates. */
function keyOf(point: Point): string {
  return `${point.x},${point.y}`;
}

class Vertices {
  readonly points: Point[] = [];
  readonly #known = new Map<string, number>();

  indexOf(point: Point): number {
    const key = keyOf(point);
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    this.points.push(point);
    this.#known.set(key, this.points.length - 1);
    return this.points.length - 1;
  }
}

function liesBetween(p: Point, a: Point, b: Point): boolean {
  const along = { x: b.x - a.x, y: b.y - a.y };
  if (along.x * (p.y - a.y) !== along.y * (p.x - a.x)) return false;
  const distance = along.x * (p.x - a.x) + along.y * (p.y - a.y);
  return distance > 0 && distance < along.x ** 2 + along.y ** 2;
}

/** The corners a → b with every vertex that lies between them, in order. */
function withVerticesBetween(a: number, b: number, points: readonly Point[]): number[] {
  const from = points[a] as Point;
  const to = points[b] as Point;
  const reach = (p: Point) => (p.x - from.x) * (to.x - from.x) + (p.y - from.y) * (to.y - from.y);
  const between = points.flatMap((point, index) =>
    liesBetween(point, from, to) ? [{ index, reach: reach(point) }] : [],
  );
  return [a, ...between.sort((p, q) => p.reach - q.reach).map(({ index }) => index)];
}

/**
 * Lets patches find their neighbours: corners that fall together become one vertex, and a corner that falls on another
 * patch's edge becomes a vertex of that patch too, so that every inner edge is used by exactly two patches.
 * @param width grid units across, whole
 * @param height grid units down, whole
 * @param polygons corners in whole grid units, either way round
 */
export function buildDrawing(width: number, height: number, polygons: readonly Polygon[]): Drawing {
  const vertices = new Vertices();
  const loops = polygons.map((polygon) => {
    const corners = doubleArea(polygon.corners) < 0 ? [...polygon.corners].reverse() : polygon.corners;
    return corners.map((corner) => vertices.indexOf(corner));
  });
  const patches: Patch[] = loops.map((loop, i) => ({
    role: (polygons[i] as Polygon).role,
    outline: loop.flatMap((a, k) => withVerticesBetween(a, loop[(k + 1) % loop.length] as number, vertices.points)),
  }));
  return { width, height, points: vertices.points, patches };
}
