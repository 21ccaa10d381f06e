import { named, over, plus, rounded, type Traced } from '../../measure/traced.ts';
import type { Method, Scale } from '../method.ts';
import { type Geese, isTwiceAsWide } from './geese.ts';
import { geeseFourStages } from './geeseFourStages.ts';
import { ofKind } from './ofKind.ts';
import {
  cutUp,
  halfSquareAdd,
  larger,
  multiple,
  quarterSquareAdd,
  roomyLength,
  seamOf,
  two,
  unfinishedSize,
} from './sums.ts';

/** Flying geese from one large square, which becomes four geese, and four small squares, which become their sky. */
export const geeseFour: Method = {
  id: 'geese-four',
  name: 'Flying geese, four at a time',
  source:
    'Large square: finished width and s(2 + 2√2) for a seam s, 1¼″ for ¼″; small squares: finished height and ' +
    's(2 + √2), ⅞″ for ¼″; up to the ruler; computed, and common practice',
  makes: isTwiceAsWide,
  plan(unit, scale) {
    const geese = ofKind(unit, 'geese');
    const [goose, sky] = geese.roles;
    const { large, small } = squares(geese, scale);
    const unfinished = unfinishedSize(geese.width, geese.height, scale);
    return {
      cuts: [
        { role: goose, width: large, height: large, count: 1, patches: 4, use: 'large square' },
        { role: sky, width: small, height: small, count: 4, patches: 2, use: 'small square' },
      ],
      yield: 4,
      unfinished,
      trimmed: true,
      stages: geeseFourStages({ goose, sky, large: large.value, small: small.value, scale, unfinished }),
    };
  },
};

/**
 * Both squares, with enough to trim even where the unfinished size had to be rounded to the ruler. The small one reaches
 * a seam past the middle of the large one as cut, so that the sky still stands a seam above the goose's point.
 */
function squares(geese: Geese, scale: Scale): { readonly large: Traced; readonly small: Traced } {
  const width = roomyLength(geese.width, scale);
  const height = roomyLength(geese.height, scale);
  const large = cutUp(scale, larger(width, multiple(2, height)), quarterSquareAdd(scale));
  const usual = cutUp(scale, height, halfSquareAdd(scale));
  const pastMiddle = rounded(plus(over(named(large, 'large square'), two), seamOf(scale)), scale.step, 'up');
  return { large, small: larger(usual, pastMiddle) };
}
