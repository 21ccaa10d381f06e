import { type Box, type Point, type Turn, turnPoint } from '../drawing/turn.ts';
import type { Arrow, Mark } from './figure.ts';
import { line } from './marks.ts';

/**
 * How a block lies: an arrow that points where the block's top has gone, in its middle. With `sides`, a foot at its tail
 * points where the block's right side has gone, so that a mirrored block shows too.
 */
export function turnMark(box: Box, turn: Turn, sides: boolean): readonly Mark[] {
  const size = Math.min(box.width, box.height);
  const lying = (x: number, y: number): Point => {
    const point = turnPoint({ x: size / 2 + x * size, y: size / 2 + y * size }, turn, size, size);
    return { x: box.x + (box.width - size) / 2 + point.x, y: box.y + (box.height - size) / 2 + point.y };
  };
  const arrow: Arrow = { kind: 'arrow', means: 'turn', from: lying(0, REACH), to: lying(0, -REACH) };
  return sides ? [line(lying(0, REACH), lying(REACH * 0.6, REACH), 'unit'), arrow] : [arrow];
}

/** How far an arrow reaches from the middle, as a share of the block. */
const REACH = 0.21;
