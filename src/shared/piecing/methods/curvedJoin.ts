import { arcBetween, pointAt } from '../../drawing/curve.ts';
import type { Part, Work } from '../allowance/work.ts';
import { faceDown, openedPart, type Stretch, stretchesOf } from './joins.ts';
import { type Picture, picture, together } from './picture.ts';
import { at, line } from './pieces.ts';

/**
 * Two parts about to be sewn along a curve: the one that curves inwards lies face down on the other, and they touch where
 * they are pinned first, in the middle of the curve. From there both raw edges curve away.
 */
export function curvedOn(work: Work, first: Part, added: Part, seam: readonly number[]): Picture {
  const [lower, upper] = isRoundInside(work, first, added) ? [added, first] : [first, added];
  const stretches = stretchesOf(work, seam);
  const over = tangentOf(stretches);
  const length = Math.hypot(over.to.x - over.from.x, over.to.y - over.from.y);
  const [ux, uy] = [(over.to.x - over.from.x) / length, (over.to.y - over.from.y) / length];
  const middle = at((over.from.x + over.to.x) / 2, (over.from.y + over.to.y) / 2);
  const pin = line(
    'marked',
    at(middle.x - uy * work.seam, middle.y + ux * work.seam),
    at(middle.x + uy * work.seam, middle.y - ux * work.seam),
  );
  return together(openedPart(work, lower), faceDown(work, upper, over), picture({ lines: [pin] }));
}

/** The straight line that touches a curve in its middle, as long as its middle stretches are. */
function tangentOf(stretches: readonly Stretch[]): Stretch {
  const half = stretches.length / 2;
  const first = stretches[Math.ceil(half) - 1] as Stretch;
  const second = stretches[Math.floor(half)] as Stretch;
  return { from: first.from, to: second.to };
}

/** Whether the first of two parts is the one that curves inwards where they meet. */
export function isRoundInside(work: Work, first: Part, added: Part): boolean {
  for (const patch of first) {
    const { outline } = work.drawing.patches[patch] as (typeof work.drawing.patches)[number];
    for (const [i, a] of outline.entries()) {
      const b = outline[(i + 1) % outline.length] as number;
      const beyond = work.owner(b, a);
      const arc = arcBetween(work.drawing, a, b);
      if (arc === null || beyond === undefined || !added.has(beyond)) continue;
      const [from, to] = [pointAt(work.drawing, a), pointAt(work.drawing, b)];
      // Walked clockwise, a patch has the centre of an arc that bulges outwards on its right.
      return (to.x - from.x) * (arc.centre.y - from.y) - (to.y - from.y) * (arc.centre.x - from.x) < 0;
    }
  }
  return false;
}
