import type { BlockLeaf } from '../quilt/quilt.ts';
import type { Edged, SeamEnd } from './ends.ts';

/** How what is left of a block that is cut off meets its neighbours. */
export function cutEdged(edged: Edged, { along, from, to }: NonNullable<BlockLeaf['part']>): Edged {
  const length = along === 'across' ? 'width' : 'height';
  const kept = (to - from) * edged[length];
  const start = from * edged[length];
  const parts = (ends: readonly SeamEnd[]) =>
    ends.map((end) => ({ ...end, at: end.at - start })).filter(({ at }) => at > 0 && at < kept);
  const { top, right, bottom, left } = edged.ends;
  const ends =
    along === 'across'
      ? { top: parts(top), bottom: parts(bottom), left: from > 0 ? [] : left, right: to < 1 ? [] : right }
      : { left: parts(left), right: parts(right), top: from > 0 ? [] : top, bottom: to < 1 ? [] : bottom };
  return { ...edged, [length]: kept, ends };
}
