import { accept, type Maybe, refuse } from '../measure/finding.ts';
import { arcBetween, arcMiddle, arcPoints, outlinePoints, pointAt } from './curve.ts';
import { type Drawing, doubleArea, type Patch } from './drawing.ts';
import { beside, isInside, isOneVertex, sideOf } from './near.ts';
import { placeText } from './spot.ts';
import type { Point } from './turn.ts';
import { edgesOf, withLooseVertex, withVertexAt } from './vertex.ts';

/** A cut through one patch, from a place on its outline to another, in grid units. */
export interface Cut {
  readonly from: Point;
  readonly to: Point;
  /** Corners on its way, inside the patch. */
  readonly through?: readonly Point[];
  /** The cut is an arc about this place, the shorter way round; it then has no corners on its way. */
  readonly centre?: Point;
}

/**
 * Splits one patch in two. The part to the left of the cut (looking from its start to its end) keeps the patch's place in the
 * list and its role; the part to the right comes last, with the new role.
 * @throws RangeError when it cannot be; ask `maybeSplitPatch` first where a person's hand may slip
 */
export function splitPatch(drawing: Drawing, patch: number, cut: Cut, role: string): Drawing {
  const result = maybeSplitPatch(drawing, patch, cut, role);
  if (result.ok) return result.value;
  throw new RangeError(result.findings.map(({ what }) => what).join(' '));
}

/** The same as `splitPatch`, or why it cannot be, in words for the screen. */
export function maybeSplitPatch(drawing: Drawing, patch: number, cut: Cut, role: string): Maybe<Drawing> {
  if (drawing.patches[patch] === undefined) return refuse('There is no such patch to cut.', 'patches');
  const start = withVertexAt(drawing, cut.from);
  if (start === null) return refuse(`The cut does not start on an edge at ${placeText(cut.from)}.`, 'from');
  const end = withVertexAt(start.drawing, cut.to);
  if (end === null) return refuse(`The cut does not end on an edge at ${placeText(cut.to)}.`, 'to');
  if (start.vertex === end.vertex) return refuse('The cut ends where it starts.', 'to');
  const outline = (end.drawing.patches[patch] as Patch).outline;
  for (const [vertex, place, where] of [
    [start.vertex, cut.from, 'from'],
    [end.vertex, cut.to, 'to'],
  ] as const) {
    if (!outline.includes(vertex)) return refuse(`${placeText(place)} is not on the outline of the patch.`, where);
  }
  const wrong = runsInside(end.drawing, patch, start.vertex, end.vertex, cut);
  if (wrong !== null) return wrong;
  return accept(cutThrough(apart(end.drawing, start.vertex, end.vertex), patch, start.vertex, end.vertex, cut, role));
}

/**
 * An edge is known by its two vertices, so two edges between the same two must not be: an arc that joins the ends of a cut
 * already is given a vertex in its middle.
 */
function apart(drawing: Drawing, from: number, to: number): Drawing {
  const arc = arcBetween(drawing, from, to);
  if (arc === null) return drawing;
  const divided = withVertexAt(drawing, arcMiddle(pointAt(drawing, from), pointAt(drawing, to), arc.centre));
  return divided?.drawing ?? drawing;
}

function areJoined(drawing: Drawing, a: number, b: number): boolean {
  return edgesOf(drawing).some(([p, q]) => (p === a && q === b) || (p === b && q === a));
}

/** The way of the cut as points, its ends among them. */
function wayOf(drawing: Drawing, from: number, to: number, cut: Cut): readonly Point[] {
  const [start, end] = [pointAt(drawing, from), pointAt(drawing, to)];
  const between = cut.centre === undefined ? (cut.through ?? []) : arcPoints(start, end, cut.centre);
  return [start, ...between, end];
}

/** Why a cut does not run inside its patch from end to end; null when it does. */
function runsInside(
  drawing: Drawing,
  patch: number,
  from: number,
  to: number,
  cut: Cut,
): ReturnType<typeof refuse> | null {
  const way = wayOf(drawing, from, to, cut);
  const outline = outlinePoints(drawing, drawing.patches[patch] as Patch);
  if (cut.centre !== undefined && cut.through !== undefined)
    return refuse('An arc has no corners on its way.', 'through');
  if (cut.centre !== undefined && !sameRadius(way[0] as Point, way.at(-1) as Point, cut.centre)) {
    return refuse('The ends of the arc are not equally far from its centre.', 'centre');
  }
  for (let i = 1; i < way.length; i += 1) {
    const [a, b] = [way[i - 1] as Point, way[i] as Point];
    if (isOneVertex(a, b)) return refuse(`The cut stands still at ${placeText(a)}.`, 'through');
    if (!segmentInside(a, b, outline))
      return refuse(`The cut leaves the patch near ${placeText(middle(a, b))}.`, 'through');
  }
  return null;
}

function sameRadius(a: Point, b: Point, centre: Point): boolean {
  return Math.abs(Math.hypot(a.x - centre.x, a.y - centre.y) - Math.hypot(b.x - centre.x, b.y - centre.y)) < 1e-3;
}

function middle(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

/** Whether the way from a to b runs inside an outline, touching it with its ends only. */
function segmentInside(a: Point, b: Point, outline: readonly Point[]): boolean {
  if (!isInside(middle(a, b), outline) || liesAlong(middle(a, b), outline)) return false;
  return outline.every((c, i) => {
    const d = outline[(i + 1) % outline.length] as Point;
    if (crosses(a, b, c, d)) return false;
    const { along, off } = beside(c, a, b);
    return !(off < 1e-9 && along > 1e-9 && along < 1 - 1e-9);
  });
}

function liesAlong(place: Point, outline: readonly Point[]): boolean {
  return outline.some((c, i) => {
    const { along, off } = beside(place, c, outline[(i + 1) % outline.length] as Point);
    return off < 1e-9 && along >= 0 && along <= 1;
  });
}

/** Whether two ways cross at a place inside both. */
function crosses(a: Point, b: Point, c: Point, d: Point): boolean {
  const apart = (p: number, q: number) => (p > 1e-9 && q < -1e-9) || (p < -1e-9 && q > 1e-9);
  return apart(sideOf(c, a, b), sideOf(d, a, b)) && apart(sideOf(a, c, d), sideOf(b, c, d));
}

function cutThrough(drawing: Drawing, patch: number, from: number, to: number, cut: Cut, role: string): Drawing {
  const between: number[] = [];
  let now = drawing;
  const ends = [pointAt(drawing, from), pointAt(drawing, to)] as const;
  const doubled = cut.centre !== undefined && areJoined(drawing, from, to);
  for (const place of doubled ? [arcMiddle(...ends, cut.centre)] : (cut.through ?? [])) {
    const added = withLooseVertex(now, place);
    now = added.drawing;
    between.push(added.vertex);
  }
  const whole = now.patches[patch] as Patch;
  const there = walk(whole.outline, from, to);
  const back = walk(whole.outline, to, from);
  // `there` follows the outline clockwise from start to end: the cut closes it on its other side, so it lies to the left.
  const left: Patch = { ...whole, outline: [...there, to, ...[...between].reverse()] };
  const right: Patch = { role, outline: [...back, from, ...between] };
  const patches = [...now.patches.map((other, i) => (i === patch ? left : other)), right];
  const cutDrawing = { ...now, patches, ...arcsWith(now, [from, ...between, to], cut.centre) };
  return ordered(cutDrawing, patch);
}

/** The arcs of a drawing with those of a cut, vertex by vertex. */
function arcsWith({ arcs }: Drawing, way: readonly number[], centre: Point | undefined): Pick<Drawing, 'arcs'> {
  if (centre === undefined) return arcs === undefined ? {} : { arcs };
  const added = way.slice(1).map((b, i) => ({ a: way[i] as number, b, centre }));
  return { arcs: [...(arcs ?? []), ...added] };
}

/** The vertices of an outline from one of its vertices up to, not with, another. */
function walk(outline: readonly number[], from: number, to: number): readonly number[] {
  const start = outline.indexOf(from);
  const turned = [...outline.slice(start), ...outline.slice(0, start)];
  return turned.slice(0, turned.indexOf(to));
}

/** Both parts must run clockwise; a cut never makes one that does not, so this is a guard against a bug. */
function ordered(drawing: Drawing, patch: number): Drawing {
  for (const part of [drawing.patches[patch], drawing.patches.at(-1)]) {
    if (part === undefined || doubleArea(outlinePoints(drawing, part)) <= 0)
      throw new RangeError('The cut leaves a part of no area');
  }
  return drawing;
}

/** The patch that holds a place; null when the place is on an edge or outside. */
export function patchAt(drawing: Drawing, place: Point): number | null {
  const index = drawing.patches.findIndex((patch) => isInside(place, outlinePoints(drawing, patch)));
  return index < 0 ? null : index;
}
