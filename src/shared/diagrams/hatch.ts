import type { Point } from '../drawing/turn.ts';
import type { Hatch } from './figure.ts';

/** One stroke of a hatch, in the unit of the outlines. A dot is a stroke of no length. */
export interface Segment {
  readonly from: Point;
  readonly to: Point;
}

type Outlines = readonly (readonly Point[])[];

/** Strokes that touch end to end become one: the shortest gap that is still a gap, in the outlines' unit. */
const TOUCHING = 1e-6;

/**
 * The strokes of a hatch inside outlines, worked out rather than clipped by the reader's program, because not every one
 * can. Outlines are closed by themselves, may be non-convex and may hold holes (even-odd); lines run through from one
 * patch to the next, so a whole quilt's patches of one fabric make few strokes.
 * @param outlines corners in inches
 * @param hatch its gap is in points
 * @param pointsPerInch the scale the figure is drawn at
 */
export function hatchSegments(outlines: Outlines, hatch: Hatch, pointsPerInch: number): readonly Segment[] {
  const gap = hatch.gap / pointsPerInch;
  if (!(gap > 0 && Number.isFinite(gap))) return [];
  switch (hatch.kind) {
    case 'none':
    case 'solid':
      return [];
    case 'lines':
      return strokes(outlines, hatch.degrees, gap);
    case 'crossed':
      return [...strokes(outlines, hatch.degrees, gap), ...strokes(outlines, hatch.degrees + 90, gap)];
    case 'dots':
      return dots(outlines, hatch.degrees, gap);
  }
}

/** A hatch line by its number, and where along it cloth begins and ends, by turns. */
type Runs = ReadonlyMap<number, readonly number[]>;

/** The hatch's own axes: `along` its lines (counter-clockwise from the right), `across` from one line to the next. */
interface Axes {
  readonly along: Point;
  readonly across: Point;
}

function axes(degrees: number): Axes {
  const angle = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return { along: { x: cos, y: -sin }, across: { x: sin, y: cos } };
}

function dot(a: Point, b: Point): number {
  return a.x * b.x + a.y * b.y;
}

/** Lines lie half a gap off the origin: the edges of upright patches then seldom fall on a line. */
function lineAt(index: number, gap: number): number {
  return (index + 0.5) * gap;
}

function crossings(outlines: Outlines, { along, across }: Axes, gap: number): Runs {
  const found = new Map<number, number[]>();
  for (const outline of outlines) {
    let a = outline[outline.length - 1];
    for (const b of outline) {
      if (a !== undefined) addCrossings(found, dot(a, along), dot(a, across), dot(b, along), dot(b, across), gap);
      a = b;
    }
  }
  for (const runs of found.values()) runs.sort((p, q) => p - q);
  return found;
}

/** An edge counts its lower end and not its upper one, so that a corner on a line is met once. */
function addCrossings(found: Map<number, number[]>, ua: number, va: number, ub: number, vb: number, gap: number): void {
  const low = Math.min(va, vb);
  const high = Math.max(va, vb);
  const slope = (ub - ua) / (vb - va);
  for (let index = Math.ceil(low / gap - 0.5); lineAt(index, gap) < high; index += 1) {
    const at = ua + (lineAt(index, gap) - va) * slope;
    const runs = found.get(index);
    if (runs === undefined) found.set(index, [at]);
    else runs.push(at);
  }
}

/** Begin and end of each stretch of cloth along one line, stretches that touch made one. */
function stretches(runs: readonly number[]): readonly (readonly [number, number])[] {
  const found: [number, number][] = [];
  for (let i = 0; i + 1 < runs.length; i += 2) {
    const start = runs[i] as number;
    const end = runs[i + 1] as number;
    const last = found[found.length - 1];
    if (last !== undefined && start - last[1] < TOUCHING) last[1] = end;
    else if (end - start > TOUCHING) found.push([start, end]);
  }
  return found;
}

function place(u: number, v: number, { along, across }: Axes): Point {
  return { x: u * along.x + v * across.x, y: u * along.y + v * across.y };
}

function strokes(outlines: Outlines, degrees: number, gap: number): readonly Segment[] {
  const own = axes(degrees);
  const made: Segment[] = [];
  for (const [index, runs] of crossings(outlines, own, gap)) {
    const v = lineAt(index, gap);
    for (const [start, end] of stretches(runs)) made.push({ from: place(start, v, own), to: place(end, v, own) });
  }
  return made;
}

/** Dots stand on the lines, every other line half a gap along, and keep clear of the edges by a sixth of a gap. */
function dots(outlines: Outlines, degrees: number, gap: number): readonly Segment[] {
  const own = axes(degrees);
  const clear = gap / 6;
  const made: Segment[] = [];
  for (const [index, runs] of crossings(outlines, own, gap)) {
    const shift = index % 2 === 0 ? 0.25 : 0.75;
    for (const [start, end] of stretches(runs)) {
      for (let n = Math.ceil((start + clear) / gap - shift); (n + shift) * gap <= end - clear; n += 1) {
        const at = place((n + shift) * gap, lineAt(index, gap), own);
        made.push({ from: at, to: at });
      }
    }
  }
  return made;
}
