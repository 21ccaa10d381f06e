import { arcBetween, pointAt } from './curve.ts';
import type { Drawing } from './drawing.ts';
import { beside, distance, MEANT } from './near.ts';
import type { Point } from './turn.ts';
import { edgesOf } from './vertex.ts';

/** A stretch of a way across a drawing: straight, or an arc about a centre, the shorter way round. */
export interface Leg {
  readonly from: Point;
  readonly to: Point;
  readonly centre?: Point;
}

/** Where a leg meets the drawing, and how far along it that is: 0 at its start, 1 at its end. */
export interface Meeting {
  readonly place: Point;
  readonly along: number;
}

/** Every place at which a leg meets an edge or a vertex of the drawing, from its start on; its ends too, when they do. */
export function meetings(drawing: Drawing, leg: Leg): readonly Meeting[] {
  const atVertices = drawing.points.flatMap((place) => asMeeting(leg, place));
  const onEdges = edgesOf(drawing).flatMap(([a, b]) => {
    const centre = arcBetween(drawing, a, b)?.centre;
    const edge: Leg = {
      from: pointAt(drawing, a),
      to: pointAt(drawing, b),
      ...(centre === undefined ? {} : { centre }),
    };
    return crossings(leg, edge).flatMap((place) => (alongOf(edge, place) === null ? [] : asMeeting(leg, place)));
  });
  const ends = [leg.from, leg.to].flatMap((place) => (isOnEdge(drawing, place) ? asMeeting(leg, place) : []));
  return onceEach([...atVertices, ...ends, ...onEdges]);
}

/** Whether a place is meant for an edge or a vertex of the drawing. */
export function isOnEdge(drawing: Drawing, place: Point): boolean {
  return edgesOf(drawing).some(([a, b]) => {
    const centre = arcBetween(drawing, a, b)?.centre;
    return alongOf({ from: pointAt(drawing, a), to: pointAt(drawing, b), ...(centre && { centre }) }, place) !== null;
  });
}

/** A place of the leg, by how far along it lies; none when it is not on the leg. */
function asMeeting(leg: Leg, place: Point): readonly Meeting[] {
  const along = alongOf(leg, place);
  return along === null ? [] : [{ place, along }];
}

/** Vertices come first in the list: what falls together with one is that one. */
function onceEach(found: readonly Meeting[]): readonly Meeting[] {
  const kept: Meeting[] = [];
  for (const one of found) if (!kept.some(({ place }) => distance(place, one.place) < MEANT)) kept.push(one);
  return kept.sort((p, q) => p.along - q.along);
}

/** How far along a leg a place lies, 0 to 1; null when it does not lie on it. */
export function alongOf(leg: Leg, place: Point): number | null {
  if (distance(place, leg.from) < MEANT) return 0;
  if (distance(place, leg.to) < MEANT) return 1;
  if (leg.centre !== undefined) return alongArc(leg.from, leg.to, leg.centre, place);
  const { along, off } = beside(place, leg.from, leg.to);
  return off < MEANT && along > 0 && along < 1 ? along : null;
}

function alongArc(from: Point, to: Point, centre: Point, place: Point): number | null {
  if (Math.abs(distance(place, centre) - distance(from, centre)) >= MEANT) return null;
  const start = angleAt(centre, from);
  const along = turned(angleAt(centre, place) - start) / sweepOf(from, to, centre);
  return along > 0 && along < 1 ? along : null;
}

function angleAt(centre: Point, place: Point): number {
  return Math.atan2(place.y - centre.y, place.x - centre.x);
}

/** An angle brought between half a turn back and half a turn on. */
function turned(angle: number): number {
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
}

/** How far an arc turns, the shorter way round; of the two half turns, clockwise on screen. */
export function sweepOf(from: Point, to: Point, centre: Point): number {
  const sweep = turned(angleAt(centre, to) - angleAt(centre, from));
  return sweep <= -Math.PI + 1e-12 ? Math.PI : sweep;
}

/** The place halfway along a leg. */
export function halfway({ from, to, centre }: Leg): Point {
  if (centre === undefined) return { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const angle = angleAt(centre, from) + sweepOf(from, to, centre) / 2;
  const radius = distance(from, centre);
  return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
}

/** Where the lines or circles of two legs cross, whether or not the legs reach that far. */
export function crossings(one: Leg, other: Leg): readonly Point[] {
  if (one.centre === undefined) {
    return other.centre === undefined ? lineByLine(one, other) : lineByCircle(one, circleOf(other, other.centre));
  }
  if (other.centre === undefined) return lineByCircle(other, circleOf(one, one.centre));
  return circleByCircle(circleOf(one, one.centre), circleOf(other, other.centre));
}

/** A circle of the compass, grid units. */
interface Circle {
  readonly centre: Point;
  readonly radius: number;
}

function circleOf({ from }: Leg, centre: Point): Circle {
  return { centre, radius: distance(from, centre) };
}

function lineByLine(one: Leg, other: Leg): readonly Point[] {
  const [dx, dy] = [one.to.x - one.from.x, one.to.y - one.from.y];
  const [ex, ey] = [other.to.x - other.from.x, other.to.y - other.from.y];
  const cross = dx * ey - dy * ex;
  if (Math.abs(cross) < 1e-9 * Math.hypot(dx, dy) * Math.hypot(ex, ey)) return [];
  const t = ((other.from.x - one.from.x) * ey - (other.from.y - one.from.y) * ex) / cross;
  return [{ x: one.from.x + t * dx, y: one.from.y + t * dy }];
}

/** Where the line of a leg crosses a circle. */
function lineByCircle({ from, to }: Leg, { centre, radius }: Circle): readonly Point[] {
  const length = distance(from, to);
  const [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const near = (centre.x - from.x) * ux + (centre.y - from.y) * uy;
  const off = Math.abs((centre.x - from.x) * uy - (centre.y - from.y) * ux);
  if (off > radius + MEANT) return [];
  const half = Math.sqrt(Math.max(0, radius * radius - off * off));
  const places = half < 1e-6 ? [near] : [near - half, near + half];
  return places.map((t) => ({ x: from.x + t * ux, y: from.y + t * uy }));
}

function circleByCircle(a: Circle, b: Circle): readonly Point[] {
  const apart = distance(a.centre, b.centre);
  if (apart < MEANT || apart > a.radius + b.radius + MEANT || apart < Math.abs(a.radius - b.radius) - MEANT) return [];
  const along = (apart * apart + a.radius * a.radius - b.radius * b.radius) / (2 * apart);
  const half = Math.sqrt(Math.max(0, a.radius * a.radius - along * along));
  const [ux, uy] = [(b.centre.x - a.centre.x) / apart, (b.centre.y - a.centre.y) / apart];
  const foot = { x: a.centre.x + along * ux, y: a.centre.y + along * uy };
  if (half < 1e-6) return [foot];
  return [
    { x: foot.x - half * uy, y: foot.y + half * ux },
    { x: foot.x + half * uy, y: foot.y - half * ux },
  ];
}
