import type { Border, Size } from './schema.ts';

/** Finished widths of a border in one size, inches: of the strips at the sides, and of those at the top and bottom. */
export interface BorderWidths {
  readonly sides: number;
  readonly ends: number;
}

/** The widths of a border in one size: the size's own, else the design's. No width leaves strips out. */
export function borderWidths(border: Border, size: Size): BorderWidths {
  const own = size.borders[border.id];
  const ends = size.borderEnds?.[border.id];
  if (own !== undefined) return { sides: own, ends: ends ?? own };
  return { sides: border.width, ends: ends ?? border.ends ?? border.width };
}
