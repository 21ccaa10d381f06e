import type { Arc, Drawing, Patch, PolygonCorner } from './drawing.ts';
import type { Point } from './turn.ts';

/** Straight pieces a quarter of a circle is drawn with. */
const PER_QUARTER = 16;

/** The arc between two vertices that follow one another on an outline, or null when their edge is straight. */
export function arcBetween(drawing: Drawing, a: number, b: number): Arc | null {
  return drawing.arcs?.find((arc) => (arc.a === a && arc.b === b) || (arc.a === b && arc.b === a)) ?? null;
}

/**
 * Points along an arc from one end to the other, the shorter way round; the ends themselves are left out.
 * @param perQuarter straight pieces for a quarter of a circle
 */
export function arcPoints(from: Point, to: Point, centre: Point, perQuarter = PER_QUARTER): readonly Point[] {
  const radius = Math.hypot(from.x - centre.x, from.y - centre.y);
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  const sweep = shorter(Math.atan2(to.y - centre.y, to.x - centre.x) - start);
  const pieces = Math.max(1, Math.ceil((Math.abs(sweep) / (Math.PI / 2)) * perQuarter - 1e-9));
  return Array.from({ length: pieces - 1 }, (_, i) => {
    const angle = start + (sweep * (i + 1)) / pieces;
    return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
  });
}

/** The place in the middle of an arc, the shorter way round. */
export function arcMiddle(from: Point, to: Point, centre: Point): Point {
  // An even number of pieces has a place in the very middle.
  const between = arcPoints(from, to, centre, 2 * PER_QUARTER);
  const middle = between[Math.floor(between.length / 2)];
  if (middle === undefined) throw new RangeError('An arc without a length has no middle');
  return middle;
}

/** An angle brought between half a turn back and half a turn on; of the two half turns, the one on. */
function shorter(angle: number): number {
  const turns = Math.round(angle / (2 * Math.PI));
  const brought = angle - turns * 2 * Math.PI;
  return brought <= -Math.PI + 1e-12 ? Math.PI : brought;
}

/** The outline of a patch as points with its arcs flattened, in grid units; what figures and areas are made from. */
export function outlinePoints(drawing: Drawing, patch: Patch, perQuarter = PER_QUARTER): readonly Point[] {
  const { outline } = patch;
  return outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] as number;
    const from = pointAt(drawing, a);
    const arc = drawing.arcs === undefined ? null : arcBetween(drawing, a, b);
    return arc === null ? [from] : [from, ...arcPoints(from, pointAt(drawing, b), arc.centre, perQuarter)];
  });
}

/** The corners of a polygon with its arcs flattened. */
export function flatCorners(corners: readonly PolygonCorner[], perQuarter = PER_QUARTER): readonly Point[] {
  return corners.flatMap((corner, i) => {
    const { centre, x, y } = corner;
    if (centre === undefined) return [{ x, y }];
    const before = corners[(i + corners.length - 1) % corners.length] as PolygonCorner;
    return [...arcPoints(before, corner, centre, perQuarter), { x, y }];
  });
}

/** A vertex's place. @throws RangeError when the drawing has no such vertex */
export function pointAt(drawing: Drawing, index: number): Point {
  const point = drawing.points[index];
  if (point === undefined) throw new RangeError(`The drawing has no point ${index}`);
  return point;
}
