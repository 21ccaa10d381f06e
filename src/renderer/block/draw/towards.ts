import type { Drawing } from '../../../shared/drawing/drawing.ts';
import { placeInPatch } from '../../../shared/drawing/inside.ts';
import type { Point } from '../../../shared/drawing/turn.ts';

/** The way an arrow key points; null for any other key. */
export function wayOf(key: string): Point | null {
  if (key === 'ArrowLeft') return { x: -1, y: 0 };
  if (key === 'ArrowRight') return { x: 1, y: 0 };
  if (key === 'ArrowUp') return { x: 0, y: -1 };
  return key === 'ArrowDown' ? { x: 0, y: 1 } : null;
}

/** One line of the grid on from a place, within the block. From between two lines it is the next of them. */
export function stepped(
  at: Point,
  way: Point,
  step: number,
  { width, height }: Pick<Drawing, 'width' | 'height'>,
): Point {
  const on = (value: number, by: number, most: number) => {
    if (by === 0) return value;
    const lines = value / step;
    const next = by > 0 ? Math.floor(lines + 1e-6) + 1 : Math.ceil(lines - 1e-6) - 1;
    return Math.max(0, Math.min(most, next * step));
  };
  return { x: on(at.x, way.x, width), y: on(at.y, way.y, height) };
}

/** The next patch in a direction: the nearest of those that lie more that way than to either side; none gives the same. */
export function nextPatch(drawing: Drawing, from: number, way: Point): number {
  const here = middleOf(drawing, from);
  let best = { patch: from, away: Number.POSITIVE_INFINITY };
  drawing.patches.forEach((_, patch) => {
    const there = middleOf(drawing, patch);
    const [dx, dy] = [there.x - here.x, there.y - here.y];
    const ahead = dx * way.x + dy * way.y;
    const aside = Math.abs(dx * way.y) + Math.abs(dy * way.x);
    if (patch === from || ahead <= 1e-6 || aside > ahead + 1e-6) return;
    const away = ahead + 2 * aside;
    if (away < best.away - 1e-9) best = { patch, away };
  });
  return best.patch;
}

const middles = new WeakMap<Drawing, Map<number, Point>>();

/** A place inside a patch; asked for often, so worked out once. */
export function middleOf(drawing: Drawing, patch: number): Point {
  const known = middles.get(drawing) ?? new Map<number, Point>();
  middles.set(drawing, known);
  const before = known.get(patch);
  if (before !== undefined) return before;
  const wanted = drawing.patches[patch];
  const middle = wanted === undefined ? { x: 0, y: 0 } : placeInPatch(drawing, wanted);
  known.set(patch, middle);
  return middle;
}
