import { plain, type TracedSize } from '../../measure/traced.ts';
import type { Method, Scale } from '../method.ts';
import type { Flip } from './flip.ts';
import { type Geese, isTwiceAsWide } from './geese.ts';
import { geeseFlipStages } from './geeseFlipStages.ts';
import { ofKind } from './ofKind.ts';
import { unfinishedSize } from './sums.ts';

/** Flying geese from one rectangle and two squares sewn to its ends by stitch-and-flip. */
export const geeseFlip: Method = {
  id: 'geese-flip',
  name: 'Flying geese, stitch and flip',
  source: 'Rectangle and squares: finished and a seam on each side; common practice',
  makes: isTwiceAsWide,
  plan(unit, scale) {
    const geese = ofKind(unit, 'geese');
    const [goose, sky] = geese.roles;
    const unfinished = unfinishedSize(geese.width, geese.height, scale);
    const { width, height } = unfinished;
    return {
      cuts: [
        { role: goose, width, height, count: 1, patches: 1, use: 'rectangle' },
        { role: sky, width: height, height, count: 2, patches: 1, use: 'small square' },
      ],
      yield: 1,
      unfinished,
      trimmed: false,
      stages: geeseFlipStages(flipOf(geese, unfinished, scale), scale, unfinished),
    };
  },
};

function flipOf({ roles }: Geese, unfinished: TracedSize, { seam }: Scale): Flip {
  const { width, height } = plain(unfinished);
  const [goose, sky] = roles;
  const corners = (['top-left', 'top-right'] as const).map((at) => ({ at, role: sky, side: height }));
  return { role: goose, width, height, corners, seam };
}
