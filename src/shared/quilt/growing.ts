import type { Box } from '../drawing/turn.ts';
import { type Inches, same } from '../measure/inches.ts';
import { count, given, named, plus, type Traced, type TracedSize, times } from '../measure/traced.ts';
import type { BorderWidths } from '../pattern/borderWidths.ts';
import type { Border } from '../pattern/schema.ts';
import type { Log } from '../piecing/piecing.ts';
import type { Side } from '../recipe/schema.ts';
import type { QuiltLeaf, StripLeaf } from './quilt.ts';

export { type BorderWidths, borderWidths } from '../pattern/borderWidths.ts';

/** A quilt top while its borders are being sewn on. */
export interface Growing {
  readonly box: Box;
  readonly size: TracedSize;
}

/** What a border adds: its parts in sewing order, and the top with them on. */
export interface Bordered {
  readonly logs: readonly Log<QuiltLeaf>[];
  readonly top: Growing;
}

export const TWO = count(2, '');
export const SIDES_FIRST: readonly Side[] = ['left', 'right', 'top', 'bottom'];
const ENDS_FIRST: readonly Side[] = ['top', 'bottom', 'left', 'right'];

/** The sides of a border in the order they are sewn. */
export function orderOf(border: Border): readonly Side[] {
  return border.first === 'sides' ? SIDES_FIRST : ENDS_FIRST;
}

/** Whether a strip stands at a side of the quilt, and not at its top or bottom. */
export function isUpright(side: Side): boolean {
  return side === 'left' || side === 'right';
}

/** The width of the strips on one side. */
export function widthOn(side: Side, { sides, ends }: BorderWidths): Inches {
  return isUpright(side) ? sides : ends;
}

/** A border's finished width as sums quote it. */
export function finishedWidth(border: Border, width: number): Traced {
  return given(width, `${border.name.toLowerCase()} finished`);
}

/** How long the side is that a strip is sewn to, finished. */
export function alongOf(size: TracedSize, side: Side): Traced {
  return isUpright(side) ? size.height : size.width;
}

export function stripOf(border: Border, side: Side, box: Box, cutWidth: Traced, cutLength: Traced): StripLeaf {
  return { kind: 'strip', border: border.id, fabric: border.fabric, side, box, cutWidth, cutLength };
}

/** The top once both strips of a pair are on. */
export function grown(size: TracedSize, pair: 'sides' | 'ends', finished: Traced, border: string): TracedSize {
  if (same(finished.value, 0)) return size;
  const both = times(TWO, finished);
  const name = `with ${border.toLowerCase()}`;
  if (pair === 'sides') return { ...size, width: named(plus(size.width, both), name) };
  return { ...size, height: named(plus(size.height, both), name) };
}

/** The top once a border is on all four sides. */
export function grownAll(size: TracedSize, border: Border, { sides, ends }: BorderWidths): TracedSize {
  const wider = grown(size, 'sides', finishedWidth(border, sides), border.name);
  return grown(wider, 'ends', finishedWidth(border, ends), border.name);
}
