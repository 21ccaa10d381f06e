import type { Box, Point } from '../../drawing/turn.ts';
import type { Part } from '../piecing.ts';
import { joinsOf } from '../seamTree.ts';
import type { LooseLeaf } from '../sub.ts';
import { isLeaf, leavesOf } from '../tree.ts';
import { isPinned, type Pin } from './pins.ts';

/** Whether a plan keeps what a pin asks for. */
export function isKept(root: Part<LooseLeaf>, { first, unit }: Pin): boolean {
  const seam = first === undefined || seamsOf(root).some(([start, end]) => isPinned(first, start, end));
  const made = unit === undefined || leavesOf<LooseLeaf>(root).some(({ box }) => isBetween(unit, box));
  return seam && made;
}

type Ends = readonly [Point, Point];

/** Whether a box lies between two of its opposite corners. */
function isBetween(corners: Ends, { x, y, width, height }: Box): boolean {
  const [right, bottom] = [x + width, y + height];
  return isPinned(corners, { x, y }, { x: right, y: bottom }) || isPinned(corners, { x, y: bottom }, { x: right, y });
}

/** The ends of every full seam, of rows and rounds and inside pieced units. */
function seamsOf(part: Part<LooseLeaf>): readonly Ends[] {
  if (isLeaf<LooseLeaf>(part)) return insideSeams(part);
  if (part.kind === 'row') {
    const own = part.parts.slice(1).map(({ box }): Ends => {
      const end = part.along === 'across' ? { x: box.x, y: box.y + box.height } : { x: box.x + box.width, y: box.y };
      return [{ x: box.x, y: box.y }, end];
    });
    return [...own, ...part.parts.flatMap(seamsOf)];
  }
  const own = part.logs.map(({ side, part: { box } }) => innerSide(side, box));
  return [...own, ...seamsOf(part.core), ...part.logs.flatMap((log) => seamsOf(log.part))];
}

/** The side of a strip that is sewn to what it is added to. */
function innerSide(side: 'top' | 'right' | 'bottom' | 'left', { x, y, width, height }: Box): Ends {
  const [right, bottom] = [x + width, y + height];
  if (side === 'top')
    return [
      { x, y: bottom },
      { x: right, y: bottom },
    ];
  if (side === 'bottom')
    return [
      { x, y },
      { x: right, y },
    ];
  if (side === 'left')
    return [
      { x: right, y },
      { x: right, y: bottom },
    ];
  return [
    { x, y },
    { x, y: bottom },
  ];
}

function insideSeams({ shape, box }: LooseLeaf): readonly Ends[] {
  if (shape.kind !== 'pieced') return [];
  const { points } = shape.drawing;
  const place = (vertex: number | undefined): Point => {
    const { x, y } = points[vertex as number] as Point;
    return { x: x + box.x, y: y + box.y };
  };
  return joinsOf(shape.seams).map(({ seam }): Ends => [place(seam[0]), place(seam.at(-1))]);
}
