import type { Point } from '../drawing/turn.ts';
import type { Arrow } from './figure.ts';
import { ARROWS } from './weights.ts';

/** An arrow as drawn, in points: the shaft ends inside the head so that its tip stays sharp. */
export interface ArrowShape {
  readonly shaft: readonly [Point, Point];
  readonly head: readonly [Point, Point, Point];
}

/** An arrow's shaft and head; one shorter than its head gets a smaller head. Null when it has no length. */
export function arrowShape(arrow: Arrow, pointsPerInch: number): ArrowShape | null {
  const from = { x: arrow.from.x * pointsPerInch, y: arrow.from.y * pointsPerInch };
  const tip = { x: arrow.to.x * pointsPerInch, y: arrow.to.y * pointsPerInch };
  const length = Math.hypot(tip.x - from.x, tip.y - from.y);
  if (length === 0) return null;
  const way = { x: (tip.x - from.x) / length, y: (tip.y - from.y) / length };
  const { headLength, headWidth } = ARROWS[arrow.means];
  const size = Math.min(1, (length * 0.7) / headLength);
  const back = along(tip, way, -headLength * size);
  const half = (headWidth * size) / 2;
  return {
    shaft: [from, along(tip, way, -headLength * size * 0.7)],
    head: [
      tip,
      { x: back.x - way.y * half, y: back.y + way.x * half },
      { x: back.x + way.y * half, y: back.y - way.x * half },
    ],
  };
}

function along(point: Point, way: Point, distance: number): Point {
  return { x: point.x + way.x * distance, y: point.y + way.y * distance };
}
