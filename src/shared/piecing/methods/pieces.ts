import type { Point } from '../../drawing/turn.ts';
import type { Cloth, SceneArrow, SceneLine } from '../scene.ts';
import { type Picture, picture } from './picture.ts';

/** A point. */
export function at(x: number, y: number): Point {
  return { x, y };
}

/** A piece of cloth lying on the table. */
export function cloth(role: string, corners: readonly Point[], side: Cloth['side'] = 'right'): Cloth {
  return { role, corners, side };
}

/** The corners of an upright rectangle, clockwise from the top left. */
export function rectangle(x: number, y: number, width: number, height: number): readonly Point[] {
  return [at(x, y), at(x + width, y), at(x + width, y + height), at(x, y + height)];
}

/** A line on the cloth. */
export function line(kind: SceneLine['kind'], from: Point, to: Point): SceneLine {
  return { kind, from, to };
}

/** The four cuts that trim something to an upright rectangle. */
export function trimming(x: number, y: number, width: number, height: number): readonly SceneLine[] {
  const corners = rectangle(x, y, width, height);
  return corners.map((from, i) => line('cut', from, corners[(i + 1) % 4] ?? from));
}

/** The line x + y = sum within a square of this side whose top left corner is 0, 0: it rises to the right. */
export function rising(kind: SceneLine['kind'], side: number, sum: number): SceneLine {
  const over = Math.max(0, sum - side);
  return line(kind, at(over, sum - over), at(sum - over, over));
}

/** The line y = x + down within such a square: it falls to the right. */
export function falling(kind: SceneLine['kind'], side: number, down: number): SceneLine {
  const from = at(Math.max(0, -down), Math.max(0, down));
  const length = side - Math.abs(down);
  return line(kind, from, at(from.x + length, from.y + length));
}

/** An arrow that starts on a seam and points across the cloth the seam allowance is pressed to. */
export function press(from: Point, towards: Point, length: number): SceneArrow {
  const far = Math.hypot(towards.x - from.x, towards.y - from.y);
  const part = length / far;
  const to = at(from.x + (towards.x - from.x) * part, from.y + (towards.y - from.y) * part);
  return { kind: 'press', from, to };
}

/**
 * Two equal rectangles right sides together, edges matched. The upper one's top left corner is folded back, so that the
 * right side of the lower one shows.
 */
export function faceToFace(lower: string, upper: string, width: number, height: number): Picture {
  const fold = Math.min(width, height) / 5;
  const rest = [at(fold, 0), at(width, 0), at(width, height), at(0, height), at(0, fold)];
  const flap = [at(fold, 0), at(fold, fold), at(0, fold)];
  return picture({
    cloth: [cloth(lower, rectangle(0, 0, width, height)), cloth(upper, rest, 'wrong'), cloth(upper, flap)],
  });
}
