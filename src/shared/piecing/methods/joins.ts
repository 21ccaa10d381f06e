import { pointAt } from '../../drawing/curve.ts';
import { distance, sideOf } from '../../drawing/near.ts';
import type { Point } from '../../drawing/turn.ts';
import type { Inches } from '../../measure/inches.ts';
import { between, both, clothOf, type Part, roleOf, seamBetween, type Work } from '../allowance/work.ts';
import type { Cloth, SceneArrow, SceneLine } from '../scene.ts';
import { type Picture, picture, together } from './picture.ts';
import { cloth, line, press } from './pieces.ts';

/** Figures of two parts sewn to each other, whatever their shape: laid right sides together, sewn, opened. */

/** A part sewn and opened, its allowance all round; one patch alone is the piece as cut. */
export function openedPart(work: Work, part: Part): Picture {
  return picture({ cloth: [...part].map((patch) => cloth(roleOf(work, patch), clothOf(work, patch, part))) });
}

/** Where a straight stretch of a seam begins and ends. */
export interface Stretch {
  readonly from: Point;
  readonly to: Point;
}

/** The seam between two parts as its straight stretches, one unless it has corners; arcs as many short ones. */
export function stretchesOf(work: Work, seam: readonly number[]): readonly Stretch[] {
  const points = seam.flatMap((a, i) => {
    const b = seam[i + 1];
    return b === undefined ? [pointAt(work.drawing, a)] : [pointAt(work.drawing, a), ...between(work.drawing, a, b)];
  });
  const found: Stretch[] = [];
  points.slice(1).forEach((to, i) => {
    const from = points[i] as Point;
    const last = found.at(-1);
    if (last !== undefined && isStraight(last.from, from, to)) found[found.length - 1] = { from: last.from, to };
    else found.push({ from, to });
  });
  return found;
}

function isStraight(a: Point, b: Point, c: Point): boolean {
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, c.x - b.x, c.y - b.y];
  return Math.abs(ux * vy - uy * vx) < 1e-9 * Math.hypot(ux, uy) * Math.hypot(vx, vy) + 1e-12;
}

/** A part turned over the line of a seam, so that it lies face down where its edge meets the other's. */
export function faceDown(work: Work, part: Part, over: Stretch): Picture {
  const mirrored = openedPart(work, part).cloth.map(
    (one): Cloth => ({ ...one, side: 'wrong', corners: one.corners.map((point) => mirror(point, over)).reverse() }),
  );
  return picture({ cloth: mirrored });
}

function mirror(point: Point, { from, to }: Stretch): Point {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const along = ((point.x - from.x) * dx + (point.y - from.y) * dy) / (dx * dx + dy * dy);
  const foot = { x: from.x + along * dx, y: from.y + along * dy };
  return { x: 2 * foot.x - point.x, y: 2 * foot.y - point.y };
}

/** `added` lies face down on `first`, their edges matched, and is sewn to it from raw edge to raw edge. */
export function sewnOn(work: Work, first: Part, added: Part): Picture {
  const [over] = stretchesOf(work, seamBetween(work, first, added)) as [Stretch];
  return sewnOver(work, first, added, over);
}

/** The same along one straight stretch of a seam, all of it or from one share of its length to another. */
export function sewnOver(work: Work, first: Part, added: Part, over: Stretch, shares?: Shares): Picture {
  const [lower, upper] = [openedPart(work, first), faceDown(work, added, over)];
  const whole = sewnLine(over, lower.cloth, upper.cloth);
  const at = (share: number): Point => ({
    x: over.from.x + share * (over.to.x - over.from.x),
    y: over.from.y + share * (over.to.y - over.from.y),
  });
  const { from = null, to = null } = shares ?? {};
  const sewn = line('sewn', from === null ? whole.from : at(from), to === null ? whole.to : at(to));
  return together(lower, foldedBack(upper, lower, over), picture({ lines: [sewn] }));
}

/** Where on a stretch sewing begins and ends; at an end left out it runs out over the raw edge. */
interface Shares {
  readonly from?: number;
  readonly to?: number;
}

/**
 * A single piece that hides all it lies on, with the corner furthest from the seam folded back, so that the right side of
 * what is below shows. Anything else is left as it is.
 */
function foldedBack(upper: Picture, lower: Picture, over: Stretch): Picture {
  const [piece, ...more] = upper.cloth;
  if (piece === undefined || more.length > 0 || !hides(piece, lower)) return upper;
  const { corners } = piece;
  const away = (point: Point) => Math.hypot(point.x - mirror(point, over).x, point.y - mirror(point, over).y);
  const far = corners.reduce((best, corner, i) => (away(corner) > away(corners[best] as Point) ? i : best), 0);
  const corner = corners[far] as Point;
  const [before, after] = [corners.at(far - 1) as Point, corners[(far + 1) % corners.length] as Point];
  const depth = Math.min(distance(corner, before), distance(corner, after)) * FOLD;
  const fold = { from: towards(corner, before, depth), to: towards(corner, after, depth) };
  const rest = corners.flatMap((one, i) => (i === far ? [fold.from, fold.to] : [one]));
  const flap = cloth(piece.role, [fold.from, fold.to, mirror(corner, fold)]);
  return picture({ cloth: [{ ...piece, corners: rest }, flap] });
}

/** How much of its shorter side a corner is folded back. */
const FOLD = 0.28;

function hides({ corners }: Cloth, lower: Picture): boolean {
  const inside = (point: Point) =>
    corners.every((a, i) => sideOf(point, a, corners[(i + 1) % corners.length] as Point) > -1e-6);
  return lower.cloth.every((piece) => piece.corners.every(inside));
}

function towards(from: Point, to: Point, length: Inches): Point {
  const share = length / distance(from, to);
  return { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
}

/** The line of a seam as far as both layers reach. */
export function sewnLine(over: Stretch, lower: readonly Cloth[], upper: readonly Cloth[]): SceneLine {
  const [a, b] = [reach(over, lower), reach(over, upper)];
  const at = (share: number): Point => ({
    x: over.from.x + share * (over.to.x - over.from.x),
    y: over.from.y + share * (over.to.y - over.from.y),
  });
  return line('sewn', at(Math.max(a.first, b.first)), at(Math.min(a.last, b.last)));
}

/** How far cloth reaches along a line: 0 and 1 are the line's own ends. */
function reach({ from, to }: Stretch, layers: readonly Cloth[]): { readonly first: number; readonly last: number } {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const off = ({ x, y }: Point) => (dx * (y - from.y) - dy * (x - from.x)) / Math.sqrt(square);
  const along = ({ x, y }: Point) => ((x - from.x) * dx + (y - from.y) * dy) / square;
  const shares = layers.flatMap(({ corners }) =>
    corners.flatMap((a, i) => {
      const b = corners[(i + 1) % corners.length] as Point;
      const [p, q] = [off(a), off(b)];
      if (Math.abs(p) < 1e-9) return [along(a)];
      if (p > 0 === q > 0 || Math.abs(q) < 1e-9) return [];
      const part = p / (p - q);
      return [along({ x: a.x + part * (b.x - a.x), y: a.y + part * (b.y - a.y) })];
    }),
  );
  return { first: Math.min(...shares), last: Math.max(...shares) };
}

/** Two parts sewn and opened, the seam pressed towards the one that was added, or towards the other. */
export function openedTo(work: Work, first: Part, added: Part, to: 'first' | 'added' = 'added'): Picture {
  const opened = openedPart(work, both(first, added));
  return together(opened, picture({ arrows: [pressArrow(work, first, added, to)] }));
}

/** From the middle of a seam across the part it is pressed to. */
export function pressArrow(
  work: Work,
  first: Part,
  added: Part,
  to: 'first' | 'added' = 'added',
  along: readonly number[] = seamBetween(work, first, added),
  share = 0.3,
): SceneArrow {
  const stretches = stretchesOf(work, withRight(work, added, along));
  const { from, to: end } = stretches[Math.floor(stretches.length / 2)] as Stretch;
  const middle = { x: (from.x + end.x) / 2, y: (from.y + end.y) / 2 };
  const length = Math.hypot(end.x - from.x, end.y - from.y);
  // The seam is walked with what was added on its right.
  const way = to === 'added' ? 1 : -1;
  const towards = { x: middle.x - (way * (end.y - from.y)) / length, y: middle.y + (way * (end.x - from.x)) / length };
  return press(middle, towards, share * depthOf(work, to === 'added' ? added : first));
}

/** A seam walked so that a part lies on its right. */
function withRight(work: Work, part: Part, seam: readonly number[]): readonly number[] {
  const owner = work.owner(seam[0] as number, seam[1] as number);
  return owner !== undefined && part.has(owner) ? seam : [...seam].reverse();
}

/** The smaller side of the box a part fills. */
function depthOf(work: Work, part: Part): Inches {
  const points = [...part].flatMap((patch) => clothOf(work, patch, part));
  const size = (of: (point: Point) => number) => Math.max(...points.map(of)) - Math.min(...points.map(of));
  return Math.min(
    size(({ x }) => x),
    size(({ y }) => y),
  );
}
