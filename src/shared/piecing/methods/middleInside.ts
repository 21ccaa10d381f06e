import { isInside } from '../../drawing/near.ts';
import type { Point } from '../../drawing/turn.ts';

/**
 * A place well inside an outline, for a number to stand on: its centre of gravity when that lies inside, else the middle of
 * the longest level stretch at half its height.
 */
export function middleInside(corners: readonly Point[]): Point {
  const centre = centreOf(corners);
  if (isInside(centre, corners)) return centre;
  const ys = corners.map(({ y }) => y);
  const y = (Math.min(...ys) + Math.max(...ys)) / 2 + 1e-7;
  const crossings = corners
    .flatMap((a, i) => {
      const b = corners[(i + 1) % corners.length] as Point;
      return a.y > y === b.y > y ? [] : [a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)];
    })
    .sort((p, q) => p - q);
  let best = { from: 0, to: 0 };
  for (let i = 0; i + 1 < crossings.length; i += 2) {
    const [from, to] = [crossings[i] as number, crossings[i + 1] as number];
    if (to - from > best.to - best.from) best = { from, to };
  }
  return { x: (best.from + best.to) / 2, y };
}

function centreOf(corners: readonly Point[]): Point {
  let [area, x, y] = [0, 0, 0];
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length] as Point;
    const cross = a.x * b.y - b.x * a.y;
    area += cross;
    x += (a.x + b.x) * cross;
    y += (a.y + b.y) * cross;
  });
  return { x: x / (3 * area), y: y / (3 * area) };
}
