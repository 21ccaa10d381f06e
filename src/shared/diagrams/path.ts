import type { Point } from '../drawing/turn.ts';

/** A number with three decimals at most, as short as it goes: what a coordinate in points needs. */
export function short(value: number): string {
  return thousandths(Math.round(value * 1000));
}

function thousandths(whole: number): string {
  return whole === 0 ? '0' : String(whole / 1000);
}

/**
 * A row of points as SVG path data of M, L, H, V and Z, every coordinate times `scale` and rounded to a thousandth; upright
 * and level lines are written short.
 */
export function pathOf(points: readonly Point[], scale: number, closed: boolean): string {
  let path = '';
  let lastX = Number.NaN;
  let lastY = Number.NaN;
  for (const point of points) {
    const x = Math.round(point.x * scale * 1000);
    const y = Math.round(point.y * scale * 1000);
    if (path === '') path = `M${thousandths(x)} ${thousandths(y)}`;
    else if (y === lastY) path += `H${thousandths(x)}`;
    else if (x === lastX) path += `V${thousandths(y)}`;
    else path += `L${thousandths(x)} ${thousandths(y)}`;
    lastX = x;
    lastY = y;
  }
  return closed ? `${path}Z` : path;
}

/** Many outlines as one path. */
export function pathOfAll(outlines: readonly (readonly Point[])[], scale: number): string {
  let path = '';
  for (const outline of outlines) path += pathOf(outline, scale, true);
  return path;
}
