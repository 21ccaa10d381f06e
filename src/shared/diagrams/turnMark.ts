import { type Box, type Point, type Turn, turnPoint } from '../drawing/turn.ts';
import { turnedAbout } from '../quilt/onPoint/frame.ts';
import type { Arrow, Mark } from './figure.ts';
import { line, middleOf } from './marks.ts';

/**
 * How a block lies: an arrow that points where the block's top has gone, in its middle. With `sides`, a foot at its tail
 * points where the block's right side has gone, so that a mirrored block shows too.
 * @param tilt degrees the block is turned about its middle besides, on point
 */
export function turnMark(box: Box, turn: Turn, sides: boolean, tilt = 0): readonly Mark[] {
  const size = Math.min(box.width, box.height);
  const lying = (x: number, y: number): Point => {
    const point = turnPoint({ x: size / 2 + x * size, y: size / 2 + y * size }, turn, size, size);
    const upright = { x: box.x + (box.width - size) / 2 + point.x, y: box.y + (box.height - size) / 2 + point.y };
    return tilt === 0 ? upright : turnedAbout(upright, middleOf(box), tilt);
  };
  const arrow: Arrow = { kind: 'arrow', means: 'turn', from: lying(0, REACH), to: lying(0, -REACH) };
  return sides ? [line(lying(0, REACH), lying(REACH * 0.6, REACH), 'unit'), arrow] : [arrow];
}

/** How far an arrow reaches from the middle, as a share of the block. */
const REACH = 0.21;
