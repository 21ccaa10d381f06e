import { arcBetween, arcPoints, pointAt } from './curve.ts';
import type { Arc, Drawing } from './drawing.ts';
import { beside, distance, isOneVertex, MEANT } from './near.ts';
import type { Point } from './turn.ts';

/** A drawing with a vertex at a place, and which one it is. */
export interface WithVertex {
  readonly drawing: Drawing;
  readonly vertex: number;
}

/** The vertex that is meant by a place; null when none is near enough. */
export function vertexAt(drawing: Drawing, place: Point): number | null {
  const index = drawing.points.findIndex((point) => distance(point, place) < MEANT);
  return index < 0 ? null : index;
}

/**
 * The drawing with a vertex on the edge or at the vertex that `place` is meant for. A new vertex on an edge becomes part of
 * both patches that share the edge, so that they stay neighbours. Null when no edge is near enough.
 */
export function withVertexAt(drawing: Drawing, place: Point): WithVertex | null {
  const known = vertexAt(drawing, place);
  if (known !== null) return { drawing, vertex: known };
  for (const [a, b] of edgesOf(drawing)) {
    const on = onEdge(drawing, a, b, place);
    if (on !== null) return divided(drawing, a, b, on);
  }
  return null;
}

/** Every edge once, as two vertices. */
export function edgesOf(drawing: Drawing): readonly (readonly [number, number])[] {
  const seen = new Set<string>();
  return drawing.patches.flatMap(({ outline }) =>
    outline.flatMap((a, i) => {
      const b = outline[(i + 1) % outline.length] as number;
      const key = a < b ? `${a} ${b}` : `${b} ${a}`;
      if (seen.has(key)) return [];
      seen.add(key);
      return [[a, b] as const];
    }),
  );
}

/** The place on the edge itself that is meant; null when the edge is too far. */
function onEdge(drawing: Drawing, a: number, b: number, place: Point): Point | null {
  const [from, to] = [pointAt(drawing, a), pointAt(drawing, b)];
  const arc = arcBetween(drawing, a, b);
  if (arc !== null) return onArc(from, to, arc, place);
  const { along, off } = beside(place, from, to);
  if (along <= 0 || along >= 1 || off >= MEANT) return null;
  // A place on the very edge keeps its own coordinates: projecting would only add rounding.
  if (off < 1e-12) return place;
  return { x: from.x + along * (to.x - from.x), y: from.y + along * (to.y - from.y) };
}

function onArc(from: Point, to: Point, arc: Arc, place: Point): Point | null {
  const radius = distance(from, arc.centre);
  const out = distance(place, arc.centre);
  if (Math.abs(out - radius) >= MEANT || out === 0) return null;
  const chain = [from, ...arcPoints(from, to, arc.centre, 64), to];
  const near = chain.some(
    (point, i) =>
      i > 0 && beside(place, chain[i - 1] as Point, point).off < 0.01 && within(place, chain[i - 1] as Point, point),
  );
  if (!near) return null;
  const scale = radius / out;
  return { x: arc.centre.x + (place.x - arc.centre.x) * scale, y: arc.centre.y + (place.y - arc.centre.y) * scale };
}

function within(place: Point, a: Point, b: Point): boolean {
  const { along } = beside(place, a, b);
  return along >= -1e-9 && along <= 1 + 1e-9;
}

function divided(drawing: Drawing, a: number, b: number, place: Point): WithVertex {
  const vertex = drawing.points.length;
  const patches = drawing.patches.map((patch) => {
    const outline = patch.outline.flatMap((from, i) => {
      const to = patch.outline[(i + 1) % patch.outline.length];
      const here = (from === a && to === b) || (from === b && to === a);
      return here ? [from, vertex] : [from];
    });
    return outline.length === patch.outline.length ? patch : { ...patch, outline };
  });
  const points = [...drawing.points, place];
  const arc = arcBetween(drawing, a, b);
  if (arc === null) return { drawing: { ...drawing, points, patches }, vertex };
  const rest = (drawing.arcs ?? []).filter((other) => other !== arc);
  const arcs = [...rest, { a, b: vertex, centre: arc.centre }, { a: vertex, b, centre: arc.centre }];
  return { drawing: { ...drawing, points, patches, arcs }, vertex };
}

/** A new vertex somewhere inside, on no edge yet. */
export function withLooseVertex(drawing: Drawing, place: Point): WithVertex {
  const known = drawing.points.findIndex((point) => isOneVertex(point, place));
  if (known >= 0) return { drawing, vertex: known };
  return { drawing: { ...drawing, points: [...drawing.points, place] }, vertex: drawing.points.length };
}

/**
 * The drawing without what nothing needs any more: vertices in the middle of a straight edge that no third edge meets,
 * vertices of no patch, arcs of no edge. Numbers of the vertices that stay are given anew, in their old order.
 */
export function tidied(drawing: Drawing): Drawing {
  const neighbours = new Map<number, Set<number>>();
  for (const [a, b] of edgesOf(drawing)) {
    neighbours.set(a, (neighbours.get(a) ?? new Set()).add(b));
    neighbours.set(b, (neighbours.get(b) ?? new Set()).add(a));
  }
  const idle = (vertex: number) => {
    const [a, b, ...more] = neighbours.get(vertex) ?? [];
    if (a === undefined || b === undefined || more.length > 0) return false;
    return straightThrough(drawing, a, vertex, b);
  };
  const kept = drawing.points.flatMap((_, vertex) => (neighbours.has(vertex) && !idle(vertex) ? [vertex] : []));
  const now = new Map(kept.map((vertex, index) => [vertex, index]));
  const patches = drawing.patches.map((patch) => ({
    ...patch,
    outline: patch.outline.flatMap((vertex) => now.get(vertex) ?? []),
  }));
  const points = kept.map((vertex) => pointAt(drawing, vertex));
  const arcs = joinedArcs(drawing, idle).flatMap(({ a, b, centre }) => {
    const [from, to] = [now.get(a), now.get(b)];
    return from === undefined || to === undefined ? [] : [{ a: from, b: to, centre }];
  });
  const { arcs: _, ...rest } = drawing;
  const plain = { ...rest, points, patches };
  return arcs.length === 0 ? plain : { ...plain, arcs };
}

function straightThrough(drawing: Drawing, a: number, vertex: number, b: number): boolean {
  const [first, second] = [arcBetween(drawing, a, vertex), arcBetween(drawing, vertex, b)];
  if (first !== null || second !== null) return false;
  const { along, off } = beside(pointAt(drawing, vertex), pointAt(drawing, a), pointAt(drawing, b));
  return off < 1e-9 && along > 0 && along < 1;
}

/** Arcs keep their vertices: two arcs of one circle that meet at an idle vertex are left as two. */
function joinedArcs(drawing: Drawing, idle: (vertex: number) => boolean): readonly Arc[] {
  const edges = new Set(edgesOf(drawing).map(([a, b]) => (a < b ? `${a} ${b}` : `${b} ${a}`)));
  return (drawing.arcs ?? []).filter(({ a, b }) => {
    return edges.has(a < b ? `${a} ${b}` : `${b} ${a}`) && !idle(a) && !idle(b);
  });
}
