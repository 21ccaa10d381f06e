import type { Point } from '../../drawing/turn.ts';
import type { Inches } from '../../measure/inches.ts';

/**
 * The outline of a patch with its seam allowance: every edge moved outwards by its own amount, and the moved edges made to
 * meet again. With 'blunted' points the allowance of a corner sharper than a square one reaches no further along its edges
 * than that of a square corner; what lies beyond would only be trimmed away (common practice). With 'pointed' ones the edges
 * run on until they meet, as they do on a triangle cut from a square.
 * @param corners clockwise on screen, inches; arcs as many short edges
 * @param allowances inches, one for each edge; the first is that of the edge from the first corner to the second
 */
export function withAllowance(
  corners: readonly Point[],
  allowances: readonly Inches[],
  points: 'blunted' | 'pointed',
): readonly Point[] {
  const count = corners.length;
  return corners.flatMap((corner, i) => {
    const before = edge(corners[(i + count - 1) % count] as Point, corner, allowances[(i + count - 1) % count] ?? 0);
    const after = edge(corner, corners[(i + 1) % count] as Point, allowances[i] ?? 0);
    return meeting(corner, before, after, points);
  });
}

/** One edge: its direction, the direction out of the patch, and its allowance. */
interface Edge {
  readonly along: Point;
  readonly out: Point;
  readonly by: Inches;
}

function edge(from: Point, to: Point, by: Inches): Edge {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  return { along, out: { x: along.y, y: -along.x }, by };
}

/** Two edges nearer to one line than this meet nowhere worth looking for. */
const STRAIGHT = 1e-7;

/** Where the allowance ends at one corner: one place, or two where it steps or is blunted. */
function meeting(corner: Point, before: Edge, after: Edge, points: 'blunted' | 'pointed'): readonly Point[] {
  const turn = before.along.x * after.along.y - before.along.y * after.along.x;
  const onward = before.along.x * after.along.x + before.along.y * after.along.y;
  if (Math.abs(turn) < STRAIGHT) {
    const [a, b] = [moved(corner, before.out, before.by), moved(corner, after.out, after.by)];
    return before.by === after.by ? [a] : [a, b];
  }
  if (points === 'blunted' && turn > 0 && onward < -1e-9) {
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
