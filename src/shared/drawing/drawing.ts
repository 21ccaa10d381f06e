import type { Point } from './turn.ts';

/**
 * A block as a planar subdivision: shared vertices on a grid, patches that cover the block with no gap and no overlap.
 * Coordinates are grid units, y downwards; vertices on the grid are whole numbers. Whether two edges are the same edge
 * is asked of vertex indices, never of coordinates.
 */
export interface Drawing {
  /** Grid units across and down. */
  readonly width: number;
  readonly height: number;
  readonly points: readonly Point[];
  readonly patches: readonly Patch[];
  /** Edges that are arcs of a circle; every other edge is straight. */
  readonly arcs?: readonly Arc[];
}

/** The edge between two vertices as an arc about a centre: the shorter way round, at most half a circle. */
export interface Arc {
  readonly a: number;
  readonly b: number;
  /** Grid units. */
  readonly centre: Point;
}

/** One patch: the indices of every vertex on its outline, clockwise on screen, and the fabric role it is cut from. */
export interface Patch {
  readonly outline: readonly number[];
  readonly role: string;
}

/** A patch before it has found its neighbours: corners in grid units and a role. */
export interface Polygon {
  readonly corners: readonly PolygonCorner[];
  readonly role: string;
}

/** A corner; with a centre, the edge that leads to it from the corner before is an arc about that centre. */
export interface PolygonCorner extends Point {
  readonly centre?: Point;
}

/** The corners of a patch as points, in grid units. */
export function patchPoints(drawing: Drawing, patch: Patch): readonly Point[] {
  return patch.outline.map((index) => {
    const point = drawing.points[index];
    if (point === undefined) throw new RangeError(`The drawing has no point ${index}`);
    return point;
  });
}

/** Twice the signed area of a polygon, in square grid units: positive when it runs clockwise on screen. */
export function doubleArea(corners: readonly Point[]): number {
  return corners.reduce((total, a, i) => {
    const b = corners[(i + 1) % corners.length] as Point;
    return total + (a.x * b.y - b.x * a.y);
  }, 0);
}
