import { pointAt } from '../../../shared/drawing/curve.ts';
import type { Drawing } from '../../../shared/drawing/drawing.ts';
import { alongOf, crossings, halfway, type Leg, meetings } from '../../../shared/drawing/meet.ts';
import { beside, distance } from '../../../shared/drawing/near.ts';
import type { Point } from '../../../shared/drawing/turn.ts';
import { edgeLegs } from './edgeLegs.ts';

/** What a place is that the hand is drawn to. */
export type MarkKind = 'corner' | 'grid' | 'line' | 'middle' | 'star' | 'slant' | 'square' | 'circle';

/** A place the hand is drawn to. */
export interface SnapMark {
  readonly place: Point;
  readonly kind: MarkKind;
  readonly onEdge: boolean;
}

/** What each kind is called beside the place. */
export const MARK_WORDS: Readonly<Record<MarkKind, string>> = {
  corner: 'corner',
  grid: 'grid point',
  line: 'edge, on a grid line',
  middle: 'middle of an edge',
  star: 'eight-point mark',
  slant: 'straight or at 45° from the start',
  square: 'square to the edge',
  circle: 'on the circle',
};

export interface MarksWanted {
  /** How many parts each grid unit is divided into. */
  readonly finer: number;
  /** Marks where the points of an eight-point star meet the edge of the block. */
  readonly stars: boolean;
}

/** Nearer than this two marks are one, grid units; the first of them stays. */
const ONE_MARK = 1e-4;

/** The marks that are there before anything is begun: corners, grid points, edges on grid lines, middles of edges. */
export function marksOf(drawing: Drawing, { finer, stars }: MarksWanted): readonly SnapMark[] {
  const marks = new Marks();
  for (const point of drawing.points) marks.add(point, 'corner', true);
  const legs = edgeLegs(drawing);
  for (const leg of legs) for (const place of onGridLines(leg, drawing, finer)) marks.add(place, 'line', true);
  for (const leg of legs) marks.add(halfway(leg), 'middle', true);
  if (stars) for (const place of starPlaces(drawing)) marks.add(place, 'star', true);
  for (let down = 0; down <= drawing.height * finer; down += 1)
    for (let across = 0; across <= drawing.width * finer; across += 1)
      marks.add({ x: across / finer, y: down / finer }, 'grid', false);
  return marks.all;
}

/** The marks that a begun cut adds: where the eight directions from its start, and squares onto edges, meet the drawing. */
export function marksFrom(drawing: Drawing, from: Point): readonly SnapMark[] {
  const marks = new Marks();
  const far = 2 * (drawing.width + drawing.height);
  for (let eighth = 0; eighth < 8; eighth += 1) {
    const [dx, dy] = [Math.cos((eighth * Math.PI) / 4), Math.sin((eighth * Math.PI) / 4)];
    const ray = { from, to: { x: from.x + far * dx, y: from.y + far * dy } };
    for (const { place } of meetings(drawing, ray)) marks.add(place, 'slant', true);
  }
  for (const leg of edgeLegs(drawing)) {
    if (leg.centre !== undefined) continue;
    const { along } = beside(from, leg.from, leg.to);
    if (along <= 0 || along >= 1) continue;
    const place = {
      x: leg.from.x + along * (leg.to.x - leg.from.x),
      y: leg.from.y + along * (leg.to.y - leg.from.y),
    };
    marks.add(place, 'square', true);
  }
  return marks.all.filter(({ place }) => distance(place, from) > ONE_MARK);
}

/** The marks on an opened compass's circle: where it meets the edges. */
export function marksOnCircle(drawing: Drawing, centre: Point, start: Point): readonly SnapMark[] {
  const marks = new Marks();
  const circle = { from: start, to: start, centre };
  for (const leg of edgeLegs(drawing))
    for (const place of crossings(circle, leg)) if (alongOf(leg, place) !== null) marks.add(place, 'circle', true);
  return marks.all.filter(({ place }) => distance(place, start) > ONE_MARK);
}

/** Of the marks, the one the hand means: the nearest within reach, corners before other places; without any, the nearest. */
export function snapTo(at: Point, marks: readonly SnapMark[], reach: number): SnapMark | null {
  let best: { readonly mark: SnapMark; readonly away: number } | null = null;
  for (const mark of marks) {
    const real = distance(mark.place, at);
    const away = real <= reach ? real * PULL[mark.kind] : reach + real;
    if (best === null || away < best.away) best = { mark, away };
  }
  return best?.mark ?? null;
}

/** How far a mark seems, for its kind: corners draw the hand more than middles do. */
const PULL: Readonly<Record<MarkKind, number>> = {
  corner: 0.5,
  grid: 0.8,
  line: 0.9,
  star: 0.8,
  circle: 0.8,
  slant: 1,
  middle: 1.1,
  square: 1.2,
};

class Marks {
  readonly all: SnapMark[] = [];
  readonly #taken = new Set<string>();

  add(place: Point, kind: MarkKind, onEdge: boolean): void {
    const cell = (dx: number, dy: number) =>
      `${Math.round(place.x / ONE_MARK / 4) + dx} ${Math.round(place.y / ONE_MARK / 4) + dy}`;
    if (this.#taken.has(cell(0, 0))) return;
    for (const dx of [-1, 0, 1]) for (const dy of [-1, 0, 1]) this.#taken.add(cell(dx, dy));
    this.all.push({ place, kind, onEdge });
  }
}

/** Where an edge crosses the lines of the grid. */
function onGridLines(leg: Leg, drawing: Drawing, finer: number): readonly Point[] {
  const { width, height } = drawing;
  const upright = Array.from({ length: width * finer + 1 }, (_, i) => ({
    from: { x: i / finer, y: 0 },
    to: { x: i / finer, y: height },
  }));
  const level = Array.from({ length: height * finer + 1 }, (_, i) => ({
    from: { x: 0, y: i / finer },
    to: { x: width, y: i / finer },
  }));
  return [...upright, ...level].flatMap((line) =>
    crossings(line, leg).filter((place) => {
      const along = alongOf(leg, place);
      return along !== null && along > 0 && along < 1;
    }),
  );
}

/**
 * Where an eight-point star's points meet the sides of its square: a side divided 1 : √2 : 1, so that each point is half the
 * diagonal from the far corner.
 */
function starPlaces({ width, height }: Drawing): readonly Point[] {
  const cut = (length: number) => [length * (1 - Math.SQRT1_2), length * Math.SQRT1_2];
  const top = cut(width).flatMap((x) => [
    { x, y: 0 },
    { x, y: height },
  ]);
  const sides = cut(height).flatMap((y) => [
    { x: 0, y },
    { x: width, y },
  ]);
  return [...top, ...sides];
}

/** A corner of the drawing as a mark. */
export function cornerMarks(drawing: Drawing): readonly SnapMark[] {
  return drawing.points.map((_, vertex) => ({ place: pointAt(drawing, vertex), kind: 'corner', onEdge: true }));
}
