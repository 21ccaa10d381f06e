import type { Point } from '../../drawing/turn.ts';

/** What lies on one side of a line: every point with a·x + b·y ≤ c. */
export interface HalfPlane {
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

/** A convex outline cut off along straight lines: what lies in every half-plane. Empty when nothing does. */
export function clip(outline: readonly Point[], planes: readonly HalfPlane[]): readonly Point[] {
  return planes.reduce(clipOnce, outline);
}

/** Points closer to a line than this lie on it; finer than any ruler. */
const ON_THE_LINE = 1e-9;

function clipOnce(outline: readonly Point[], plane: HalfPlane): readonly Point[] {
  const kept: Point[] = [];
  outline.forEach((from, i) => {
    const to = outline[(i + 1) % outline.length] as Point;
    const [before, after] = [beyond(from, plane), beyond(to, plane)];
    if (before <= ON_THE_LINE) kept.push(from);
    if ((before > ON_THE_LINE && after < -ON_THE_LINE) || (before < -ON_THE_LINE && after > ON_THE_LINE))
      kept.push(between(from, to, before / (before - after)));
  });
  return kept.length < 3 ? [] : kept;
}

function beyond({ x, y }: Point, { a, b, c }: HalfPlane): number {
  return a * x + b * y - c;
}

function between(from: Point, to: Point, share: number): Point {
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
}
