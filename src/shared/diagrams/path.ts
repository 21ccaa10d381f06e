import type { Point } from '../drawing/turn.ts';

/** A number with three decimals at most, as short as it goes: what a coordinate in points needs. */
export function short(value: number): string {
  const rounded = Math.round(value * 1000) / 1000;
  return rounded === 0 ? '0' : String(rounded);
}

/** A row of points as SVG path data, every coordinate times `scale`; upright and level lines are written short. */
export function pathOf(points: readonly Point[], scale: number, closed: boolean): string {
  let path = '';
  let lastX = '';
  let lastY = '';
  for (const point of points) {
    const x = short(point.x * scale);
    const y = short(point.y * scale);
    if (path === '') path = `M${x} ${y}`;
    else if (y === lastY) path += `H${x}`;
    else if (x === lastX) path += `V${y}`;
    else path += `L${x} ${y}`;
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
