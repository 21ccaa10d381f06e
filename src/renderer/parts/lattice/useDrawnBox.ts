import { type PointerEvent, useRef, useState } from 'react';
import type { Box, Point } from '../../../shared/drawing/turn.ts';
import { type Cell, toggled } from './lattice.ts';
import type { Picking } from './picking.ts';
import { isFar, pointIn } from './pointer.ts';
import { useHeld } from './useHeld.ts';

/**
 * Click, click with Shift or Ctrl, and a box drawn with the pointer; with a brush in hand, the way it was drawn. A press on the
 * one picked cell takes it up instead, where cells can be swapped.
 */
export function useDrawnBox(props: Picking, setAnchor: (cell: Cell) => void) {
  const { ground, width, height, picked, onPick, onBeside, onPaint } = props;
  const way = useRef<Point[]>([]);
  const [to, setTo] = useState<Point | null>(null);
  const [from] = way.current;
  const { held, letGo, handlers: hand } = useHeld(props);
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
    letGo();
  };

  return {
    drawn,
    held,
    forget,
    handlers: {
      onPointerDown: (event: PointerEvent<HTMLElement>) => {
        if (event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        if (hand.takeUp(event)) return;
        way.current = [pointIn(event, width, height)];
      },
      onPointerMove: (event: PointerEvent<HTMLElement>) => {
        const [start] = way.current;
        if (start === undefined) return hand.carry(event);
        const here = pointIn(event, width, height);
        if (onPaint !== undefined) way.current.push(here);
        if (to !== null || isFar(event, start, here, width)) setTo(here);
      },
      onPointerUp: (event: PointerEvent<HTMLElement>) => {
        const drawnWay = way.current;
        const [start] = drawnWay;
        if (start === undefined) return hand.putDown();
        forget();
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

function boxOf(a: Point, b: Point): Box {
  return {
    x: Math.min(a.x, b.x),
    y: Math.min(a.y, b.y),
    width: Math.abs(a.x - b.x),
    height: Math.abs(a.y - b.y),
  };
}
