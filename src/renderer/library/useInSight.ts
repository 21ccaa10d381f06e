import { type RefObject, useEffect, useRef } from 'react';
import { GridLayout } from 'react-aria-components';
import type { Shelf } from './useShelf.ts';
import { isFiltered } from './wishes.ts';

/** The layout of a shelf, and the shelf itself, for whoever has to move it. */
export interface Sight {
  readonly layout: GridLayout<object>;
  readonly shelf: RefObject<HTMLDivElement | null>;
}

const MARGIN = 8;

/** How often more of a long shelf is asked for to find one card. */
const MOST_ASKED = 10;

/** Asks for more of the whole shelf until the picked card is on it: one that was brought in may stand at its end. */
function useFetched(picked: string | undefined, there: boolean, { recipes, count, wishes, more }: Shelf): void {
  const asked = useRef({ for: picked, times: 0 });
  const whole = wishes.words === '' && !isFiltered(wishes.filters);
  const length = recipes.length;
  const all = length >= count;
  useEffect(() => {
    if (asked.current.for !== picked) asked.current = { for: picked, times: 0 };
    if (picked === undefined || there || all || !whole || length === 0 || asked.current.times >= MOST_ASKED) return;
    asked.current.times += 1;
    more();
  }, [picked, there, all, whole, length, more]);
}

/**
 * Moves the shelf so that the card that is picked can be seen: once for each card, for one that was just brought in may lie
 * far down. Where the designer moves the shelf herself, it stays.
 */
export function useInSight(picked: string | undefined, from: Shelf): Sight {
  const there = from.recipes.some(({ id }) => id === picked);
  useFetched(picked, there, from);
  const layout = useRef<GridLayout<object>>(null);
  layout.current ??= new GridLayout<object>();
  const shelf = useRef<HTMLDivElement>(null);
  const shown = useRef<string>(undefined);
  useEffect(() => {
    if (picked === undefined || !there || shown.current === picked) return;
    // The shelf lays its cards out after this; then it knows where the card lies.
    const frame = requestAnimationFrame(() => {
      const place = layout.current?.getLayoutInfo(picked)?.rect;
      const room = shelf.current;
      if (place === undefined || room === null) return;
      shown.current = picked;
      const above = place.y < room.scrollTop;
      const below = place.y + place.height > room.scrollTop + room.clientHeight;
      if (above || below) room.scrollTop = place.y - MARGIN;
    });
    return () => cancelAnimationFrame(frame);
  }, [picked, there]);
  return { layout: layout.current, shelf };
}
