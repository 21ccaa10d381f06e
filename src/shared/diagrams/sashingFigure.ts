import type { PatchLeaf } from '../quilt/quilt.ts';
import type { Figure } from './figure.ts';
import { boxOutline, framed, plainArea } from './marks.ts';

/** A sashing is drawn no longer than so many times its width: a long one would be a line. */
const LONGEST = 5;

/** The strips of one sashing as they lie side by side once they are sewn; a long one is drawn shortened. */
export function sashingFigure(strips: readonly PatchLeaf[]): Figure {
  const down = strips[0]?.sash?.run === 'down';
  const width = strips.reduce((sum, { sash }) => sum + (sash?.width ?? 0), 0);
  let at = 0;
  const marks = strips.map(({ sash, cut, fabric }) => {
    const wide = sash?.width ?? 0;
    const long = Math.min(down ? cut.height.value : cut.width.value, LONGEST * width);
    const box = down ? { x: at, y: 0, width: wide, height: long } : { x: 0, y: at, width: long, height: wide };
    at += wide;
    return plainArea([boxOutline(box)], fabric, 'full', 'unit');
  });
  return framed(marks, `A sashing of ${strips.length} strips side by side.`);
}
