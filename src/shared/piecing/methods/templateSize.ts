import type { Point } from '../../drawing/turn.ts';
import type { Inches } from '../../measure/inches.ts';

/** The upright rectangle a template with its seam allowance is cut from, inches. */
export interface TemplateSize {
  readonly width: Inches;
  readonly height: Inches;
}

/**
 * The upright box about a patch with its seam allowance. A point sharper than a square corner is blunted: its allowance
 * reaches no further beyond the finished point than that of a square corner, √2 seams (common practice: what lies beyond
 * would only be trimmed away).
 * @param corners the finished patch clockwise, inches
 * @param seam inches
 */
export function templateSize(corners: readonly Point[], seam: Inches): TemplateSize {
  const outer = corners.flatMap((corner, i) => {
    const before = corners[(i + corners.length - 1) % corners.length] as Point;
    const after = corners[(i + 1) % corners.length] as Point;
    return beyond(before, corner, after, seam);
  });
  const xs = outer.map(({ x }) => x);
  const ys = outer.map(({ y }) => y);
  return { width: Math.max(...xs) - Math.min(...xs), height: Math.max(...ys) - Math.min(...ys) };
}

/** Where the allowance ends at one corner: one place, or two when the point is blunted. */
function beyond(before: Point, corner: Point, after: Point, seam: Inches): readonly Point[] {
  const [a, b] = [outwards(before, corner), outwards(corner, after)];
  const sum = { x: a.x + b.x, y: a.y + b.y };
  const square = sum.x * sum.x + sum.y * sum.y;
  // The two edges moved out by a seam meet at 2·seam·(a + b)/|a + b|² beyond the corner.
  if (square >= 2 - 1e-9) return [moved(corner, sum, (2 * seam) / square)];
  const [along, on] = [
    { x: -a.y, y: a.x },
    { x: b.y, y: -b.x },
  ];
  return [moved(moved(corner, a, seam), along, seam), moved(moved(corner, b, seam), on, seam)];
}

/** The direction out of a patch that runs clockwise on screen, from one of its edges. */
function outwards(from: Point, to: Point): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return { x: (to.y - from.y) / length, y: -(to.x - from.x) / length };
}

function moved({ x, y }: Point, by: Point, times: number): Point {
  return { x: x + by.x * times, y: y + by.y * times };
}
