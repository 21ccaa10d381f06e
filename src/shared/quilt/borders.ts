import type { Box } from '../drawing/turn.ts';
import { same } from '../measure/inches.ts';
import { count, given, named, plus, type Traced, type TracedSize, times } from '../measure/traced.ts';
import type { Border, House, Size } from '../pattern/schema.ts';
import type { Log } from '../piecing/piecing.ts';
import type { Side } from '../recipe/schema.ts';
import { cutTo } from './cut.ts';
import type { QuiltLeaf, StripLeaf } from './quilt.ts';

/** A quilt top while its borders are being sewn on. */
export interface Growing {
  readonly box: Box;
  readonly size: TracedSize;
}

/** The finished width of a border in one size, inches; 0 leaves it out there. */
export function borderWidth(border: Border, size: Size): number {
  return size.borders[border.id] ?? border.width;
}

const TWO = count(2, '');
const SIDES_FIRST: readonly Side[] = ['left', 'right', 'top', 'bottom'];
const ENDS_FIRST: readonly Side[] = ['top', 'bottom', 'left', 'right'];

/**
 * One plain border, butted: two strips as long as the side they are sewn to, then two as long as what has grown.
 * @returns its four strips in sewing order and the top with them on
 */
export function buttBorder(
  top: Growing,
  border: Border,
  width: number,
  house: House,
): { readonly logs: readonly Log<QuiltLeaf>[]; readonly top: Growing } {
  const finished = given(width, `${border.name.toLowerCase()} finished`);
  const cutWidth = cutTo(finished, house);
  const logs: Log<QuiltLeaf>[] = [];
  let now = top;
  for (const side of border.first === 'sides' ? SIDES_FIRST : ENDS_FIRST) {
    const along = side === 'left' || side === 'right' ? now.size.height : now.size.width;
    const cutLength = cutTo(along, house);
    const box = stripBox(now.box, side, width);
    const part: StripLeaf = { kind: 'strip', border: border.id, fabric: border.fabric, side, box, cutWidth, cutLength };
    logs.push({ side, part });
    now = { box: around(now.box, box), size: now.size };
    if (side === 'right' || side === 'bottom') now = { ...now, size: grown(now.size, side, finished, border.name) };
  }
  return { logs, top: now };
}

function grown(size: TracedSize, side: Side, finished: Traced, border: string): TracedSize {
  const both = times(TWO, finished);
  const name = `with ${border.toLowerCase()}`;
  if (side === 'right') return { ...size, width: named(plus(size.width, both), name) };
  return { ...size, height: named(plus(size.height, both), name) };
}

function stripBox(box: Box, side: Side, width: number): Box {
  if (side === 'left') return { ...box, x: box.x - width, width };
  if (side === 'right') return { ...box, x: box.x + box.width, width };
  if (side === 'top') return { ...box, y: box.y - width, height: width };
  return { ...box, y: box.y + box.height, height: width };
}

function around(a: Box, b: Box): Box {
  const x = Math.min(a.x, b.x);
  const y = Math.min(a.y, b.y);
  const right = Math.max(a.x + a.width, b.x + b.width);
  const bottom = Math.max(a.y + a.height, b.y + b.height);
  return { x, y, width: right - x, height: bottom - y };
}

/** Whether a border of no width is meant: it is left out. */
export function leftOut(width: number): boolean {
  return same(width, 0);
}
