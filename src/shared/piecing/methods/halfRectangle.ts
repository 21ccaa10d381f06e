import { plain, type TracedSize } from '../../measure/traced.ts';
import type { Cut, Method } from '../method.ts';
import type { Unit } from '../piecing.ts';
import { halfRectangleSize } from './halfRectangleSize.ts';
import { halfRectangleStages } from './halfRectangleStages.ts';
import { ofKind } from './ofKind.ts';
import { unfinishedSize } from './sums.ts';

type HalfRectangle = Extract<Unit, { kind: 'half-rectangle' }>;

/**
 * Half-rectangle triangles from rectangles cut once from corner to corner. The two triangles of a rectangle are alike, and
 * not the mirror image of those cut from the other corner.
 */
export const halfRectangle: Method = {
  id: 'half-rectangle',
  name: 'Half-rectangle triangles from cut rectangles',
  source:
    'Each side a, with the other side b and the diagonal c of the finished rectangle: a and 2a ÷ (a + b − c) seams, up to ' +
    'the ruler; computed',
  makes: (unit) => unit.kind === 'half-rectangle',
  plan(unit, scale) {
    const half = ofKind(unit, 'half-rectangle');
    const unfinished = unfinishedSize(half.width, half.height, scale);
    const size = halfRectangleSize(half, plain(unfinished), scale);
    return {
      cuts: cutsOf(half, size),
      yield: half.roles[0] === half.roles[1] ? 1 : 2,
      unfinished,
      trimmed: true,
      hand: half.diagonal,
      stages: halfRectangleStages(half, plain(size), unfinished, scale),
    };
  },
};

function cutsOf({ roles }: HalfRectangle, size: TracedSize): readonly Cut[] {
  return [...new Set(roles)].map((role) => ({ role, ...size, count: 1, patches: 2, use: 'rectangle' }));
}
