import { type PointerEvent, useRef, useState } from 'react';
import type { Box, Point } from '../../../shared/drawing/turn.ts';
import { type Cell, cellAt, cellsBetween, cellsWithin, toggled } from './lattice.ts';
import type { Picking } from './picking.ts';

/** Click, click with Shift or Ctrl, and a box drawn with the pointer. */
export function useDrawnBox(props: Picking, setAnchor: (cell: Cell) => void) {
  const { lattice, width, height, picked, onPick, onBeside } = props;
  const from = useRef<Point | null>(null);
  const [to, setTo] = useState<Point | null>(null);
  const drawn = from.current === null || to === null ? null : boxOf(from.current, to);

  const click = (at: Point, event: PointerEvent) => {
    const cell = cellAt(lattice, at);
    if (cell === null) return onBeside === undefined ? onPick([]) : onBeside(at);
    const last = picked.at(-1);
    if (event.shiftKey && last !== undefined) return onPick(cellsBetween(picked[0] ?? last, cell));
    if (event.ctrlKey || event.metaKey) return onPick(toggled(picked, cell));
    setAnchor(cell);
    onPick([cell]);
  };

  return {
    drawn,
    handlers: {
      onPointerDown: (event: PointerEvent<HTMLElement>) => {
        if (event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        from.current = pointIn(event, width, height);
      },
      onPointerMove: (event: PointerEvent<HTMLElement>) => {
        const start = from.current;
        if (start === null) return;
        const here = pointIn(event, width, height);
        if (to !== null || isFar(start, here, event.currentTarget.clientWidth / width)) setTo(here);
      },
      onPointerUp: (event: PointerEvent<HTMLElement>) => {
        const start = from.current;
        from.current = null;
        setTo(null);
        if (start === null) return;
        const here = pointIn(event, width, height);
        if (to === null) return click(here, event);
        onPick(cellsWithin(lattice, start, here));
      },
      onPointerCancel: () => {
        from.current = null;
        setTo(null);
      },
    },
  };
}

/** A hand that trembles is not drawing a box. */
const STILL = 5;

function isFar(a: Point, b: Point, pixelsPerUnit: number): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) * pixelsPerUnit > STILL;
}

function pointIn(event: PointerEvent<HTMLElement>, width: number, height: number): Point {
  const box = event.currentTarget.getBoundingClientRect();
  return {
    x: ((event.clientX - box.left) / box.width) * width,
    y: ((event.clientY - box.top) / box.height) * height,
  };
}

function boxOf(a: Point, b: Point): Box {
  return {
    x: Math.min(a.x, b.x),
    y: Math.min(a.y, b.y),
    width: Math.abs(a.x - b.x),
    height: Math.abs(a.y - b.y),
  };
}
