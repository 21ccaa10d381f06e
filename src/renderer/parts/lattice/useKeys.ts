import { type KeyboardEvent, useState } from 'react';
import { allCells, type Cell, cellsBetween, columnsOf, rowsOf, steppedBy, toggled, within } from './lattice.ts';
import type { Picking } from './picking.ts';

/** The cell the keys start from, and what each key does. */
export function useKeys({ lattice, picked, onPick, onKey }: Picking) {
  const [anchor, setAnchor] = useState<Cell>({ column: 0, row: 0 });
  const [reached, setReached] = useState<Cell | null>(null);
  const [byKey, setByKey] = useState(true);
  const last = { column: columnsOf(lattice) - 1, row: rowsOf(lattice) - 1 };
  const cursor = within(reached ?? picked.at(-1) ?? anchor, last);

  const keyDown = (event: KeyboardEvent) => {
    setByKey(true);
    const did = press(event);
    if (!did) return;
    event.preventDefault();
    event.stopPropagation();
  };

  const press = (event: KeyboardEvent): boolean => {
    if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'a') return pick(allCells(lattice));
    if (event.ctrlKey || event.metaKey || event.altKey) return false;
    if (event.key === ' ') return pick(toggled(picked, cursor));
    if (event.key === 'Escape' && picked.length > 0) return pick([]);
    const next = picked.length === 0 ? arrived(event.key) : steppedBy(lattice, cursor, event.key);
    if (next === null) return onKey?.(event.key) ?? false;
    return event.shiftKey ? reach(next) : start(next);
  };

  // The first arrow key lands on the cursor instead of stepping past it.
  const arrived = (key: string) => (steppedBy(lattice, cursor, key) === null ? null : cursor);
  const pick = (cells: readonly Cell[]) => {
    onPick(cells);
    return true;
  };
  const start = (cell: Cell) => {
    setAnchor(cell);
    setReached(cell);
    return pick([cell]);
  };
  const reach = (cell: Cell) => {
    setReached(cell);
    return pick(cellsBetween(within(anchor, last), cell));
  };
  const begin = (cell: Cell) => {
    setAnchor(cell);
    setReached(cell);
  };
  return { cursor, byKey, keyDown, pointerDown: () => setByKey(false), setAnchor: begin };
}
