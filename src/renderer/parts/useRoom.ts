import { type RefObject, useEffect, useState } from 'react';

/** The room inside an element, CSS pixels; nothing before it is on screen. */
export interface Room {
  readonly width: number;
  readonly height: number;
}

/** How much room an element has, kept up to date. Its padding and scroll bars count as room. */
export function useRoom(host: RefObject<HTMLElement | null>): Room {
  const [room, setRoom] = useState<Room>({ width: 0, height: 0 });
  useEffect(() => {
    const element = host.current;
    if (element === null) return;
    const measure = () => {
      const { width, height } = element.getBoundingClientRect();
      setRoom((old) => (old.width === width && old.height === height ? old : { width, height }));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [host]);
  return room;
}
