import { arcMiddle } from './curve.ts';
import type { Arc, Drawing, Patch, Polygon } from './drawing.ts';
import { beside, distance, MEANT } from './near.ts';
import type { Point } from './turn.ts';

/**
 * Vertices found by place: two corners nearer than `MEANT` are one vertex, at the place of the first. A fine mesh of cells
 * keeps the search short.
 */
class Vertices {
  readonly points: Point[] = [];
  readonly #cells = new Map<string, number[]>();

  indexOf(point: Point): number {
    const [column, row] = [Math.floor(point.x / CELL), Math.floor(point.y / CELL)];
    for (let dx = -1; dx <= 1; dx += 1) {
      for (let dy = -1; dy <= 1; dy += 1) {
        const near = this.#cells
          .get(`${column + dx} ${row + dy}`)
          ?.find((i) => distance(this.points[i] as Point, point) < MEANT);
        if (near !== undefined) return near;
      }
    }
    this.points.push({ x: point.x, y: point.y });
    const key = `${column} ${row}`;
    this.#cells.set(key, [...(this.#cells.get(key) ?? []), this.points.length - 1]);
    return this.points.length - 1;
  }
}

const CELL = 4 * MEANT;

/** The corners a → b with every vertex that lies between them on their straight edge, in order. */
function withVerticesBetween(a: number, b: number, points: readonly Point[]): readonly number[] {
  const [from, to] = [points[a] as Point, points[b] as Point];
  const between = points.flatMap((point, index) => {
    if (index === a || index === b) return [];
    const { along, off } = beside(point, from, to);
    return off < MEANT && along > 0 && along < 1 ? [{ index, along }] : [];
  });
  return [a, ...between.sort((p, q) => p.along - q.along).map(({ index }) => index)];
}

/** The ends a → b of an arc with every vertex that lies between them on it, in order. */
function withVerticesOnArc(a: number, b: number, centre: Point, points: readonly Point[]): readonly number[] {
  const [from, to] = [points[a] as Point, points[b] as Point];
  const radius = distance(from, centre);
  const angle = (point: Point) => Math.atan2(point.y - centre.y, point.x - centre.x);
  const turned = (by: number) => by - 2 * Math.PI * Math.round(by / (2 * Math.PI));
  const sweep = turned(angle(to) - angle(from));
  const between = points.flatMap((point, index) => {
    if (index === a || index === b || Math.abs(distance(point, centre) - radius) >= MEANT) return [];
    const along = turned(angle(point) - angle(from)) / sweep;
    return along > 0 && along < 1 ? [{ index, along }] : [];
  });
  return [a, ...between.sort((p, q) => p.along - q.along).map(({ index }) => index)];
}

/**
 * Lets patches find their neighbours: corners that fall together become one vertex, and a corner that falls on another
 * patch's edge becomes a vertex of that patch too, so that every inner edge is used by exactly two patches.
 * @param width grid units across
 * @param height grid units down
 * @param polygons corners in grid units, either way round
 */
export function buildDrawing(width: number, height: number, polygons: readonly Polygon[]): Drawing {
  const vertices = new Vertices();
  const place = (corner: Corner): Point => ({ x: toEdge(corner.x, width), y: toEdge(corner.y, height) });
  const loops = polygons.map((polygon) =>
    clockwise(polygon).map((corner) => ({ vertex: vertices.indexOf(place(corner)), centre: corner.centre })),
  );
  for (const middle of middlesOfDoubled(loops, vertices.points)) vertices.indexOf(middle);
  const arcs = new Map<string, Arc>();
  const patches = loops.map((loop, p): Patch => {
    const outline = loop.flatMap(({ vertex: a }, k) => {
      const { vertex: b, centre } = loop[(k + 1) % loop.length] as (typeof loop)[number];
      if (a === b) return [];
      if (centre === undefined) return withVerticesBetween(a, b, vertices.points);
      const chain = withVerticesOnArc(a, b, centre, vertices.points);
      chain.forEach((from, i) => {
        const to = chain[i + 1] ?? b;
        arcs.set(from < to ? `${from} ${to}` : `${to} ${from}`, { a: from, b: to, centre });
      });
      return chain;
    });
    return { role: (polygons[p] as Polygon).role, outline };
  });
  const drawing = { width, height, points: vertices.points, patches };
  return arcs.size === 0 ? drawing : { ...drawing, arcs: [...arcs.values()] };
}

interface Turned {
  readonly vertex: number;
  readonly centre: Point | undefined;
}

/**
 * An edge is known by its two vertices. Where two corners are joined twice, by an arc and a straight edge or by two arcs,
 * every such arc is given a vertex in its middle.
 */
function middlesOfDoubled(loops: readonly (readonly Turned[])[], points: readonly Point[]): readonly Point[] {
  const ways = new Map<string, Map<string, Point | null>>();
  for (const loop of loops) {
    loop.forEach(({ vertex: a }, k) => {
      const { vertex: b, centre } = loop[(k + 1) % loop.length] as Turned;
      const edge = a < b ? `${a} ${b}` : `${b} ${a}`;
      const way = centre === undefined ? '' : `${centre.x.toFixed(3)} ${centre.y.toFixed(3)}`;
      const [from, to] = [points[a] as Point, points[b] as Point];
      const middle = centre === undefined || a === b ? null : arcMiddle(from, to, centre);
      ways.set(edge, (ways.get(edge) ?? new Map()).set(way, middle));
    });
  }
  const doubled = [...ways.values()].filter((way) => way.size > 1);
  return doubled.flatMap((way) => [...way.values()].flatMap((middle) => middle ?? []));
}

/** A coordinate that is meant for the edge of the block is on it. */
function toEdge(value: number, length: number): number {
  if (Math.abs(value) < MEANT) return 0;
  return Math.abs(value - length) < MEANT ? length : value;
}

type Corner = Polygon['corners'][number];

/** The corners clockwise on screen; turned round, an arc belongs to the corner at its other end. */
function clockwise({ corners }: Polygon): readonly Corner[] {
  if (windingOf(corners) >= 0) return corners;
  return corners.map((_, i) => {
    const { x, y } = corners[corners.length - 1 - i] as Corner;
    const before = corners[(corners.length - i) % corners.length] as Corner;
    return before.centre === undefined ? { x, y } : { x, y, centre: before.centre };
  });
}

/** Twice the area with its sign; an arc counts by a point on its middle, which is enough to tell the way round. */
function windingOf(corners: readonly Corner[]): number {
  const points = corners.flatMap((corner, i) => {
    const before = corners[(i + corners.length - 1) % corners.length] as Corner;
    if (corner.centre === undefined) return [corner];
    const [x, y] = [(before.x + corner.x) / 2 - corner.centre.x, (before.y + corner.y) / 2 - corner.centre.y];
    const length = Math.hypot(x, y);
    if (length < 1e-9) return [corner];
    const scale = distance(corner, corner.centre) / length;
    return [{ x: corner.centre.x + x * scale, y: corner.centre.y + y * scale }, corner];
  });
  return points.reduce((sum, a, i) => {
    const b = points[(i + 1) % points.length] as Point;
    return sum + a.x * b.y - b.x * a.y;
  }, 0);
}
