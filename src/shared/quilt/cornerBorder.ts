import type { Border, House } from '../pattern/schema.ts';
import type { Log, Part } from '../piecing/piecing.ts';
import { around, stripBox } from './boxes.ts';
import { cutTo } from './cut.ts';
import {
  alongOf,
  type Bordered,
  type BorderWidths,
  finishedWidth,
  type Growing,
  grownAll,
  isUpright,
  orderOf,
  stripOf,
  widthOn,
} from './growing.ts';
import type { PatchLeaf, QuiltLeaf, QuiltPart } from './quilt.ts';

/**
 * A border with a square in each corner: two strips as long as the side they are sewn to, then two as long as the other
 * sides with a square at each end.
 */
export function cornerBorder(top: Growing, border: Border, widths: BorderWidths, house: House): Bordered {
  return eachSide(
    top,
    border,
    widths,
    (side, box) => {
      const width = cutTo(finishedWidth(border, widthOn(side, widths)), house);
      return stripOf(border, side, box, width, cutTo(alongOf(top.size, side), house));
    },
    (x, y) => plainCorner(border, widths, x, y, house),
  );
}

/**
 * A border whose second pair of sides has corners at its ends.
 * @param sidePart what lies along one side of the top, in its box; @param corner what fills a corner, from its upper left
 */
export function eachSide(
  top: Growing,
  border: Border,
  widths: BorderWidths,
  sidePart: (side: Log<QuiltLeaf>['side'], box: Growing['box']) => QuiltPart,
  corner: (x: number, y: number) => Part<QuiltLeaf>,
): Bordered {
  const logs: Log<QuiltLeaf>[] = [];
  let { box } = top;
  for (const [i, side] of orderOf(border).entries()) {
    const own = stripBox(top.box, side, widthOn(side, widths));
    const alone = sidePart(side, own);
    const part = i < 2 ? alone : withCorners(alone, own, isUpright(side), widths, corner);
    logs.push({ side, part });
    box = around(box, part.box);
  }
  return { logs, top: { box, size: grownAll(top.size, border, widths) } };
}

function withCorners(
  alone: QuiltPart,
  box: Growing['box'],
  upright: boolean,
  { sides, ends }: BorderWidths,
  corner: (x: number, y: number) => Part<QuiltLeaf>,
): QuiltPart {
  const first = upright ? corner(box.x, box.y - ends) : corner(box.x - sides, box.y);
  const last = upright ? corner(box.x, box.y + box.height) : corner(box.x + box.width, box.y);
  const along = upright ? 'down' : 'across';
  return { kind: 'row', along, parts: [first, alone, last], box: around(first.box, last.box) };
}

/** A plain square in a corner; a rectangle where the sides are not as wide as the ends. */
export function plainCorner(
  border: Border,
  { sides, ends }: BorderWidths,
  x: number,
  y: number,
  house: House,
): PatchLeaf {
  const cut = (width: number) => cutTo(finishedWidth(border, width), house);
  return {
    kind: 'patch',
    use: 'border-corner',
    name: `border ${border.id} corner`,
    words: `${border.name}, corners`,
    fabric: border.cornerstones ?? border.fabric,
    box: { x, y, width: sides, height: ends },
    cut: { width: cut(sides), height: cut(ends) },
    border: border.id,
  };
}
