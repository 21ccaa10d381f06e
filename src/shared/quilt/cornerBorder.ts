import type { Traced } from '../measure/traced.ts';
import type { Border, House } from '../pattern/schema.ts';
import type { Log } from '../piecing/piecing.ts';
import { around, stripBox } from './boxes.ts';
import { cutTo } from './cut.ts';
import { alongOf, type Bordered, finishedWidth, type Growing, grownAll, orderOf, stripOf } from './growing.ts';
import type { PatchLeaf, QuiltLeaf, QuiltPart, StripLeaf } from './quilt.ts';

/**
 * A border with a square in each corner: two strips as long as the side they are sewn to, then two as long as the other
 * sides with a square at each end.
 */
export function cornerBorder(top: Growing, border: Border, width: number, house: House): Bordered {
  const finished = finishedWidth(border, width);
  const cutWidth = cutTo(finished, house);
  const logs: Log<QuiltLeaf>[] = [];
  let box = top.box;
  for (const [i, side] of orderOf(border).entries()) {
    const long = cutTo(alongOf(top.size, side), house);
    const alone = stripOf(border, side, stripBox(top.box, side, width), cutWidth, long);
    const part = i < 2 ? alone : withCorners(alone, border, width, cutWidth);
    logs.push({ side, part });
    box = around(box, part.box);
  }
  return { logs, top: { box, size: grownAll(top.size, finished, border.name) } };
}

function withCorners(strip: StripLeaf, border: Border, width: number, cut: Traced): QuiltPart {
  const { box, side } = strip;
  const upright = side === 'left' || side === 'right';
  const corner = (x: number, y: number): PatchLeaf => ({
    kind: 'patch',
    use: 'border-corner',
    name: `border ${border.id} corner`,
    words: `${border.name}, corners`,
    fabric: border.cornerstones ?? border.fabric,
    box: { x, y, width, height: width },
    cut: { width: cut, height: cut },
    border: border.id,
  });
  const first = upright ? corner(box.x, box.y - width) : corner(box.x - width, box.y);
  const last = upright ? corner(box.x, box.y + box.height) : corner(box.x + box.width, box.y);
  const whole = around(first.box, last.box);
  return { kind: 'row', along: upright ? 'down' : 'across', parts: [first, strip, last], box: whole };
}
