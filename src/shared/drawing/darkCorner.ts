import { type Drawing, doubleArea, patchPoints } from './drawing.ts';

/** A corner of a block. */
type Corner = 'top-left' | 'top-right' | 'bottom-right' | 'bottom-left';

/** So far from the middle of the block, as a share of it, the middle of its darkness must lie for the block to be split. */
const CLEARLY = 0.05;

/**
 * The corner of a block in which its darkness lies, when it is dark on one side of a diagonal and light on the other, as a log
 * cabin is; null for any other block.
 * @param darkness how dark a role is, 0 to 1
 */
export function darkCorner(drawing: Drawing, darkness: (role: string) => number): Corner | null {
  let [dark, x, y] = [0, 0, 0];
  for (const patch of drawing.patches) {
    const corners = patchPoints(drawing, patch);
    const weight = (Math.abs(doubleArea(corners)) / 2) * darkness(patch.role);
    const middle = centroid(corners);
    dark += weight;
    x += weight * middle.x;
    y += weight * middle.y;
  }
  if (dark === 0) return null;
  const right = x / dark / drawing.width - 0.5;
  const down = y / dark / drawing.height - 0.5;
  // In a split block the darkness lies as far to one side as it lies up or down.
  if (Math.min(Math.abs(right), Math.abs(down)) < CLEARLY) return null;
  const ratio = Math.abs(right) / Math.abs(down);
  if (ratio < 0.5 || ratio > 2) return null;
  return `${down < 0 ? 'top' : 'bottom'}-${right < 0 ? 'left' : 'right'}`;
}

function centroid(corners: readonly { readonly x: number; readonly y: number }[]): { x: number; y: number } {
  let [x, y] = [0, 0];
  const area = doubleArea(corners);
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length] as { x: number; y: number };
    const cross = a.x * b.y - b.x * a.y;
    x += (a.x + b.x) * cross;
    y += (a.y + b.y) * cross;
  });
  return { x: x / (3 * area), y: y / (3 * area) };
}
