import type { Box } from '../drawing/turn.ts';
import type { Side } from '../recipe/schema.ts';

/** Where a strip lies that is sewn to the whole of one side. */
export function stripBox(box: Box, side: Side, width: number): Box {
  if (side === 'left') return { ...box, x: box.x - width, width };
  if (side === 'right') return { ...box, x: box.x + box.width, width };
  if (side === 'top') return { ...box, y: box.y - width, height: width };
  return { ...box, y: box.y + box.height, height: width };
}

/** The smallest box that holds two. */
export function around(a: Box, b: Box): Box {
  const x = Math.min(a.x, b.x);
  const y = Math.min(a.y, b.y);
  const right = Math.max(a.x + a.width, b.x + b.width);
  const bottom = Math.max(a.y + a.height, b.y + b.height);
  return { x, y, width: right - x, height: bottom - y };
}
