import { same } from '../measure/inches.ts';
import type { Border, House, Size } from '../pattern/schema.ts';
import type { Log } from '../piecing/piecing.ts';
import { around, stripBox } from './boxes.ts';
import { cornerBorder } from './cornerBorder.ts';
import { cutTo } from './cut.ts';
import { alongOf, type Bordered, finishedWidth, type Growing, grown, orderOf, stripOf } from './growing.ts';
import { mitreBorder } from './mitre.ts';
import type { QuiltLeaf } from './quilt.ts';

export type { Bordered, Growing } from './growing.ts';

/** The finished width of a border in one size, inches; 0 leaves it out there. */
export function borderWidth(border: Border, size: Size): number {
  return size.borders[border.id] ?? border.width;
}

/** Whether a border of no width is meant: it is left out. */
export function leftOut(width: number): boolean {
  return same(width, 0);
}

/** One plain border with the corners it asks for. */
export function plainBorder(top: Growing, border: Border, width: number, house: House): Bordered {
  if (border.corners === 'mitred') return mitreBorder(top, border, width, house);
  if (border.corners === 'cornerstones') return cornerBorder(top, border, width, house);
  return buttBorder(top, border, width, house);
}

/**
 * One plain border, butted: two strips as long as the side they are sewn to, then two as long as what has grown.
 * @returns its four strips in sewing order and the top with them on
 */
export function buttBorder(top: Growing, border: Border, width: number, house: House): Bordered {
  const finished = finishedWidth(border, width);
  const logs: Log<QuiltLeaf>[] = [];
  let now = top;
  for (const side of orderOf(border)) {
    const cutLength = cutTo(alongOf(now.size, side), house);
    const part = stripOf(border, side, stripBox(now.box, side, width), cutTo(finished, house), cutLength);
    logs.push({ side, part });
    now = { ...now, box: around(now.box, part.box) };
    if (side === 'right') now = { ...now, size: grown(now.size, 'sides', finished, border.name) };
    if (side === 'bottom') now = { ...now, size: grown(now.size, 'ends', finished, border.name) };
  }
  return { logs, top: now };
}
