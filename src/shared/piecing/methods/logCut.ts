import type { Method } from '../method.ts';
import { ofKind } from './ofKind.ts';
import { unfinishedSize } from './sums.ts';

/** A log of a round: one strip, cut at its unfinished size. */
export const logCut: Method = {
  id: 'log-cut',
  name: 'Log, cut to length',
  source: 'Finished and a seam on each side; common practice',
  makes: (unit) => unit.kind === 'log',
  plan(unit, scale) {
    const { role, width, height } = ofKind(unit, 'log');
    const unfinished = unfinishedSize(width, height, scale);
    const cut = { role, ...unfinished, count: 1, patches: 1, use: 'log' };
    return { cuts: [cut], yield: 1, unfinished, trimmed: false, stages: [] };
  },
};
