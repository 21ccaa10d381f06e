import { type RefObject, useEffect, useRef } from 'react';
import type { Looking } from './useSight.ts';

/** Larger by this for each hundred pixels the wheel turns. */
const PER_TURN = 1.25;

/** The wheel looks nearer and farther about the pointer; with Shift it moves the sheet sideways. */
export function useWheel(host: RefObject<HTMLElement | null>, looking: Looking): void {
  const now = useRef(looking);
  now.current = looking;
  useEffect(() => {
    const element = host.current;
    if (element === null) return;
    const onWheel = (event: WheelEvent) => {
      event.preventDefault();
      const box = element.getBoundingClientRect();
      if (event.shiftKey) return now.current.pan({ x: -event.deltaX - event.deltaY, y: 0 });
      const spot = { x: event.clientX - box.left, y: event.clientY - box.top };
      now.current.zoom(PER_TURN ** (-event.deltaY / 100), spot);
    };
    // React listens passively to the wheel, and a passive listener cannot keep the view from scrolling.
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  }, [host]);
}
