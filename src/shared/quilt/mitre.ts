import type { Point } from '../drawing/turn.ts';
import { given, named, plus, rounded, times } from '../measure/traced.ts';
import type { Border, House } from '../pattern/schema.ts';
import type { Log } from '../piecing/piecing.ts';
import { around, stripBox } from './boxes.ts';
import { cutTo, twoSeams } from './cut.ts';
import { alongOf, type Bordered, finishedWidth, type Growing, grownAll, SIDES_FIRST, stripOf, TWO } from './growing.ts';
import type { QuiltLeaf, StripLeaf } from './quilt.ts';

/** Cloth to spare for the two ends of a mitred strip: quilting handbook, p. 150 (a 3-inch border adds 10). */
const TO_SPARE = 4;

/**
 * Four strips that meet in diagonal seams: each cut to the quilt's measure + 2 × border width + 4 (quilting handbook, p. 150).
 * The seam at each corner finishes border width × √2.
 */
export function mitreBorder(top: Growing, border: Border, width: number, house: House): Bordered {
  const finished = finishedWidth(border, width);
  const reach = [times(TWO, finished), given(TO_SPARE, 'to spare')];
  const mitre = times(finished, given(Math.SQRT2, 'of a diagonal', 'count'));
  const logs: Log<QuiltLeaf>[] = [];
  let box = top.box;
  for (const side of SIDES_FIRST) {
    const measured = named(plus(alongOf(top.size, side), twoSeams(house)), 'across the top');
    const cutLength = rounded(plus(measured, ...reach), house.step, 'up');
    const own = stripBox(side === 'left' || side === 'right' ? top.box : box, side, width);
    const part: StripLeaf = { ...stripOf(border, side, own, cutTo(finished, house), cutLength), mitre };
    logs.push({ side, part });
    box = around(box, own);
  }
  return { logs, top: { box, size: grownAll(top.size, border, { sides: width, ends: width }) } };
}

/** The outline of a border strip in the finished top: a mitred one is longer outside than inside. */
export function stripOutline({ box, side, mitre }: StripLeaf): readonly Point[] {
  const { x, y, width, height } = box;
  const [right, bottom] = [x + width, y + height];
  // The box of a mitred side is as long as its inner edge, that of a mitred end as long as its outer edge.
  const [out, into] = mitre === undefined ? [0, 0] : [width, height];
  const corner = (cx: number, cy: number): Point => ({ x: cx, y: cy });
  switch (side) {
    case 'left':
      return [corner(x, y - out), corner(right, y), corner(right, bottom), corner(x, bottom + out)];
    case 'right':
      return [corner(x, y), corner(right, y - out), corner(right, bottom + out), corner(x, bottom)];
    case 'top':
      return [corner(x, y), corner(right, y), corner(right - into, bottom), corner(x + into, bottom)];
    case 'bottom':
      return [corner(x + into, y), corner(right - into, y), corner(right, bottom), corner(x, bottom)];
  }
}
