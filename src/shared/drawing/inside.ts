import { outlinePoints } from './curve.ts';
import type { Drawing, Patch } from './drawing.ts';
import type { Point } from './turn.ts';

/** A place well inside a patch, where a name can stand and by which the patch can be told, grid units. */
export function placeInPatch(drawing: Drawing, patch: Patch): Point {
  return placeInside(outlinePoints(drawing, patch));
}

/**
 * A place well inside an outline. Between each two heights at which the outline has corners, the widest stretch inside is
 * looked for, halfway up; of these the roomiest is taken, so that a bent patch gives a place in itself and not in its bend.
 */
function placeInside(outline: readonly Point[]): Point {
  const heights = [...new Set(outline.map(({ y }) => y))].sort((a, b) => a - b);
  let best = { x: outline[0]?.x ?? 0, y: outline[0]?.y ?? 0, room: -1 };
  for (let i = 1; i < heights.length; i += 1) {
    const [top, bottom] = [heights[i - 1] as number, heights[i] as number];
    const y = (top + bottom) / 2;
    const crossed = crossings(outline, y);
    for (let k = 1; k < crossed.length; k += 2) {
      const [left, right] = [crossed[k - 1] as number, crossed[k] as number];
      const room = Math.min(right - left, 2 * (bottom - top));
      if (room > best.room) best = { x: (left + right) / 2, y, room };
    }
  }
  return { x: best.x, y: best.y };
}

function crossings(outline: readonly Point[], y: number): readonly number[] {
  const found = outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    return a.y > y === b.y > y ? [] : [a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)];
  });
  return found.sort((p, q) => p - q);
}
