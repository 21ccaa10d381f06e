import type { Box } from '../drawing/turn.ts';
import { count, given, named, plus, type Traced, type TracedSize, times } from '../measure/traced.ts';
import type { Border } from '../pattern/schema.ts';
import type { Log } from '../piecing/piecing.ts';
import type { Side } from '../recipe/schema.ts';
import type { QuiltLeaf, StripLeaf } from './quilt.ts';

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

/** A border's finished width as sums quote it. */
export function finishedWidth(border: Border, width: number): Traced {
  return given(width, `${border.name.toLowerCase()} finished`);
}

/** How long the side is that a strip is sewn to, finished. */
export function alongOf(size: TracedSize, side: Side): Traced {
  return side === 'left' || side === 'right' ? size.height : size.width;
}

export function stripOf(border: Border, side: Side, box: Box, cutWidth: Traced, cutLength: Traced): StripLeaf {
  return { kind: 'strip', border: border.id, fabric: border.fabric, side, box, cutWidth, cutLength };
}

/** The top once both strips of a pair are on. */
export function grown(size: TracedSize, pair: 'sides' | 'ends', finished: Traced, border: string): TracedSize {
  const both = times(TWO, finished);
  const name = `with ${border.toLowerCase()}`;
  if (pair === 'sides') return { ...size, width: named(plus(size.width, both), name) };
  return { ...size, height: named(plus(size.height, both), name) };
}

/** The top once a border is on all four sides. */
export function grownAll(size: TracedSize, finished: Traced, border: string): TracedSize {
  return grown(grown(size, 'sides', finished, border), 'ends', finished, border);
}
