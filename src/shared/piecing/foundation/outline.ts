import type { Drawing } from '../../drawing/drawing.ts';
import type { Point } from '../../drawing/turn.ts';

/**
 * The outline of some patches that hang together without a hole, clockwise, with its corners only.
 * @throws RangeError when they are none, or do not make one outline
 */
export function outlineOf(drawing: Drawing, part: ReadonlySet<number>): readonly Point[] {
  const walked = new Map<number, number>();
  const inside = new Set<string>();
  for (const patch of part) {
    const { outline } = drawing.patches[patch] as Drawing['patches'][number];
    outline.forEach((a, i) => {
      inside.add(`${a} ${outline[(i + 1) % outline.length]}`);
    });
  }
  for (const edge of inside) {
    const [a, b] = edge.split(' ').map(Number) as [number, number];
    if (!inside.has(`${b} ${a}`)) walked.set(a, b);
  }
  const [start] = walked.keys();
  if (start === undefined) throw new RangeError('No patches have no outline');
  const way = [start];
  for (let on = walked.get(start); on !== start; on = walked.get(on)) {
    if (on === undefined || way.length > walked.size) throw new RangeError('The patches do not make one outline');
    way.push(on);
  }
  return withoutStraight(way.map((vertex) => drawing.points[vertex] as Point));
}

function withoutStraight(points: readonly Point[]): readonly Point[] {
  return points.filter((b, i) => {
    const a = points.at(i - 1) as Point;
    const c = points[(i + 1) % points.length] as Point;
    const turn = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
    return Math.abs(turn) > 1e-7 * Math.hypot(b.x - a.x, b.y - a.y) * Math.hypot(c.x - b.x, c.y - b.y);
  });
}
