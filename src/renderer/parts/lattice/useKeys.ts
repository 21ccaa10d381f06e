import { type KeyboardEvent, useState } from 'react';
import { type Cell, toggled } from './lattice.ts';
import type { Picking } from './picking.ts';

/** The cell the keys start from, and what each key does. */
export function useKeys({ ground, width, height, picked, onPick, onKey, onPaint }: Picking) {
  const [anchor, setAnchor] = useState<Cell>({ column: 0, row: 0 });
  const [reached, setReached] = useState<Cell | null>(null);
  const [byKey, setByKey] = useState(true);
  const cursor = ground.hold(reached ?? picked.at(-1) ?? anchor);

  const keyDown = (event: KeyboardEvent) => {
    setByKey(true);
    const did = press(event);
    if (!did) return;
    event.preventDefault();
    event.stopPropagation();
  };

  const press = (event: KeyboardEvent): boolean => {
    if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'a') return pick(ground.all());
    if (event.ctrlKey || event.metaKey || event.altKey) return false;
    if (event.key === 'Enter' && onPaint !== undefined) return paint(onPaint);
    if (event.key === ' ') return pick(toggled(picked, cursor));
    if (event.key === 'Escape' && picked.length > 0) return pick([]);
    const next = picked.length === 0 ? arrived(event.key) : ground.step(cursor, event.key);
    if (next === null) return onKey?.(event.key) ?? false;
    return event.shiftKey ? reach(next) : start(next);
  };

  // The first arrow key lands on the cursor instead of stepping past it.
  const arrived = (key: string) => (ground.step(cursor, key) === null ? null : cursor);
  const pick = (cells: readonly Cell[]) => {
    onPick(cells);
    return true;
  };
  const paint = (by: NonNullable<Picking['onPaint']>) => {
    const box = ground.lie(cursor)?.box ?? { x: 0, y: 0, width, height };
    by([{ x: box.x + box.width / 2, y: box.y + box.height / 2 }]);
    return true;
  };
  const start = (cell: Cell) => {
    setAnchor(cell);
    setReached(cell);
    return pick([cell]);
  };
  const reach = (cell: Cell) => {
    setReached(cell);
    return pick(ground.between(ground.hold(anchor), cell));
  };
  const begin = (cell: Cell) => {
    setAnchor(cell);
    setReached(cell);
  };
  return { cursor, byKey, keyDown, pointerDown: () => setByKey(false), setAnchor: begin };
}
