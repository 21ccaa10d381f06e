import { same } from '../measure/inches.ts';
import type { Border, House } from '../pattern/schema.ts';
import type { Log } from '../piecing/piecing.ts';
import { around, stripBox } from './boxes.ts';
import { cornerBorder } from './cornerBorder.ts';
import { cutTo } from './cut.ts';
import {
  alongOf,
  type Bordered,
  type BorderWidths,
  finishedWidth,
  type Growing,
  grown,
  orderOf,
  stripOf,
  widthOn,
} from './growing.ts';
import { mitreBorder } from './mitre.ts';
import type { QuiltLeaf } from './quilt.ts';

export type { Bordered, Growing } from './growing.ts';

/** Whether a border of no width is meant: it is left out. */
export function leftOut({ sides, ends }: BorderWidths): boolean {
  return same(sides, 0) && same(ends, 0);
}

/** One plain border with the corners it asks for, as far as its widths allow them. */
export function plainBorder(top: Growing, border: Border, widths: BorderWidths, house: House): Bordered {
  const allRound = !same(widths.sides, 0) && !same(widths.ends, 0);
  if (border.corners === 'mitred' && same(widths.sides, widths.ends))
    return mitreBorder(top, border, widths.sides, house);
  if (border.corners === 'cornerstones' && allRound) return cornerBorder(top, border, widths, house);
  return buttBorder(top, border, widths, house);
}

/**
 * One plain border, butted: two strips as long as the side they are sewn to, then two as long as what has grown.
 * @returns its strips in sewing order and the top with them on
 */
export function buttBorder(top: Growing, border: Border, widths: BorderWidths, house: House): Bordered {
  const logs: Log<QuiltLeaf>[] = [];
  let now = top;
  for (const side of orderOf(border)) {
    const width = widthOn(side, widths);
    if (same(width, 0)) continue;
    const finished = finishedWidth(border, width);
    const cutLength = cutTo(alongOf(now.size, side), house);
    const part = stripOf(border, side, stripBox(now.box, side, width), cutTo(finished, house), cutLength);
    logs.push({ side, part });
    now = { ...now, box: around(now.box, part.box) };
    if (side === 'right') now = { ...now, size: grown(now.size, 'sides', finished, border.name) };
    if (side === 'bottom') now = { ...now, size: grown(now.size, 'ends', finished, border.name) };
  }
  return { logs, top: now };
}
