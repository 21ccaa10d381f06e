import type { BlockPart, Ring, Rounds, UnitLeaf } from '../piecing/piecing.ts';
import { leavesOf } from '../piecing/tree.ts';
import { HERE, innerEdge, type SeamSpot } from './apart.ts';
import { inInches, leafMarks, type SewnBlock } from './blockParts.ts';
import type { Figure, Mark } from './figure.ts';
import { framed, letter } from './marks.ts';
import { pressArrows } from './pressArrows.ts';

/** Half an arrow over a seam of logs, as a share of the longer side of what is sewn. */
const REACH = 0.055;

/**
 * A block of logs with some logs just sewn: those in full tone with their order and pressing, what was there before pale,
 * what comes later not yet there.
 * @param first the first log just sewn, from 0; @param last the last one
 */
export function roundFigure(
  block: SewnBlock,
  rounds: Rounds<UnitLeaf> | Ring<UnitLeaf>,
  path: string,
  first: number,
  last: number,
  alt: string,
): Figure {
  return framed(roundMarks(block, rounds, path, { first, last }), alt);
}

/** Which logs were just sewn on, from 0, and whose pressing is shown: theirs, unless something else is said. */
export interface JustSewn {
  readonly first: number;
  readonly last: number;
  readonly pressed?: readonly number[];
}

/** What such a figure is made of, in inches of the block. */
export function roundMarks(
  block: SewnBlock,
  rounds: Rounds<UnitLeaf> | Ring<UnitLeaf>,
  path: string,
  { first, last, pressed }: JustSewn,
): readonly Mark[] {
  const before = [rounds.core, ...rounds.logs.slice(0, first).map((log) => log.part)];
  const now = rounds.logs.slice(first, last + 1);
  const pale = leafMarks(block, placed(before), 'pale');
  const full = leafMarks(block, placed(now.map((log) => log.part)), 'full');
  const numbers = now.map(({ part }, i) => orderNumber(block, part, first + i + 1));
  const presses = block.pressing.parts.find((part) => part.path === path)?.seams ?? [];
  const shown = pressed ?? now.map((_, i) => first + i);
  const seams = shown.flatMap((index): readonly SeamSpot[] => {
    const { side, part } = rounds.logs[index] as Rounds<UnitLeaf>['logs'][number];
    const press = presses[index];
    const upright = side === 'left' || side === 'right';
    return press === undefined ? [] : [{ path, press, upright, middle: innerEdge(side, part.box) }];
  });
  const reach = longerSide([...before, ...now.map((log) => log.part)]) * block.grid * REACH;
  return [...pale, ...full, ...pressArrows(seams, block.grid, reach), ...numbers];
}

function placed(parts: readonly BlockPart[]) {
  return parts.flatMap((part) => leavesOf<UnitLeaf>(part)).map((leaf) => ({ leaf, by: HERE }));
}

/** A log's place in the order of sewing stands a quarter along it, clear of its arrow. */
function orderNumber({ grid }: SewnBlock, part: BlockPart, order: number): Mark {
  const { x, y, width, height } = inInches(part.box, HERE, grid);
  const lying = width >= height;
  return letter(String(order), { x: x + width * (lying ? 0.22 : 0.5), y: y + height * (lying ? 0.5 : 0.22) }, 'number');
}

function longerSide(parts: readonly BlockPart[]): number {
  const xs = parts.flatMap(({ box }) => [box.x, box.x + box.width]);
  const ys = parts.flatMap(({ box }) => [box.y, box.y + box.height]);
  return Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
}
