import { type PointerEvent, type RefObject, useCallback, useEffect, useRef, useState } from 'react';

/** How a stage is looked at: so many times as large as what fits, its middle moved by so many pixels. */
export interface Sight {
  readonly zoom: number;
  readonly x: number;
  readonly y: number;
}

export const WHOLE: Sight = { zoom: 1, x: 0, y: 0 };

const MOST = 12;
/** A hand has come to rest after so long: what was only stretched is then drawn anew, milliseconds. */
const REST = 180;

/** The sight moved so that the point under the hand stays there. @param at pixels from the middle of the room */
export function zoomedAt(sight: Sight, by: number, at: { readonly x: number; readonly y: number }): Sight {
  const zoom = Math.min(MOST, Math.max(1, sight.zoom * by));
  if (zoom === 1) return WHOLE;
  const share = zoom / sight.zoom;
  return { zoom, x: at.x + (sight.x - at.x) * share, y: at.y + (sight.y - at.y) * share };
}

/** The sight kept so that the figure never leaves its room altogether. */
export function heldIn(sight: Sight, room: { readonly width: number; readonly height: number }): Sight {
  const [far, deep] = [(room.width * sight.zoom) / 2, (room.height * sight.zoom) / 2];
  const hold = (value: number, most: number) => Math.max(-most, Math.min(most, value));
  return { zoom: sight.zoom, x: hold(sight.x, far), y: hold(sight.y, deep) };
}

/**
 * Zoom and pan of a stage: Ctrl and the wheel (or two fingers) about the pointer, the wheel alone moves, and so does the middle
 * button. While the hand moves, what is drawn is only moved and stretched; at rest it is drawn anew at its true size.
 */
export function useZoom(host: RefObject<HTMLElement | null>, sight: Sight, set: (next: Sight) => void) {
  const [drawnAt, setDrawnAt] = useState(sight.zoom);
  const latest = useRef(sight);
  latest.current = sight;
  useEffect(() => {
    const rest = setTimeout(() => setDrawnAt(sight.zoom), REST);
    return () => clearTimeout(rest);
  }, [sight.zoom]);
  const go = useCallback(
    (next: Sight) => {
      const element = host.current;
      if (element !== null) set(heldIn(next, { width: element.clientWidth, height: element.clientHeight }));
    },
    [host, set],
  );
  useEffect(() => {
    const element = host.current;
    if (element === null) return;
    const onWheel = (event: WheelEvent) => {
      const { zoom, x, y } = latest.current;
      if (!(event.ctrlKey || event.metaKey) && zoom === 1) return;
      event.preventDefault();
      if (!(event.ctrlKey || event.metaKey)) return go({ zoom, x: x - event.deltaX, y: y - event.deltaY });
      const box = element.getBoundingClientRect();
      const at = { x: event.clientX - box.left - box.width / 2, y: event.clientY - box.top - box.height / 2 };
      go(zoomedAt(latest.current, Math.exp(-event.deltaY / 300), at));
    };
    // A listener of React's own could not keep the page from scrolling.
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  }, [host, go]);
  return { drawnAt, handlers: usePanning(latest, go) };
}

/** Moves by the middle button held down. */
function usePanning(latest: RefObject<Sight>, go: (next: Sight) => void) {
  const from = useRef<{ readonly x: number; readonly y: number; readonly sight: Sight } | null>(null);
  return {
    onPointerDownCapture: (event: PointerEvent<HTMLElement>) => {
      if (event.button !== 1 || latest.current.zoom === 1) return;
      event.preventDefault();
      event.stopPropagation();
      event.currentTarget.setPointerCapture(event.pointerId);
      from.current = { x: event.clientX, y: event.clientY, sight: latest.current };
    },
    onPointerMoveCapture: (event: PointerEvent<HTMLElement>) => {
      const start = from.current;
      if (start === null) return;
      const { zoom, x, y } = start.sight;
      go({ zoom, x: x + event.clientX - start.x, y: y + event.clientY - start.y });
    },
    onPointerUpCapture: () => {
      from.current = null;
    },
  };
}
