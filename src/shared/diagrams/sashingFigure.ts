import type { PatchLeaf } from '../quilt/quilt.ts';
import type { Figure } from './figure.ts';
import { boxOutline, framed, plainArea } from './marks.ts';

/** A sashing is drawn no longer than so many times its width: a long one would be a line. */
const LONGEST = 5;

/** The strips of one sashing as they lie side by side once they are sewn; a long one is drawn shortened. */
export function sashingFigure(strips: readonly PatchLeaf[]): Figure {
  const down = strips[0]?.sash?.run === 'down';
  const width = strips.reduce((sum, { box }) => sum + (down ? box.width : box.height), 0);
  const marks = strips.map(({ box, fabric }) => {
    const long = Math.min(down ? box.height : box.width, LONGEST * width);
    const shown = down ? { ...box, height: long } : { ...box, width: long };
    return plainArea([boxOutline(shown)], fabric, 'full', 'unit');
  });
  return framed(marks, `A sashing of ${strips.length} strips side by side.`);
}
