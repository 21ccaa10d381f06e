import type { Box } from '../drawing/turn.ts';
import type { BlockLeaf } from './quilt.ts';

/** Where a whole block would lie of which only a part is kept; the block's own box for any other. */
export function wholeBox({ box, part }: Pick<BlockLeaf, 'box' | 'part'>): Box {
  if (part === undefined) return box;
  const share = part.to - part.from;
  if (part.along === 'across') {
    const width = box.width / share;
    return { ...box, x: box.x - part.from * width, width };
  }
  const height = box.height / share;
  return { ...box, y: box.y - part.from * height, height };
}
