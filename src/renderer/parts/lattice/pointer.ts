import type { PointerEvent } from 'react';
import type { Point } from '../../../shared/drawing/turn.ts';

/** Where the pointer is on what is drawn, in its units. */
export function pointIn(event: PointerEvent<HTMLElement>, width: number, height: number): Point {
  const box = event.currentTarget.getBoundingClientRect();
  return {
    x: ((event.clientX - box.left) / box.width) * width,
    y: ((event.clientY - box.top) / box.height) * height,
  };
}

/** A hand that trembles is not drawing, pixels. */
const STILL = 5;

/** Whether the pointer has gone from `a` to `b` on purpose. @param width of the whole, in the units of the points */
export function isFar(event: PointerEvent<HTMLElement>, a: Point, b: Point, width: number): boolean {
  const pixels = event.currentTarget.getBoundingClientRect().width / width;
  return Math.hypot(a.x - b.x, a.y - b.y) * pixels > STILL;
}
