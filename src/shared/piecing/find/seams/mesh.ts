import { arcBetween, pointAt } from '../../../drawing/curve.ts';
import type { Drawing, Patch } from '../../../drawing/drawing.ts';
import type { Point } from '../../../drawing/turn.ts';

/** Some patches of a drawing, by their numbers. */
export type PatchSet = ReadonlySet<number>;

/** A drawing as edges between vertices, each edge with the patch on either side. */
export interface Mesh {
  readonly drawing: Drawing;
  /** Vertices an edge leads to. */
  next(vertex: number): readonly number[];
  /** The patch that walks from a to b on its way round; undefined outside. */
  owner(a: number, b: number): number | undefined;
  isCurved(a: number, b: number): boolean;
  /** The vertex to which the way from `before` through `vertex` runs on without a corner; undefined when none does. */
  onward(before: number, vertex: number): number | undefined;
  /** The edges of a patch, in order: their number, and the patch beyond each; undefined outside. */
  sides(patch: number): readonly Side[];
  /** The number of the edge between two vertices, whichever way it is walked. */
  edge(a: number, b: number): number;
}

interface Side {
  readonly from: number;
  readonly to: number;
  readonly edge: number;
  readonly beyond: number | undefined;
}

export function meshOf(drawing: Drawing): Mesh {
  const size = drawing.points.length;
  const owners = new Map<number, number>();
  const next: number[][] = drawing.points.map(() => []);
  drawing.patches.forEach((patch, index) => {
    for (const [a, b] of edgesOf(patch)) {
      owners.set(a * size + b, index);
      if (!next[a]?.includes(b)) next[a]?.push(b);
      if (!next[b]?.includes(a)) next[b]?.push(a);
    }
  });
  const edge = (a: number, b: number) => Math.min(a, b) * size + Math.max(a, b);
  const sides = drawing.patches.map((patch) =>
    edgesOf(patch).map(([from, to]) => ({ from, to, edge: edge(from, to), beyond: owners.get(to * size + from) })),
  );
  const onward = straightWays(drawing, next);
  return {
    drawing,
    next: (vertex) => next[vertex] ?? [],
    owner: (a, b) => owners.get(a * size + b),
    isCurved: (a, b) => drawing.arcs !== undefined && arcBetween(drawing, a, b) !== null,
    onward: (before, vertex) => onward.get(before * size + vertex),
    sides: (patch) => sides[patch] ?? [],
    edge,
  };
}

function edgesOf({ outline }: Patch): readonly (readonly [number, number])[] {
  return outline.map((a, i) => [a, outline[(i + 1) % outline.length] as number] as const);
}

/** Two directions nearer than this are one, radians: less than any two lines of a drawn grid differ by. */
const ONE_DIRECTION = 2e-3;

/** For every edge walked one way, where it runs on at its end. */
function straightWays(drawing: Drawing, next: readonly (readonly number[])[]): ReadonlyMap<number, number> {
  const ways = new Map<number, number>();
  next.forEach((ends, vertex) => {
    const directions = ends.map((end) => directionOf(drawing, vertex, end));
    ends.forEach((before, i) => {
      const after = ends.find((_, j) => j !== i && isOpposite(directions[i] as number, directions[j] as number));
      if (after !== undefined) ways.set(before * drawing.points.length + vertex, after);
    });
  });
  return ways;
}

function isOpposite(a: number, b: number): boolean {
  const turn = a - b - Math.PI;
  return Math.abs(turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI))) < ONE_DIRECTION;
}

/** The direction in which an edge leaves a vertex, in radians; an arc leaves along its tangent. */
function directionOf(drawing: Drawing, from: number, to: number): number {
  const [a, b] = [pointAt(drawing, from), pointAt(drawing, to)];
  const arc = drawing.arcs === undefined ? null : arcBetween(drawing, from, to);
  if (arc === null) return Math.atan2(b.y - a.y, b.x - a.x);
  const out = { x: a.x - arc.centre.x, y: a.y - arc.centre.y };
  // Of the two ways along the tangent, the one that leads to the other end; for half a circle, clockwise on screen.
  const ahead = out.x * (b.y - a.y) - out.y * (b.x - a.x);
  return ahead < -1e-9 ? Math.atan2(-out.x, out.y) : Math.atan2(out.x, -out.y);
}

/** Vertices an edge inside the part leads to: a patch of the part on both sides of it. */
export function inner(mesh: Mesh, part: PatchSet, vertex: number): readonly number[] {
  return mesh.next(vertex).filter((to) => isInner(mesh, part, vertex, to));
}

export function isInner(mesh: Mesh, part: PatchSet, a: number, b: number): boolean {
  const [one, other] = [mesh.owner(a, b), mesh.owner(b, a)];
  return one !== undefined && other !== undefined && part.has(one) && part.has(other);
}

/** Every vertex on the outline of a part, in the order of its patches. */
export function rimOf(mesh: Mesh, part: PatchSet): ReadonlySet<number> {
  const rim = new Set<number>();
  for (const patch of part) {
    for (const { from, to, beyond } of mesh.sides(patch)) {
      if (beyond === undefined || !part.has(beyond)) rim.add(from).add(to);
    }
  }
  return rim;
}

/** A part cut along paths of edges: what still hangs together, each in the order of its first patch. */
export function piecesOf(mesh: Mesh, part: PatchSet, cuts: readonly (readonly number[])[]): readonly PatchSet[] {
  const closed = new Set(cuts.flatMap((path) => path.slice(1).map((b, i) => mesh.edge(path[i] as number, b))));
  const left = new Set(part);
  const pieces: Set<number>[] = [];
  for (const first of left) {
    const piece = new Set([first]);
    for (const patch of piece) {
      left.delete(patch);
      for (const { edge, beyond } of mesh.sides(patch)) {
        if (beyond !== undefined && left.has(beyond) && !closed.has(edge)) piece.add(beyond);
      }
    }
    pieces.push(piece);
  }
  return pieces;
}

/** Where a path lies, for an order that depends on the drawing alone: the middle of its ends. */
export function middleOf(mesh: Mesh, path: readonly number[]): Point {
  const [a, b] = [pointAt(mesh.drawing, path[0] as number), pointAt(mesh.drawing, path.at(-1) as number)];
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}
