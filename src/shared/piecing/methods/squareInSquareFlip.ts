import { plain } from '../../measure/traced.ts';
import type { Corner } from '../../recipe/schema.ts';
import type { Cut, Method } from '../method.ts';
import { cornersFlipStages } from './cornersFlipStages.ts';
import { ofKind } from './ofKind.ts';
import { sizeWords, unfinishedLength, unfinishedSize } from './sums.ts';

const CORNERS: readonly Corner[] = ['top-left', 'top-right', 'bottom-right', 'bottom-left'];

/** A square in a square from a large square and four corner squares sewn on their diagonals and flipped open. */
export const squareInSquareFlip: Method = {
  id: 'square-in-square-flip',
  name: 'Square in a square, stitch and flip',
  source: 'Large square and corner squares: finished and a seam on each side; common practice',
  makes: (unit) => unit.kind === 'square-in-square' && unit.width === unit.height,
  plan(unit, scale) {
    const square = ofKind(unit, 'square-in-square');
    const unfinished = unfinishedSize(square.width, square.height, scale);
    const side = unfinishedLength(square.width / 2, scale);
    const base: Cut = { role: square.role, ...unfinished, count: 1, patches: 1, use: 'large square' };
    const corners = [...new Set(square.roles)].map((role): Cut => {
      const count = square.roles.filter((other) => other === role).length;
      return { role, width: side, height: side, count, patches: 1, use: 'corner square' };
    });
    const flip = {
      role: square.role,
      ...plain(unfinished),
      corners: square.roles.map((role, i) => ({ at: CORNERS[i] as Corner, role, side: side.value })),
      seam: scale.seam,
    };
    return {
      cuts: [base, ...corners],
      yield: 1,
      unfinished,
      trimmed: false,
      stages: cornersFlipStages(flip, scale, sizeWords(square, unfinished)),
    };
  },
};
