import type { Point } from '../drawing/turn.ts';
import type { Mark } from './figure.ts';
import { line } from './marks.ts';

/**
 * A length said beside a figure: a fine line from end to end, a tick at both, the words in the middle of it.
 * @param tick length of the ticks, inches of cloth
 */
export function measuredLine(from: Point, to: Point, words: string, tick: number): readonly Mark[] {
  const upright = from.x === to.x;
  const half = upright ? { x: tick / 2, y: 0 } : { x: 0, y: tick / 2 };
  const tickAt = ({ x, y }: Point) =>
    line({ x: x - half.x, y: y - half.y }, { x: x + half.x, y: y + half.y }, 'measure');
  const at = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  return [
    line(from, to, 'measure'),
    tickAt(from),
    tickAt(to),
    { kind: 'letter', text: words, at, style: 'measure', align: 'middle', upright },
  ];
}
