import { arcPoints } from '../../drawing/curve.ts';
import type { Point } from '../../drawing/turn.ts';
import type { Inches } from '../../measure/inches.ts';

/** One edge of a patch, up to where the next begins: straight, or an arc about a centre, the shorter way round. */
export interface PatchEdge {
  readonly from: Point;
  readonly centre?: Point;
  /** How far its allowance reaches, inches. */
  readonly by: Inches;
}

/**
 * 'blunted': the allowance of a corner sharper than a square one reaches no further along its edges than that of a square
 * corner; what lies beyond would only be trimmed away (common practice). 'pointed': the edges run on until they meet, as they
 * do on a triangle cut from a square.
 */
export type Points = 'blunted' | 'pointed';

/** The outline of a patch of straight edges with the same allowance all round; corners clockwise on screen, inches. */
export function allowanceRound(corners: readonly Point[], by: Inches, points: Points): readonly Point[] {
  return withAllowance(
    corners.map((from) => ({ from, by })),
    points,
  );
}

/**
 * The outline of a patch with its seam allowance: every edge moved outwards by its own amount, and the moved edges made to
 * meet again.
 * @param edges clockwise on screen, inches
 * @param fineness straight pieces a quarter of a circle is drawn with
 */
export function withAllowance(edges: readonly PatchEdge[], points: Points, fineness?: number): readonly Point[] {
  const count = edges.length;
  return edges.flatMap((edge, i) => {
    const to = (edges[(i + 1) % count] as PatchEdge).from;
    const last = edges[(i + count - 1) % count] as PatchEdge;
    const corner = meeting(edge.from, arriving(last, edge.from), leaving(edge, to), points);
    return [...corner, ...movedArc(edge, to, fineness)];
  });
}

/** An edge as it is where it begins or ends: its direction, the direction out of the patch, and its allowance. */
interface Way {
  readonly along: Point;
  readonly out: Point;
  readonly by: Inches;
}

function leaving({ from, centre, by }: PatchEdge, to: Point): Way {
  return wayOf(centre === undefined ? direction(from, to) : tangent(from, to, centre, from), by);
}

function arriving({ from, centre, by }: PatchEdge, to: Point): Way {
  return wayOf(centre === undefined ? direction(from, to) : tangent(from, to, centre, to), by);
}

function wayOf(along: Point, by: Inches): Way {
  return { along, out: { x: along.y, y: -along.x }, by };
}

function direction(from: Point, to: Point): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

/** The direction of an arc at one of its ends. */
function tangent(from: Point, to: Point, centre: Point, at: Point): Point {
  const out = direction(centre, at);
  const way = turnsRight(from, to, centre) ? 1 : -1;
  return { x: -out.y * way, y: out.x * way };
}

/** Whether an arc is walked with its centre on the right; so it bulges out of a patch that is walked clockwise. */
function turnsRight(from: Point, to: Point, centre: Point): boolean {
  const side = (to.x - from.x) * (centre.y - from.y) - (to.y - from.y) * (centre.x - from.x);
  return side > -1e-9;
}

/** The points on the way of an arc that was moved outwards, without its ends. */
function movedArc({ from, centre, by }: PatchEdge, to: Point, fineness?: number): readonly Point[] {
  if (centre === undefined) return [];
  const radius = Math.hypot(from.x - centre.x, from.y - centre.y);
  const share = Math.max(0, radius + (turnsRight(from, to, centre) ? by : -by)) / radius;
  return arcPoints(from, to, centre, fineness).map(({ x, y }) => ({
    x: centre.x + (x - centre.x) * share,
    y: centre.y + (y - centre.y) * share,
  }));
}

/** Two edges nearer to one line than this meet nowhere worth looking for. */
const STRAIGHT = 1e-7;

/** Where the allowance ends at one corner: one place, or two where it steps or is blunted. */
function meeting(corner: Point, before: Way, after: Way, points: Points): readonly Point[] {
  const turn = before.along.x * after.along.y - before.along.y * after.along.x;
  const onward = before.along.x * after.along.x + before.along.y * after.along.y;
  // Where two edges run to the same tip, as arcs can, the tip is blunted whatever is asked: nothing would end it.
  const tip = Math.abs(turn) < STRAIGHT && onward < 0;
  if (Math.abs(turn) < STRAIGHT && !tip) {
    const [a, b] = [moved(corner, before.out, before.by), moved(corner, after.out, after.by)];
    return before.by === after.by ? [a] : [a, b];
  }
  if (tip || (points === 'blunted' && turn > 0 && onward < -1e-9)) {
    const reach = Math.max(before.by, after.by);
    const first = moved(moved(corner, before.out, before.by), before.along, reach);
    return [first, moved(moved(corner, after.out, after.by), after.along, -reach)];
  }
  // The place that lies `by` out of both edges.
  const [a, b] = [before.out, after.out];
  const x = (before.by * b.y - after.by * a.y) / turn;
  const y = (after.by * a.x - before.by * b.x) / turn;
  return [{ x: corner.x + x, y: corner.y + y }];
}

function moved({ x, y }: Point, by: Point, times: number): Point {
  return { x: x + by.x * times, y: y + by.y * times };
}
