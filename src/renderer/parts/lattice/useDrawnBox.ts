import { type PointerEvent, useRef, useState } from 'react';
import type { Box, Point } from '../../../shared/drawing/turn.ts';
import { type Cell, toggled } from './lattice.ts';
import type { Picking } from './picking.ts';

/** Click, click with Shift or Ctrl, and a box drawn with the pointer; with a brush in hand, the way it was drawn. */
export function useDrawnBox(props: Picking, setAnchor: (cell: Cell) => void) {
  const { ground, width, height, picked, onPick, onBeside, onPaint } = props;
  const way = useRef<Point[]>([]);
  const [to, setTo] = useState<Point | null>(null);
  const [from] = way.current;
  const drawn = from === undefined || to === null || onPaint !== undefined ? null : boxOf(from, to);

  const click = (at: Point, event: PointerEvent) => {
    const cell = ground.at(at);
    if (cell === null) return onBeside === undefined ? onPick([]) : onBeside(at);
    const last = picked.at(-1);
    if (event.shiftKey && last !== undefined) return onPick(ground.between(picked[0] ?? last, cell));
    if (event.ctrlKey || event.metaKey) return onPick(toggled(picked, cell));
    setAnchor(cell);
    onPick([cell]);
  };
  const forget = () => {
    way.current = [];
    setTo(null);
  };

  return {
    drawn,
    handlers: {
      onPointerDown: (event: PointerEvent<HTMLElement>) => {
        if (event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        way.current = [pointIn(event, width, height)];
      },
      onPointerMove: (event: PointerEvent<HTMLElement>) => {
        const [start] = way.current;
        if (start === undefined) return;
        const here = pointIn(event, width, height);
        if (onPaint !== undefined) way.current.push(here);
        const pixels = event.currentTarget.getBoundingClientRect().width / width;
        if (to !== null || isFar(start, here, pixels)) setTo(here);
      },
      onPointerUp: (event: PointerEvent<HTMLElement>) => {
        const drawnWay = way.current;
        const [start] = drawnWay;
        forget();
        if (start === undefined) return;
        const here = pointIn(event, width, height);
        if (onPaint !== undefined) return onPaint([...drawnWay, here]);
        if (to === null) return click(here, event);
        const touched = ground.touching(start, here);
        const added = event.ctrlKey || event.metaKey || event.shiftKey;
        onPick(added ? [...picked, ...touched.filter((cell) => !has(picked, cell))] : touched);
      },
      onPointerCancel: forget,
    },
  };
}

function has(cells: readonly Cell[], { column, row }: Cell): boolean {
  return cells.some((cell) => cell.column === column && cell.row === row);
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
