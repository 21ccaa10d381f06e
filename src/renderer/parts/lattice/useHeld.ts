import { type PointerEvent, useRef, useState } from 'react';
import type { Point } from '../../../shared/drawing/turn.ts';
import { type Cell, sameCell } from './lattice.ts';
import type { Picking } from './picking.ts';
import { isFar, pointIn } from './pointer.ts';

/** A cell in the hand. */
export interface Held {
  readonly from: Cell;
  /** How far it has been carried, in the ground's units. */
  readonly by: Point;
  /** The cell it would be put on; null where it would go back. */
  readonly onto: Cell | null;
}

/** The one picked cell, taken up by the pointer and put down on another. Whoever lets go elsewhere, or presses Escape, leaves it. */
export function useHeld({ ground, width, height, picked, onSwap }: Picking) {
  const start = useRef<{ readonly cell: Cell; readonly at: Point } | null>(null);
  const [held, setHeld] = useState<Held | null>(null);
  const letGo = () => {
    start.current = null;
    setHeld(null);
  };

  /** True when the press takes up a cell: it is the picked one, and no key is held that picks more. */
  const takeUp = (event: PointerEvent<HTMLElement>): boolean => {
    const at = pointIn(event, width, height);
    const cell = ground.at(at);
    const [one] = picked;
    if (onSwap === undefined || picked.length !== 1 || one === undefined || cell === null) return false;
    if (!sameCell(one, cell) || event.shiftKey || event.ctrlKey || event.metaKey) return false;
    start.current = { cell, at };
    return true;
  };
  const carry = (event: PointerEvent<HTMLElement>) => {
    if (start.current === null) return;
    const { cell: from, at } = start.current;
    const here = pointIn(event, width, height);
    if (held === null && !isFar(event, at, here, width)) return;
    const under = ground.at(here);
    const onto = under === null || sameCell(under, from) ? null : under;
    setHeld({ from, by: { x: here.x - at.x, y: here.y - at.y }, onto });
  };
  const putDown = () => {
    if (held !== null && held.onto !== null) onSwap?.(held.from, held.onto);
    letGo();
  };
  return { held, letGo, handlers: { takeUp, carry, putDown } };
}
