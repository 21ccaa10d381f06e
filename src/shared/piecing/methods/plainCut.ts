import type { Method } from '../method.ts';
import { ofKind } from './ofKind.ts';
import { shapeWord, unfinishedSize } from './sums.ts';

/** A plain square or rectangle: one piece, cut at its unfinished size. */
export const plainCut: Method = {
  id: 'plain-cut',
  name: 'Plain piece, cut to size',
  source: 'Finished and a seam on each side; common practice',
  makes: (unit) => unit.kind === 'plain',
  plan(unit, scale) {
    const { role, width, height } = ofKind(unit, 'plain');
    const unfinished = unfinishedSize(width, height, scale);
    const cut = { role, ...unfinished, count: 1, patches: 1, use: shapeWord(width, height) };
    return { cuts: [cut], yield: 1, unfinished, trimmed: false, stages: [] };
  },
};
