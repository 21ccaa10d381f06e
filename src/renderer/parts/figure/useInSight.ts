import { type RefObject, useEffect, useState } from 'react';

/** How far outside what can be seen counts as in sight already, pixels: about a window's height. */
const NEAR = 720;
const MARGINS = { rootMargin: `${NEAR}px`, scrollMargin: `${NEAR}px` };

/** Whether an element has come near what can be seen of the window; true from then on. */
export function useInSight(host: RefObject<HTMLElement | null>): boolean {
  const [seen, setSeen] = useState(false);
  useEffect(() => {
    const element = host.current;
    if (seen || element === null) return;
    if (typeof IntersectionObserver === 'undefined' || isNear(element)) return setSeen(true);
    const observer = new IntersectionObserver((entries) => entries.some((one) => one.isIntersecting) && setSeen(true), {
      ...MARGINS,
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [host, seen]);
  return seen;
}

/** Asked at once, so that what can be seen is drawn with the view and not a frame after it. */
function isNear(element: HTMLElement): boolean {
  const { top, bottom, left, right } = element.getBoundingClientRect();
  const { innerWidth, innerHeight } = window;
  return bottom > -NEAR && top < innerHeight + NEAR && right > -NEAR && left < innerWidth + NEAR;
}
