import type { Box } from '../../../shared/drawing/turn.ts';
import type { Pattern, Size } from '../../../shared/pattern/schema.ts';
import { type BorderWidths, borderWidths } from '../../../shared/quilt/growing.ts';
import type { Quilt } from '../../../shared/quilt/quilt.ts';

/** Where one border lies in a quilt. */
export interface BorderRing {
  /** The border's id. */
  readonly border: string;
  /** Its outer and inner edge, finished inches. */
  readonly outer: Box;
  readonly inner: Box;
  readonly widths: BorderWidths;
}

/** The borders a size has, from the inside out. */
export function borderRings({ borders }: Pattern, size: Size, quilt: Quilt): readonly BorderRing[] {
  const whole = { x: 0, y: 0, width: quilt.finished.width.value, height: quilt.finished.height.value };
  const rings: BorderRing[] = [];
  let outer: Box = whole;
  for (const { border: id } of quilt.borders.toReversed()) {
    const border = borders.find((one) => one.id === id);
    if (border === undefined) continue;
    const widths = border.pieced === undefined ? borderWidths(border, size) : allRound(borderWidths(border, size));
    const inner = {
      x: outer.x + widths.sides,
      y: outer.y + widths.ends,
      width: outer.width - 2 * widths.sides,
      height: outer.height - 2 * widths.ends,
    };
    rings.unshift({ border: id, outer, inner, widths });
    outer = inner;
  }
  return rings;
}

/** The units of a border are as high at the top and bottom as at the sides. */
function allRound({ sides }: BorderWidths): BorderWidths {
  return { sides, ends: sides };
}
