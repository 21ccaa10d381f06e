import type { Drawing, Patch } from '../../drawing/drawing.ts';
import { distance } from '../../drawing/near.ts';
import type { Point } from '../../drawing/turn.ts';
import { type Mesh, meshOf } from '../find/seams/mesh.ts';

/** Some patches of a drawing that make one convex part. */
export interface Region {
  readonly key: string;
  readonly patches: readonly number[];
}

/** A part cut across by one straight seam. */
export interface Cut {
  readonly parts: readonly [Region, Region];
  /** The vertices along it, from one end to the other. */
  readonly seam: readonly number[];
}

/** A drawing with the straight lines its edges lie on. */
export interface Regions {
  readonly drawing: Drawing;
  readonly whole: Region;
  readonly lines: readonly Line[];
}

/** Vertices that follow one another along edges without a corner, as far as edges run on. */
interface Line {
  readonly vertices: readonly number[];
  /** For every patch, on which side of the line it lies: 0 when the line runs through it. */
  readonly sides: readonly number[];
}

export function regionOf(drawing: Drawing): Regions {
  const mesh = meshOf(drawing);
  const lines = waysOf(mesh).map((vertices): Line => ({ vertices, sides: sidesOf(drawing, vertices) }));
  return { drawing, whole: region(drawing.patches.map((_, index) => index)), lines };
}

function region(patches: readonly number[]): Region {
  return { key: patches.join(' '), patches };
}

/** Every straight way along edges, as long as it goes, each once. */
function waysOf(mesh: Mesh): readonly (readonly number[])[] {
  const seen = new Set<number>();
  const ways: (readonly number[])[] = [];
  mesh.drawing.points.forEach((_, start) => {
    for (const to of mesh.next(start)) {
      if (seen.has(mesh.edge(start, to)) || isOuter(mesh, start, to)) continue;
      const forth = runOn(mesh, start, to);
      const back = runOn(mesh, to, start);
      const way = [...[...back].reverse(), ...forth.slice(2)];
      way.slice(1).forEach((b, i) => {
        seen.add(mesh.edge(way[i] as number, b));
      });
      ways.push(way);
    }
  });
  return ways;
}

function isOuter(mesh: Mesh, a: number, b: number): boolean {
  return mesh.owner(a, b) === undefined || mesh.owner(b, a) === undefined;
}

function runOn(mesh: Mesh, from: number, to: number): readonly number[] {
  const way = [from, to];
  for (let on = mesh.onward(from, to); on !== undefined; ) {
    way.push(on);
    const [before, here] = way.slice(-2) as [number, number];
    on = mesh.onward(before, here);
  }
  return way;
}

/** A corner nearer to a line than this is on it, as a share of the drawing. */
const ON_LINE = 1e-4;

function sidesOf(drawing: Drawing, vertices: readonly number[]): readonly number[] {
  const at = (index: number) => drawing.points[index] as Point;
  const [from, to] = [at(vertices[0] as number), at(vertices.at(-1) as number)];
  const length = distance(from, to);
  const slack = ON_LINE * Math.max(drawing.width, drawing.height);
  return drawing.patches.map(({ outline }: Patch) => {
    const off = outline.map((index) => {
      const { x, y } = at(index);
      return ((to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x)) / length;
    });
    const [right, left] = [off.some((by) => by > slack), off.some((by) => by < -slack)];
    return right === left ? 0 : right ? 1 : -1;
  });
}

/**
 * Every way to cut a part across, the one to prefer first: a part that one patch can be cut off from by the longest seam,
 * then the most even ones. Equal lines are told apart by the vertices on them.
 */
export function cutsOf({ drawing, lines }: Regions, part: Region): readonly Cut[] {
  const found = new Map<string, Cut & { readonly length: number }>();
  for (const { vertices, sides } of lines) {
    if (part.patches.some((patch) => sides[patch] === 0)) continue;
    const one = part.patches.filter((patch) => sides[patch] === -1);
    const other = part.patches.filter((patch) => sides[patch] === 1);
    if (one.length === 0 || other.length === 0) continue;
    const parts = [region(one), region(other)] as const;
    if (found.has(parts[0].key)) continue;
    const seam = seamIn(drawing, vertices, one, other);
    if (seam.length < 2) continue;
    const length = distance(drawing.points[seam[0] as number] as Point, drawing.points[seam.at(-1) as number] as Point);
    found.set(parts[0].key, { parts, seam, length });
  }
  const smaller = ({ parts }: Cut) => Math.min(parts[0].patches.length, parts[1].patches.length);
  return [...found.values()].sort((a, b) => {
    const [single, other] = [smaller(a) === 1, smaller(b) === 1];
    if (single !== other) return single ? -1 : 1;
    return single ? b.length - a.length : smaller(b) - smaller(a) || b.length - a.length;
  });
}

/** The vertices of a line between two parts: those both have. */
function seamIn(
  { patches }: Drawing,
  vertices: readonly number[],
  one: readonly number[],
  other: readonly number[],
): readonly number[] {
  const corners = (part: readonly number[]) => new Set(part.flatMap((patch) => patches[patch]?.outline ?? []));
  const [a, b] = [corners(one), corners(other)];
  return vertices.filter((vertex) => a.has(vertex) && b.has(vertex));
}
