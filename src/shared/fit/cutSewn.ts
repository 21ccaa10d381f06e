import type { BlockLeaf } from '../quilt/quilt.ts';
import type { Sewn, Stop } from './sewn.ts';

/**
 * What is left of a block that is cut off: as long as it is measured when it is cut, with the seams of the part that is kept. The
 * cut edge lies at the edge of the quilt, where no seam has to be matched.
 */
export function cutSewn(sewn: Sewn, { along, from, to }: NonNullable<BlockLeaf['part']>): Sewn {
  const length = along === 'across' ? 'width' : 'height';
  const kept = (to - from) * sewn.design[length];
  const start = from * sewn.design[length];
  const parts = (stops: readonly Stop[]): readonly Stop[] =>
    stops
      .map((stop) => ({
        design: stop.design - start,
        // Measured from the edge that is kept.
        sewn: from > 0 ? kept - (sewn[length] - stop.sewn) : stop.sewn,
      }))
      .filter(({ design }) => design > 0 && design < kept);
  const { top, right, bottom, left } = sewn.edges;
  const edges =
    along === 'across'
      ? { top: parts(top), bottom: parts(bottom), left: from > 0 ? [] : left, right: to < 1 ? [] : right }
      : { left: parts(left), right: parts(right), top: from > 0 ? [] : top, bottom: to < 1 ? [] : bottom };
  return { ...sewn, [length]: kept, design: { ...sewn.design, [length]: kept }, edges };
}
