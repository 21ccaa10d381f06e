import { doubleArea } from './drawing.ts';
import type { Box, Point } from './turn.ts';

/** The smallest upright box about some points. */
export function boxAbout(points: readonly Point[]): Box {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    top = Math.min(top, y);
    right = Math.max(right, x);
    bottom = Math.max(bottom, y);
  }
  return { x: left, y: top, width: right - left, height: bottom - top };
}

/**
 * The area that an outline has in common with a box.
 * @param own the box about the outline
 */
export function sharedArea(outline: readonly Point[], own: Box, box: Box): number {
  const [right, bottom] = [box.x + box.width, box.y + box.height];
  if (own.x >= right || own.y >= bottom || own.x + own.width <= box.x || own.y + own.height <= box.y) return 0;
  const sides: readonly ((point: Point) => number)[] = [
    ({ x }) => x - box.x,
    ({ x }) => right - x,
    ({ y }) => y - box.y,
    ({ y }) => bottom - y,
  ];
  return Math.abs(doubleArea(sides.reduce(clipped, outline))) / 2;
}

/** What of an outline lies on the inner side of a line, where `depth` is 0 or more (after Sutherland and Hodgman, 1974). */
function clipped(outline: readonly Point[], depth: (point: Point) => number): readonly Point[] {
  return outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    const [from, to] = [depth(a), depth(b)];
    const kept = from >= 0 ? [a] : [];
    if (from >= 0 === to >= 0) return kept;
    const share = from / (from - to);
    return [...kept, { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) }];
  });
}
