import type { Method } from '../method.ts';
import { isSquareHst } from './hst.ts';
import { twoAtATime } from './hstTwo.ts';
import { ofKind } from './ofKind.ts';

/** Inches added when the house says nothing else: with the exact ⅞″ it makes the 1⅛″ of guild instructions. */
const USUAL = 1 / 4;

/** Half-square triangles two at a time from squares cut larger on purpose, and trimmed to size. */
export const hstOversize: Method = {
  id: 'hst-oversize',
  name: 'Half-square triangles, two at a time, cut larger and trimmed',
  source: 'As two at a time, and ¼″ more to trim: finished and 1⅛″ for a seam of ¼″; guild block instructions',
  makes: isSquareHst,
  plan(unit, scale) {
    const { oversize = 0 } = scale;
    return twoAtATime(ofKind(unit, 'hst'), { ...scale, oversize: oversize > 0 ? oversize : USUAL });
  },
};
