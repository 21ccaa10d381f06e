import { buildDrawing } from '../../drawing/build.ts';
import { arcBetween, arcPoints, pointAt } from '../../drawing/curve.ts';
import type { Drawing } from '../../drawing/drawing.ts';
import type { Point } from '../../drawing/turn.ts';
import type { Inches } from '../../measure/inches.ts';
import type { Side } from '../../recipe/schema.ts';
import type { Unit } from '../piecing.ts';
import { unitPolygons } from '../unitShape.ts';
import { type PatchEdge, type Points, withAllowance } from './allowance.ts';

/** Some patches of a unit, by their numbers. */
export type Part = ReadonlySet<number>;

/**
 * A unit as cloth in the making: its patches where they will lie in the finished unit, in inches, and how far the cloth of
 * each reaches beyond its finished edges. At a seam that is always the seam allowance.
 */
export interface Work {
  readonly drawing: Drawing;
  readonly seam: Inches;
  /** What each patch has beyond the edge of the unit: the seam allowance, or more where it is trimmed later. */
  readonly rim: (patch: number, side: Side) => Inches;
  /** Pieces cut from squares have sharp points, pieces cut round a template blunted ones. */
  readonly points: (patch: number) => Points;
  /** The patch that walks from a to b on its way round; undefined outside. */
  readonly owner: (a: number, b: number) => number | undefined;
}

export interface WorkOptions {
  readonly seam: Inches;
  readonly rim?: Work['rim'];
  /** Alike for every patch, or told of each. */
  readonly points?: Points | Work['points'];
}

/**
 * A unit about to be made.
 * @param grid inches of one grid unit
 */
export function workOf(unit: Unit, grid: Inches, { seam, rim, points = 'pointed' }: WorkOptions): Work {
  const drawing = unit.kind === 'pieced' ? unit.drawing : buildDrawing(unit.width, unit.height, unitPolygons(unit));
  const owners = new Map<string, number>();
  drawing.patches.forEach(({ outline }, patch) => {
    outline.forEach((a, i) => {
      owners.set(`${a}>${outline[(i + 1) % outline.length]}`, patch);
    });
  });
  const pointsOf = typeof points === 'string' ? () => points : points;
  const owner = (a: number, b: number) => owners.get(`${a}>${b}`);
  return { drawing: inInches(drawing, grid), seam, rim: rim ?? (() => seam), points: pointsOf, owner };
}

function inInches(drawing: Drawing, grid: Inches): Drawing {
  const point = ({ x, y }: Point): Point => ({ x: x * grid, y: y * grid });
  const moved = {
    ...drawing,
    width: drawing.width * grid,
    height: drawing.height * grid,
    points: drawing.points.map(point),
  };
  if (drawing.arcs === undefined) return moved;
  return { ...moved, arcs: drawing.arcs.map((arc) => ({ ...arc, centre: point(arc.centre) })) };
}

export function roleOf(work: Work, patch: number): string {
  return (work.drawing.patches[patch] as Drawing['patches'][number]).role;
}

/** Every patch of the unit. */
export function whole(work: Work): Part {
  return new Set(work.drawing.patches.map((_, patch) => patch));
}

export function both(a: Part, b: Part): Part {
  return new Set([...a, ...b]);
}

/**
 * The cloth of a patch that is sewn into a part: cut off at its seams with the rest of the part, for there the other side
 * begins, and with its allowance everywhere else. With nothing but itself in the part it is the piece as cut.
 * @param fineness straight pieces a quarter of a circle is drawn with
 */
export function clothOf(work: Work, patch: number, part: Part, fineness?: number): readonly Point[] {
  const { outline } = work.drawing.patches[patch] as Drawing['patches'][number];
  const edges = outline.map((a, i): PatchEdge => {
    const b = outline[(i + 1) % outline.length] as number;
    const beyond = work.owner(b, a);
    const by = beyond === undefined ? rimOf(work, patch, a, b) : part.has(beyond) ? 0 : work.seam;
    const arc = work.drawing.arcs === undefined ? null : arcBetween(work.drawing, a, b);
    const from = pointAt(work.drawing, a);
    return arc === null ? { from, by } : { from, by, centre: arc.centre };
  });
  return withAllowance(edges, work.points(patch), fineness);
}

/** The points on the way along an edge, without its ends: none for a straight one. */
export function between(drawing: Drawing, a: number, b: number, fineness?: number): readonly Point[] {
  const arc = drawing.arcs === undefined ? null : arcBetween(drawing, a, b);
  return arc === null ? [] : arcPoints(pointAt(drawing, a), pointAt(drawing, b), arc.centre, fineness);
}

function rimOf(work: Work, patch: number, a: number, b: number): Inches {
  const side = sideOf(work.drawing, a, b);
  return side === null ? work.seam : work.rim(patch, side);
}

/** The side of the unit an edge lies on; null for an edge elsewhere. */
export function sideOf({ points, width, height }: Drawing, a: number, b: number): Side | null {
  const [p, q] = [points[a] as Point, points[b] as Point];
  const both = (of: 'x' | 'y', at: Inches) => Math.abs(p[of] - at) < ON_RIM && Math.abs(q[of] - at) < ON_RIM;
  if (both('y', 0)) return 'top';
  if (both('x', width)) return 'right';
  if (both('y', height)) return 'bottom';
  return both('x', 0) ? 'left' : null;
}

const ON_RIM = 1e-6;

/** The vertices along the seam between two parts, with the first part on its left. */
export function seamBetween(work: Work, a: Part, b: Part): readonly number[] {
  const onward = new Map<number, number>();
  for (const patch of b) {
    const { outline } = work.drawing.patches[patch] as Drawing['patches'][number];
    outline.forEach((from, i) => {
      const to = outline[(i + 1) % outline.length] as number;
      const beyond = work.owner(to, from);
      if (beyond !== undefined && a.has(beyond)) onward.set(from, to);
    });
  }
  const ends = new Set(onward.values());
  const [start] = [...onward.keys()].filter((vertex) => !ends.has(vertex));
  const way = start === undefined ? [] : [start];
  for (let on = onward.get(way[0] as number); on !== undefined && !way.includes(on); on = onward.get(on)) way.push(on);
  return way;
}
