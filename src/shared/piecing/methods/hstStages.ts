import type { Traced } from '../../measure/traced.ts';
import type { Stage } from '../method.ts';
import type { SceneLine } from '../scene.ts';
import type { Pair } from './hst.ts';
import { asScene, beside, type Picture, picture, together } from './picture.ts';
import { at, cloth, falling, press, rectangle, rising, trimming } from './pieces.ts';

/** The stages that every way of making half-square triangles shares: marking, opening and trimming. */

/** One diagonal drawn on the upper square. */
export function markOne(pair: Pair, side: number): Stage {
  return markStage(pair, side, 'a line from corner to corner', [rising('marked', side, side)]);
}

/** Both diagonals drawn on the upper square. */
export function markBoth(pair: Pair, side: number): Stage {
  return markStage(pair, side, 'both diagonals', diagonals(side, 'marked'));
}

/** Both diagonals of a square. */
export function diagonals(side: number, kind: SceneLine['kind']): readonly SceneLine[] {
  return [rising(kind, side, side), falling(kind, side, 0)];
}

/** Two squares side by side, the upper one with its wrong side up and marked. */
function markStage(pair: Pair, side: number, what: string, marks: readonly SceneLine[]): Stage {
  const square = rectangle(0, 0, side, side);
  const marked = picture({ cloth: [cloth(pair.upper, square, 'wrong')], lines: marks });
  const other = picture({ cloth: [cloth(pair.lower, square)] });
  const words = [`On the wrong side of ${markedSquare(pair)} draw ${what}.`];
  const alt = 'Two squares of the same size; one lies wrong side up with its diagonal drawn.';
  return { words, scene: asScene(beside(side / 6, marked, other), alt) };
}

/** The square that is marked, as the words call it. */
export function markedSquare(pair: Pair): string {
  return pair.byValue ? 'the lighter square' : 'one of the two squares';
}

/** The two halves of a sewn pair of squares, each with its own seam: top and bottom for a line that rises, and so on. */
export function halves(pair: Pair, side: number, seam: number, diagonal: 'rising' | 'falling'): readonly Picture[] {
  const inset = seam * Math.SQRT2;
  const [a, b, c, d] = [at(0, 0), at(side, 0), at(side, side), at(0, side)];
  const half = (corners: readonly (typeof a)[], sewn: SceneLine) =>
    picture({ cloth: [cloth(pair.upper, corners, 'wrong')], lines: [sewn] });
  return diagonal === 'rising'
    ? [half([a, b, d], rising('sewn', side, side - inset)), half([b, c, d], rising('sewn', side, side + inset))]
    : [half([a, b, c], falling('sewn', side, -inset)), half([a, c, d], falling('sewn', side, inset))];
}

/**
 * One unit opened, as it lies before trimming: the triangle the seam is pressed away from still shows the two small ears of
 * its seam allowance; the other lies over it along the seam.
 */
export function opened(pair: Pair, side: number, seam: number): Picture {
  const open = side - seam * Math.SQRT2;
  const [first, second] = pair.roles;
  if (pair.pressTo === 'second') {
    const under = cloth(first, [at(0, 0), at(side, 0), at(0, side)]);
    return picture({ cloth: [under, cloth(second, [at(open, 0), at(open, open), at(0, open)])] });
  }
  const under = cloth(second, [at(open, open), at(open, open - side), at(open - side, open)]);
  return picture({ cloth: [under, cloth(first, [at(0, 0), at(open, 0), at(0, open)])] });
}

/** Opening and pressing. */
export function pressStage(pair: Pair, side: number, seam: number): Stage {
  const open = side - seam * Math.SQRT2;
  const middle = at(open / 2, open / 2);
  const towards = pair.pressTo === 'second' ? at(open, open) : at(0, 0);
  const arrow = picture({ arrows: [press(middle, towards, open / 3)] });
  const words = pair.byValue
    ? 'Open each unit and press its seam towards the darker fabric.'
    : 'Open each unit and press its seam to one side, the same side in every unit.';
  const alt = 'A square of two triangles, opened; an arrow shows which way its seam is pressed.';
  return { words: [words], scene: asScene(together(opened(pair, side, seam), arrow), alt) };
}

/** Trimming, with the seam kept from corner to corner. */
export function trimStage(pair: Pair, side: number, seam: number, unfinished: Traced): Stage {
  const open = side - seam * Math.SQRT2;
  const size = unfinished.value;
  const edge = (open - size) / 2;
  const lines = trimming(edge, edge, size, size);
  const words = ['Trim each unit to ', unfinished, ' square, with the seam running from corner to corner.'];
  const alt = 'The opened square with trimming lines; its seam runs through two of their corners.';
  return { words, scene: asScene(together(opened(pair, side, seam), picture({ lines })), alt) };
}
