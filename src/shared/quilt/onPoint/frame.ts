import type { Box, Point } from '../../drawing/turn.ts';

/**
 * Diagonal rows are laid out in a frame of their own, in which blocks stand upright and rows run from left to right. In the
 * quilt the frame is turned an eighth anticlockwise: its rows run from the lower left to the upper right, and follow one
 * another from the upper left corner of the quilt to the lower right.
 */
const SHARE = Math.SQRT1_2;

/** How a block on point lies: degrees clockwise about its middle. */
export const ON_POINT_TILT = -45;

/** Where a point of the frame lies in the quilt. @param origin where the frame's 0, 0 lies, finished inches */
export function fromFrame({ x, y }: Point, origin: Point): Point {
  return { x: origin.x + (x + y) * SHARE, y: origin.y + (y - x) * SHARE };
}

/** A box of the frame as an upright box about the same middle in the quilt; what stands in it is then tilted. */
export function boxFromFrame(box: Box, origin: Point): Box {
  const { x, y } = fromFrame({ x: box.x + box.width / 2, y: box.y + box.height / 2 }, origin);
  return { ...box, x: x - box.width / 2, y: y - box.height / 2 };
}

/** The four corners of a box, clockwise on screen. */
export function cornersOf({ x, y, width, height }: Box): readonly Point[] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}

/** The smallest upright box about some points. */
export function boxOf(points: readonly Point[]): Box {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

/** A point turned about another, degrees clockwise on screen. */
export function turnedAbout(point: Point, middle: Point, degrees: number): Point {
  const angle = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const [dx, dy] = [point.x - middle.x, point.y - middle.y];
  return { x: middle.x + dx * cos - dy * sin, y: middle.y + dx * sin + dy * cos };
}
