import type { Point } from '../drawing/turn.ts';

/** A number with three decimals at most, as short as it goes: what a coordinate in points needs. */
export function short(value: number): string {
  return thousandths(Math.round(value * 1000));
}

function thousandths(whole: number): string {
  return whole === 0 ? '0' : String(whole / 1000);
}

/**
 * A row of points as SVG path data, every coordinate times `scale` and rounded to a thousandth. After the first point it
 * goes by steps, which are shorter to write; a step is the difference of two rounded points, so that nothing adds up.
 */
export function pathOf(points: readonly Point[], scale: number, closed: boolean): string {
  let path = '';
  let lastX = 0;
  let lastY = 0;
  for (const point of points) {
    const x = Math.round(point.x * scale * 1000);
    const y = Math.round(point.y * scale * 1000);
    if (path === '') path = `M${thousandths(x)} ${thousandths(y)}`;
    else if (y === lastY) path += `h${thousandths(x - lastX)}`;
    else if (x === lastX) path += `v${thousandths(y - lastY)}`;
    else path += `l${thousandths(x - lastX)} ${thousandths(y - lastY)}`;
    lastX = x;
    lastY = y;
  }
  return closed ? `${path}z` : path;
}

/** Many outlines as one path. */
export function pathOfAll(outlines: readonly (readonly Point[])[], scale: number): string {
  let path = '';
  for (const outline of outlines) path += pathOf(outline, scale, true);
  return path;
}
